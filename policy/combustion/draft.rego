# METADATA
# title: The draft in the flue is as strong as it must be in this weather
# description: A weak draft on the day of the test is no draft on a milder day.
# custom:
#   subject: appliance and test
#   grade: hazard
#   stage: running
#   remedy: Have a licensed contractor look at flue and appliance, and test again.
#   caution: If flue gas comes out, switch the system off, open windows, get everybody out and call a licensed heating contractor.
#   limits:
#     venting: {dimension: choice, sense: applies-to}
#     fuels: {dimension: choice, sense: applies-to}
package policy.combustion.draft

import data.policy.backdraft
import rego.v2

limits := data.profile.combustion.draft

subjects contains ["diagnostics", ["diagnostics", "backdraft_tests"]] if {
	not is_array(input.diagnostics.backdraft_tests)
	not nothing_burns
}

nothing_burns if {
	is_array(input.house.combustion)
	count(input.house.combustion) == 0
}

subjects contains [d.id, ["derived", "appliances", i, "draft_minimum"]] if some i, d in input.derived.appliances

exempt contains [d.id, "it does not vent by natural draft"] if {
	some d in input.derived.appliances
	some a in input.house.combustion
	a.id == d.appliance
	is_string(a.venting)
	not a.venting in limits.venting.any_of
}

exempt contains [d.id, "the table is for gas only"] if {
	some d in input.derived.appliances
	some a in input.house.combustion
	a.id == d.appliance
	is_string(a.fuel)
	not a.fuel in limits.fuels.any_of
}

asked contains d.id if {
	some d in input.derived.appliances
	some a in input.house.combustion
	a.id == d.appliance
	a.venting in limits.venting.any_of
	a.fuel in limits.fuels.any_of
}

# Draft is negative: a stronger draft lies lower.
enough contains d.id if {
	some d in input.derived.appliances
	some t in input.diagnostics.backdraft_tests
	t.id == d.test
	t.draft.si <= d.draft_minimum.si
}

weak contains [d.id, i] if {
	some d in input.derived.appliances
	some i, t in input.diagnostics.backdraft_tests
	t.id == d.test
	t.draft.si > d.draft_minimum.si
}

good_later contains d.id if {
	some d in input.derived.appliances
	d.test in backdraft.made_good
}

met contains id if {
	some id in asked
	id in enough
}

met contains id if {
	some [id, _] in weak
	id in asked
	id in good_later
}

deficient contains [id, ["diagnostics", "backdraft_tests", i, "draft"]] if {
	some [id, i] in weak
	id in asked
	not id in good_later
}

missing contains [d.id, ["derived", "appliances", i, "draft_minimum"]] if {
	some i, d in input.derived.appliances
	not is_number(d.draft_minimum.si)
}

missing contains [d.id, ["diagnostics", "backdraft_tests", i, "draft"]] if {
	some d in input.derived.appliances
	some i, t in input.diagnostics.backdraft_tests
	t.id == d.test
	not is_number(t.draft.si)
}
