# METADATA
# title: The recorded heights of the outlet fit its position, above the ground
# description: If height and position disagree, every distance to a window in the record may be wrong.
# custom:
#   subject: outlet
#   grade: required
#   stage: roughed-in
#   remedy: Measure the heights above the ground and above the eave again and correct the record.
#   caution: Measure from the ground or from a ladder that is set and tied.
#   limits:
#     apart: {dimension: length, sense: at-most}
#     above: {dimension: length, sense: more-than}
package policy.physics.outlet_height

import data.policy.systems
import rego.v2

limits := data.profile.physics.outlet_height

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "discharge", "height_above_grade"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_outlet

exempt contains [s.id, "the pipe is only roughed in"] if {
	some s in input.systems
	s.powered_by == "rough-in"
}

judged contains s.id if {
	some s in input.systems
	s.kind in systems.soil_kinds
	s.powered_by in {"fan", "passive"}
}

met contains d.id if {
	some d in input.derived.discharges
	d.id in judged
	d.height_disagreement.si <= limits.apart.si
	not d.id in sunken
	not d.id in uneven
	some s in input.systems
	s.id == d.id
	s.discharge.height_above_grade.si > limits.above.si
}

# Outlets whose height or position puts them at or below the ground.
sunken contains s.id if {
	some s in input.systems
	s.discharge.height_above_grade.si <= limits.above.si
}

sunken contains s.id if {
	some s in input.systems
	s.discharge.position.z.si <= s.discharge.grade_level.si
}

# Outlets whose height above the eave is not the one from positions.
uneven contains d.id if {
	some d in input.derived.discharges
	d.eave_disagreement.si > limits.apart.si
}

deficient contains [d.id, ["derived", "discharges", i, "eave_disagreement"], "apart"] if {
	some i, d in input.derived.discharges
	d.id in judged
	d.id in uneven
}

deficient contains [d.id, ["derived", "discharges", i, "height_disagreement"], "apart"] if {
	some i, d in input.derived.discharges
	d.id in judged
	d.height_disagreement.si > limits.apart.si
}

deficient contains [d.id, ["derived", "discharges", i, "height_above_grade"], "above"] if {
	some i, d in input.derived.discharges
	d.id in judged
	d.id in sunken
}

undetermined contains [d.id, ["derived", "discharges", i, "height_disagreement"], "height and position are not both recorded, so there is nothing to compare"] if {
	some i, d in input.derived.discharges
	d.id in judged
	not is_number(d.height_disagreement.si)
}

missing contains gap if some gap in systems.unsaid
