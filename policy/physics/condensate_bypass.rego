# METADATA
# title: Where much water forms in winter it is led round the fan
# description: In a hard winter gallons of water run back to the fan; ice in the housing stops it when windows stay shut.
# custom:
#   subject: fan
#   grade: recommended
#   stage: roughed-in
#   remedy: Lead the water round the fan, or insulate the pipe before it and set the fan so that water runs through.
#   caution: Wiring and work on a running fan are for licensed people; cut the power and prove it dead first.
#   limits:
#     most: {dimension: mass-per-day, sense: at-most}
package policy.physics.condensate_bypass

import data.policy.airways
import data.policy.systems
import rego.v2

limits := data.profile.physics.condensate_bypass

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "fan", "condensate_bypass"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

exempt contains [s.id, "pipes do not freeze here"] if {
	some s in input.systems
	input.house.freezing_climate == false
}

judged contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	input.house.freezing_climate == true
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	s.fan.condensate_bypass == true
}

met contains d.id if {
	some d in input.derived.systems
	d.id in judged
	d.id in airways.measured
	airways.sited
	d.condensate.si <= limits.most.si
}

deficient contains [d.id, ["derived", "systems", i, "condensate"], "most"] if {
	some i, d in input.derived.systems
	d.id in judged
	d.condensate.si > limits.most.si
	some s in input.systems
	s.id == d.id
	s.fan.condensate_bypass == false
}

undetermined contains [d.id, ["derived", "systems", i, "condensate"], airways.only_computed] if {
	some i, d in input.derived.systems
	d.id in judged
	d.condensate.si <= limits.most.si
}

missing contains gap if some gap in systems.unsaid

missing contains [s.id, ["house", "freezing_climate"]] if {
	some s in input.systems
	not is_boolean(input.house.freezing_climate)
}

missing contains [s.id, ["systems", i, "fan", "condensate_bypass"]] if {
	some i, s in input.systems
	not is_boolean(s.fan.condensate_bypass)
}

missing contains [d.id, ["derived", "systems", i, "condensate"]] if {
	some i, d in input.derived.systems
	not is_number(d.condensate.si)
}
