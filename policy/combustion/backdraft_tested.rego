# METADATA
# title: Every natural-draft appliance was tested with the system on
# description: A system that pulls on the ground can pull flue gas back down the chimney; carbon monoxide kills without smell.
# custom:
#   subject: appliance
#   grade: hazard
#   stage: running
#   remedy: Test the appliance now with the system on, before anybody sleeps in the house.
#   caution: If flue gas comes out, switch the system off, open windows, get everybody out and call a licensed heating contractor.
#   limits:
#     venting: {dimension: choice, sense: applies-to}
package policy.combustion.backdraft_tested

import data.policy.systems
import rego.v2

limits := data.profile.combustion.backdraft_tested
subjects contains ["house", ["house", "combustion"]] if not is_array(input.house.combustion)

subjects contains [a.id, ["diagnostics", "backdraft_tests"]] if some a in input.house.combustion

exempt contains [id, "no fan of a system draws on the ground"] if {
	some [id, _] in subjects
	systems.none_with_fan
}

exempt contains [a.id, "it does not vent by natural draft"] if {
	some a in input.house.combustion
	is_string(a.venting)
	not a.venting in limits.venting.any_of
}

asked contains a.id if {
	count(systems.with_fan) > 0
	some a in input.house.combustion
	a.venting in limits.venting.any_of
}

tested contains t.appliance if {
	some t in input.diagnostics.backdraft_tests
	t.system_on == true
}

untold contains t.id if {
	some t in input.diagnostics.backdraft_tests
	not is_string(t.appliance)
}

untold contains t.id if {
	some t in input.diagnostics.backdraft_tests
	not is_boolean(t.system_on)
}

met contains id if {
	some id in asked
	id in tested
}

deficient contains [id, ["diagnostics", "backdraft_tests"]] if {
	some id in asked
	is_array(input.diagnostics.backdraft_tests)
	not id in tested
	count(untold) == 0
}

missing contains [a.id, ["house", "combustion", i, "venting"]] if {
	some i, a in input.house.combustion
	not is_string(a.venting)
}

missing contains [a.id, path] if {
	some a in input.house.combustion
	some [_, path] in systems.unsaid
}

missing contains [a.id, ["systems"]] if {
	some a in input.house.combustion
	not is_array(input.systems)
}

missing contains [a.id, ["diagnostics", "backdraft_tests"]] if {
	some a in input.house.combustion
	not is_array(input.diagnostics.backdraft_tests)
}

missing contains [a.id, ["diagnostics", "backdraft_tests", i, "appliance"]] if {
	some a in input.house.combustion
	some i, t in input.diagnostics.backdraft_tests
	not is_string(t.appliance)
}

missing contains [a.id, ["diagnostics", "backdraft_tests", i, "system_on"]] if {
	some a in input.house.combustion
	some i, t in input.diagnostics.backdraft_tests
	not is_boolean(t.system_on)
}
