# METADATA
# title: The zero of the pressure meter was read before and after the test
# description: A meter that has drifted by a hair shows suction where there is none.
# custom:
#   subject: communication test
#   grade: recommended
#   stage: planned
#   remedy: Read the zero, and repeat the test when it has moved.
package policy.diagnostics.meter_zeroed

import rego.v2

subjects contains ["diagnostics", ["diagnostics", "communication_tests"]] if not is_array(input.diagnostics.communication_tests)

subjects contains [t.id, ["diagnostics", "communication_tests", i, "zero_checked"]] if some i, t in input.diagnostics.communication_tests

met contains t.id if {
	some t in input.diagnostics.communication_tests
	t.zero_checked == true
}

deficient contains [t.id, ["diagnostics", "communication_tests", i, "zero_checked"]] if {
	some i, t in input.diagnostics.communication_tests
	t.zero_checked == false
}
