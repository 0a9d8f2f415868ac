# METADATA
# title: Recorded distances from the outlet fit the positions of openings
# description: A tape and a drawing that disagree mean that one of them was made at the desk.
# custom:
#   subject: outlet
#   grade: required
#   stage: roughed-in
#   remedy: Measure the distance again and correct distance or position.
#   caution: Measure from the ground or from a ladder that is set and tied.
#   limits:
#     apart: {dimension: length, sense: at-most}
package policy.physics.outlet_distances

import data.policy.systems
import rego.v2

limits := data.profile.physics.outlet_distances

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "discharge", "clearances"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_outlet

exempt contains [s.id, "no distance was measured"] if {
	some s in input.systems
	is_array(s.discharge.clearances)
	count(s.discharge.clearances) == 0
}

judged contains s.id if {
	some s in input.systems
	s.kind in systems.soil_kinds
}

close contains c.id if {
	some c in input.derived.clearances
	c.disagreement.si <= limits.apart.si
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	count({c.id | some c in input.derived.clearances; c.system == s.id}) > 0
	count({c.id | some c in input.derived.clearances; c.system == s.id; not c.id in close}) == 0
}

deficient contains [c.system, ["derived", "clearances", i, "disagreement"], "apart"] if {
	some i, c in input.derived.clearances
	c.system in judged
	c.disagreement.si > limits.apart.si
}

undetermined contains [s.id, ["systems", i, "discharge", "clearances"], "not every opening has both a measured distance and a position, so not all can be compared"] if {
	some i, s in input.systems
	s.id in judged
}

missing contains [s.id, ["systems", i, "kind"]] if {
	some i, s in input.systems
	not is_string(s.kind)
}
