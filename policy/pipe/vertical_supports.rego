# METADATA
# title: Upright pipe is held often enough between floors
# description: An upright run hangs on its lowest joint until that joint opens.
# custom:
#   subject: pipe segment
#   grade: required
#   stage: roughed-in
#   remedy: Add straps or clamps until none are farther apart than this.
#   caution: Work from a ladder that is set and tied, away from power lines.
#   limits:
#     maximum: {dimension: length, sense: at-most}
#     passes: {dimension: choice, sense: applies-to}
package policy.pipe.vertical_supports

import data.policy.pipes
import rego.v2

limits := data.profile.pipe.vertical_supports

subjects contains gap if some gap in pipes.gaps

subjects contains [p.id, ["systems", i, "pipe", j, "support_spacing"]] if {
	some i, s in input.systems
	some j, p in s.pipe
}

exempt contains outcome if some outcome in pipes.outside

exempt contains [p.id, "the run is not upright"] if {
	some s in input.systems
	some p in s.pipe
	is_string(p.run)
	p.run != "vertical"
}

# Every hole of the segment is known and none passes what counts.
free contains p.id if {
	some s in input.systems
	some p in s.pipe
	count(limits.passes.any_of) == 0
}

free contains p.id if {
	some s in input.systems
	some p in s.pipe
	is_array(p.penetrations)
	count(p.penetrations) == count({n.id | some n in p.penetrations; is_string(n.through); not n.through in limits.passes.any_of})
}

exempt contains [p.id, "it is held where it passes floor, ceiling or roof"] if {
	some s in input.systems
	some p in s.pipe
	some n in p.penetrations
	n.through in limits.passes.any_of
}

judged contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in pipes.judged
	p.run == "vertical"
	p.id in free
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

missing contains [p.id, ["systems", i, "pipe", j, "penetrations"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	count(limits.passes.any_of) > 0
	not is_array(p.penetrations)
}

missing contains [p.id, ["systems", i, "pipe", j, "penetrations", k, "through"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	some k, n in p.penetrations
	count(limits.passes.any_of) > 0
	not is_string(n.through)
}
