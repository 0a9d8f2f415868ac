# METADATA
# title: Level pipe is held often enough
# description: Between supports that are too far apart the pipe sags, and the sag fills with water.
# custom:
#   subject: pipe segment
#   grade: required
#   stage: roughed-in
#   remedy: Add hangers or straps until none are farther apart than this.
#   caution: Work from a ladder that is set and tied, away from power lines.
#   limits:
#     maximum: {dimension: length, sense: at-most}
package policy.pipe.horizontal_supports

import data.policy.pipes
import rego.v2

limits := data.profile.pipe.horizontal_supports

subjects contains gap if some gap in pipes.gaps

subjects contains [p.id, ["systems", i, "pipe", j, "support_spacing"]] if {
	some i, s in input.systems
	some j, p in s.pipe
}

exempt contains outcome if some outcome in pipes.outside

exempt contains [p.id, "the run is not level"] if {
	some s in input.systems
	some p in s.pipe
	is_string(p.run)
	p.run != "horizontal"
}

judged contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in pipes.judged
	p.run == "horizontal"
}

met contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in judged
	p.support_spacing.si <= limits.maximum.si
}

deficient contains [p.id, ["systems", i, "pipe", j, "support_spacing"], "maximum"] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.id in judged
	p.support_spacing.si > limits.maximum.si
}

missing contains gap if some gap in pipes.unsaid

missing contains [p.id, ["systems", i, "pipe", j, "run"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_string(p.run)
}

missing contains [p.id, ["systems", i, "pipe", j, "support_spacing"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_number(p.support_spacing.si)
}
