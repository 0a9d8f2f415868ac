# METADATA
# title: An outlet that ends below the eave is high, explained and tested
# description: Below the roof the gas is near walls and windows; somebody must have shown that it does not come back in.
# custom:
#   subject: outlet
#   grade: required
#   stage: closeout
#   remedy: Carry the pipe above the eave, or reach the height, write down why it cannot go higher and test the air in the rooms beside the outlet.
#   caution: Work from a ladder that is set and tied, away from power lines.
#   limits:
#     eave: {dimension: length, sense: more-than}
#     height: {dimension: length, sense: at-least}
package policy.exhaust.below_eave

import data.policy.systems
import rego.v2

limits := data.profile.exhaust.below_eave

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "discharge", "height_above_eave"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

exempt contains [d.id, "the outlet is above the eave"] if {
	some d in input.derived.discharges
	d.height_above_eave.si > limits.eave.si
}

low contains d.id if {
	some d in input.derived.discharges
	d.id in systems.with_fan
	d.height_above_eave.si <= limits.eave.si
}

high contains d.id if {
	some d in input.derived.discharges
	d.height_above_grade.si >= limits.height.si
}

met contains s.id if {
	some s in input.systems
	s.id in low
	s.id in high
	is_string(s.discharge.below_eave_reason)
	s.discharge.adjoining_air_tested == true
}

deficient contains [d.id, ["derived", "discharges", i, "height_above_grade"], "height"] if {
	some i, d in input.derived.discharges
	d.id in low
	d.height_above_grade.si < limits.height.si
}

deficient contains [s.id, ["systems", i, "discharge", "adjoining_air_tested"]] if {
	some i, s in input.systems
	s.id in low
	s.discharge.adjoining_air_tested == false
}

missing contains gap if some gap in systems.unsaid

missing contains [d.id, ["derived", "discharges", i, "height_above_eave"]] if {
	some i, d in input.derived.discharges
	not is_number(d.height_above_eave.si)
}

missing contains [d.id, ["derived", "discharges", i, "height_above_grade"]] if {
	some i, d in input.derived.discharges
	d.id in low
	not is_number(d.height_above_grade.si)
}

missing contains [s.id, ["systems", i, "discharge", "below_eave_reason"]] if {
	some i, s in input.systems
	s.id in low
	not is_string(s.discharge.below_eave_reason)
}

missing contains [s.id, ["systems", i, "discharge", "adjoining_air_tested"]] if {
	some i, s in input.systems
	s.id in low
	not is_boolean(s.discharge.adjoining_air_tested)
}
