# METADATA
# title: A problem found in a backdraft test was put right before the system stayed on
# description: A night with a spilling heater is enough to kill.
# custom:
#   subject: backdraft test
#   grade: hazard
#   stage: running
#   remedy: Switch the system off until the appliance drafts again.
#   caution: If flue gas comes out, switch the system off, open windows, get everybody out and call a licensed heating contractor.
package policy.combustion.fixed_before_running

import rego.v2

subjects contains ["diagnostics", ["diagnostics", "backdraft_tests"]] if {
	not is_array(input.diagnostics.backdraft_tests)
	not nothing_burns
}

nothing_burns if {
	is_array(input.house.combustion)
	count(input.house.combustion) == 0
}

subjects contains [t.id, ["diagnostics", "backdraft_tests", i, "fixed_before_running"]] if some i, t in input.diagnostics.backdraft_tests

exempt contains [t.id, "no problem was found"] if {
	some t in input.diagnostics.backdraft_tests
	t.passed == true
}

met contains t.id if {
	some t in input.diagnostics.backdraft_tests
	t.passed == false
	t.fixed_before_running == true
}

deficient contains [t.id, ["diagnostics", "backdraft_tests", i, "fixed_before_running"]] if {
	some i, t in input.diagnostics.backdraft_tests
	t.passed == false
	t.fixed_before_running == false
}

missing contains [t.id, ["diagnostics", "backdraft_tests", i, "passed"]] if {
	some i, t in input.diagnostics.backdraft_tests
	not is_boolean(t.passed)
}

missing contains [t.id, ["diagnostics", "backdraft_tests", i, "fixed_before_running"]] if {
	some i, t in input.diagnostics.backdraft_tests
	not is_boolean(t.fixed_before_running)
}
