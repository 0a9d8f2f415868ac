# METADATA
# title: The backdraft test was made with the house set for the worst case
# description: On a windy day with a window open every chimney draws; the danger comes on a still night with dryer and kitchen fan on.
# custom:
#   subject: backdraft test
#   grade: hazard
#   stage: running
#   remedy: Test again with the house closed, all exhausts on and doors set for the worst case.
#   caution: If flue gas comes out, switch the system off, open windows, get everybody out and call a licensed heating contractor.
package policy.combustion.worst_case

import rego.v2

subjects contains ["diagnostics", ["diagnostics", "backdraft_tests"]] if {
	not is_array(input.diagnostics.backdraft_tests)
	not nothing_burns
}

nothing_burns if {
	is_array(input.house.combustion)
	count(input.house.combustion) == 0
}

subjects contains [t.id, ["diagnostics", "backdraft_tests", i, "worst_case"]] if some i, t in input.diagnostics.backdraft_tests

exempt contains [t.id, "it was made with the system off, for comparison"] if {
	some t in input.diagnostics.backdraft_tests
	t.system_on == false
}

met contains t.id if {
	some t in input.diagnostics.backdraft_tests
	t.system_on == true
	t.worst_case == true
}

deficient contains [t.id, ["diagnostics", "backdraft_tests", i, "worst_case"]] if {
	some i, t in input.diagnostics.backdraft_tests
	t.system_on == true
	t.worst_case == false
}

missing contains [t.id, ["diagnostics", "backdraft_tests", i, "system_on"]] if {
	some i, t in input.diagnostics.backdraft_tests
	not is_boolean(t.system_on)
}

missing contains [t.id, ["diagnostics", "backdraft_tests", i, "worst_case"]] if {
	some i, t in input.diagnostics.backdraft_tests
	not is_boolean(t.worst_case)
}
