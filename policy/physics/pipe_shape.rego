# METADATA
# title: Rise, length and slope of the pipe fit each other
# description: A pipe that rises by more than its length was never measured, and water may stand in it unseen.
# custom:
#   subject: system
#   grade: required
#   stage: roughed-in
#   remedy: Measure length, rise and slope again and correct the record.
#   limits:
#     apart: {dimension: slope, sense: at-most}
package policy.physics.pipe_shape

import data.policy.systems
import rego.v2

limits := data.profile.physics.pipe_shape

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "pipe"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_outlet

judged contains s.id if {
	some s in input.systems
	s.kind in systems.soil_kinds
}

fitting contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.run == "vertical"
	p.rise.si <= p.length.si
}

fitting contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.run == "horizontal"
	p.rise.si <= p.length.si
	some d in input.derived.segments
	d.id == p.id
	d.slope_disagreement.si <= limits.apart.si
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	count(s.pipe) > 0
	count({p.id | some p in s.pipe; not p.id in fitting}) == 0
}

deficient contains [s.id, ["systems", i, "pipe", j, "rise"]] if {
	some i, s in input.systems
	s.id in judged
	some j, p in s.pipe
	p.rise.si > p.length.si
}

deficient contains [d.system, ["derived", "segments", i, "slope_disagreement"], "apart"] if {
	some i, d in input.derived.segments
	d.system in judged
	d.slope_disagreement.si > limits.apart.si
}

undetermined contains [s.id, ["systems", i, "pipe"], "not every segment has rise and length, and slope where it runs level, so not all can be compared"] if {
	some i, s in input.systems
	s.id in judged
}

missing contains [s.id, ["systems", i, "kind"]] if {
	some i, s in input.systems
	not is_string(s.kind)
}
