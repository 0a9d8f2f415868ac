# METADATA
# title: The room of the appliance is not drawn below the limit for it
# description: Below that pressure air comes down the chimney of this kind of appliance instead of going up.
# custom:
#   subject: appliance and test
#   grade: hazard
#   stage: running
#   remedy: Give the room more air or reduce the suction, have a licensed contractor look at the appliance, and test again.
#   caution: If flue gas comes out, switch the system off, open windows, get everybody out and call a licensed heating contractor.
package policy.combustion.depressurization

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

subjects contains [d.id, ["derived", "appliances", i, "depressurization"]] if some i, d in input.derived.appliances

described contains d.id if {
	some d in input.derived.appliances
	some a in input.house.combustion
	a.id == d.appliance
	is_string(a.kind)
	is_string(a.fuel)
	is_string(a.venting)
	is_boolean(a.commonly_vented)
}

exempt contains [d.id, "the table has no limit for an appliance of this kind"] if {
	some d in input.derived.appliances
	d.id in described
	not is_number(d.limit.si)
}

good_later contains d.id if {
	some d in input.derived.appliances
	d.test in backdraft.made_good
}

met contains d.id if {
	some d in input.derived.appliances
	d.id in described
	d.depressurization.si >= d.limit.si
}

met contains d.id if {
	some d in input.derived.appliances
	d.id in described
	d.id in good_later
	d.depressurization.si < d.limit.si
}

deficient contains [d.id, ["derived", "appliances", i, "depressurization"]] if {
	some i, d in input.derived.appliances
	not d.id in good_later
	d.depressurization.si < d.limit.si
}

missing contains [d.id, ["derived", "appliances", i, "depressurization"]] if {
	some i, d in input.derived.appliances
	not is_number(d.depressurization.si)
}

missing contains [d.id, ["derived", "appliances", i, "limit"]] if {
	some i, d in input.derived.appliances
	not is_number(d.limit.si)
}

missing contains [d.id, ["house", "combustion", i, "kind"]] if {
	some d in input.derived.appliances
	some i, a in input.house.combustion
	a.id == d.appliance
	not is_string(a.kind)
}

missing contains [d.id, ["house", "combustion", i, "fuel"]] if {
	some d in input.derived.appliances
	some i, a in input.house.combustion
	a.id == d.appliance
	not is_string(a.fuel)
}

missing contains [d.id, ["house", "combustion", i, "venting"]] if {
	some d in input.derived.appliances
	some i, a in input.house.combustion
	a.id == d.appliance
	not is_string(a.venting)
}

missing contains [d.id, ["house", "combustion", i, "commonly_vented"]] if {
	some d in input.derived.appliances
	some i, a in input.house.combustion
	a.id == d.appliance
	not is_boolean(a.commonly_vented)
}
