# METADATA
# title: Every tested appliance drafts as it should, or did after it was put right
# description: An appliance that spills fills the house with flue gas while people sleep.
# custom:
#   subject: backdraft test
#   grade: hazard
#   stage: running
#   remedy: Switch the system off, have the appliance or the house put right by a licensed contractor, and test again.
#   caution: If flue gas comes out, switch the system off, open windows, get everybody out and call a licensed heating contractor.
package policy.combustion.passed

import data.policy.backdraft
import rego.v2

subjects contains ["diagnostics", ["diagnostics", "backdraft_tests"]] if {
	not is_array(input.diagnostics.backdraft_tests)
	not nothing_burns
}

nothing_burns if {
	is_array(input.house.combustion)
	count(input.house.combustion) == 0
}

subjects contains [t.id, ["diagnostics", "backdraft_tests", i, "passed"]] if some i, t in input.diagnostics.backdraft_tests

met contains t.id if {
	some t in input.diagnostics.backdraft_tests
	t.passed == true
}

met contains id if some id in backdraft.made_good

deficient contains [t.id, ["diagnostics", "backdraft_tests", i, "passed"]] if {
	some i, t in input.diagnostics.backdraft_tests
	t.passed == false
	not t.id in backdraft.made_good
}
