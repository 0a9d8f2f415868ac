# METADATA
# title: Carbon monoxide in the room, in ppm, stays below the level at which a test stops
# description: Carbon monoxide has no smell; at this level people get headaches, above it they do not wake up.
# custom:
#   subject: backdraft test
#   grade: hazard
#   stage: running
#   remedy: Stop, open windows, get everybody out and call the gas supplier or the fire service; have a licensed contractor find the cause.
#   caution: If flue gas comes out, switch the system off, open windows, get everybody out and call a licensed heating contractor.
#   limits:
#     stop_at: {dimension: number, sense: less-than}
package policy.combustion.carbon_monoxide

import data.policy.backdraft
import rego.v2

limits := data.profile.combustion.carbon_monoxide

subjects contains ["diagnostics", ["diagnostics", "backdraft_tests"]] if {
	not is_array(input.diagnostics.backdraft_tests)
	not nothing_burns
}

nothing_burns if {
	is_array(input.house.combustion)
	count(input.house.combustion) == 0
}

subjects contains [t.id, ["diagnostics", "backdraft_tests", i, "carbon_monoxide_ppm"]] if some i, t in input.diagnostics.backdraft_tests

high contains t.id if {
	some t in input.diagnostics.backdraft_tests
	t.carbon_monoxide_ppm >= limits.stop_at.si
}

met contains t.id if {
	some t in input.diagnostics.backdraft_tests
	t.carbon_monoxide_ppm < limits.stop_at.si
}

met contains id if {
	some id in high
	id in backdraft.made_good
}

deficient contains [t.id, ["diagnostics", "backdraft_tests", i, "carbon_monoxide_ppm"], "stop_at"] if {
	some i, t in input.diagnostics.backdraft_tests
	t.id in high
	not t.id in backdraft.made_good
}
