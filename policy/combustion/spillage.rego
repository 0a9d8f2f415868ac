# METADATA
# title: Flue gas does not spill, or stops within minutes
# description: What comes out of the draft hood stays in the room where people live.
# custom:
#   subject: backdraft test
#   grade: hazard
#   stage: running
#   remedy: Switch the appliance off, open windows, and have a licensed contractor put it right.
#   caution: If flue gas comes out, switch the system off, open windows, get everybody out and call a licensed heating contractor.
#   limits:
#     within: {dimension: duration, sense: at-most}
package policy.combustion.spillage

import data.policy.backdraft
import rego.v2

limits := data.profile.combustion.spillage

subjects contains ["diagnostics", ["diagnostics", "backdraft_tests"]] if {
	not is_array(input.diagnostics.backdraft_tests)
	not nothing_burns
}

nothing_burns if {
	is_array(input.house.combustion)
	count(input.house.combustion) == 0
}

subjects contains [t.id, ["diagnostics", "backdraft_tests", i, "spillage"]] if some i, t in input.diagnostics.backdraft_tests

clean contains t.id if {
	some t in input.diagnostics.backdraft_tests
	t.spillage == "none"
}

clean contains t.id if {
	some t in input.diagnostics.backdraft_tests
	t.spillage == "stopped"
	t.spillage_time.si <= limits.within.si
}

met contains id if some id in clean

met contains id if {
	some [id, _, _] in spilled
	id in backdraft.made_good
}

spilled contains [t.id, i, "spillage"] if {
	some i, t in input.diagnostics.backdraft_tests
	t.spillage == "continued"
}

spilled contains [t.id, i, "spillage_time"] if {
	some i, t in input.diagnostics.backdraft_tests
	t.spillage == "stopped"
	t.spillage_time.si > limits.within.si
}

deficient contains [id, ["diagnostics", "backdraft_tests", i, "spillage"]] if {
	some [id, i, "spillage"] in spilled
	not id in backdraft.made_good
}

deficient contains [id, ["diagnostics", "backdraft_tests", i, "spillage_time"], "within"] if {
	some [id, i, "spillage_time"] in spilled
	not id in backdraft.made_good
}

missing contains [t.id, ["diagnostics", "backdraft_tests", i, "spillage"]] if {
	some i, t in input.diagnostics.backdraft_tests
	not is_string(t.spillage)
}

missing contains [t.id, ["diagnostics", "backdraft_tests", i, "spillage_time"]] if {
	some i, t in input.diagnostics.backdraft_tests
	t.spillage == "stopped"
	not is_number(t.spillage_time.si)
}
