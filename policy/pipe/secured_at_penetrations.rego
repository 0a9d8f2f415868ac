# METADATA
# title: Upright pipe is held at each floor, ceiling and roof that it passes
# description: A stack that rests on nothing but its bend pulls the seal at every floor loose.
# custom:
#   subject: pipe segment
#   grade: required
#   stage: roughed-in
#   remedy: Clamp the pipe right above or below each floor, ceiling and roof.
#   caution: Work from a ladder that is set and tied, away from power lines.
#   limits:
#     passes: {dimension: choice, sense: applies-to}
package policy.pipe.secured_at_penetrations

import data.policy.pipes
import rego.v2

limits := data.profile.pipe.secured_at_penetrations

subjects contains gap if some gap in pipes.gaps

subjects contains [p.id, ["systems", i, "pipe", j, "secured_at_penetrations"]] if {
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

exempt contains [p.id, "it passes no floor, ceiling or roof"] if {
	some s in input.systems
	some p in s.pipe
	is_array(p.penetrations)
	count(p.penetrations) == count({n.id | some n in p.penetrations; is_string(n.through); not n.through in limits.passes.any_of})
}

judged contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in pipes.judged
	p.run == "vertical"
	some n in p.penetrations
	n.through in limits.passes.any_of
}

met contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in judged
	p.secured_at_penetrations == true
}

deficient contains [p.id, ["systems", i, "pipe", j, "secured_at_penetrations"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.id in judged
	p.secured_at_penetrations == false
}

missing contains gap if some gap in pipes.unsaid

missing contains [p.id, ["systems", i, "pipe", j, "run"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_string(p.run)
}

missing contains [p.id, ["systems", i, "pipe", j, "penetrations"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_array(p.penetrations)
}

missing contains [p.id, ["systems", i, "pipe", j, "secured_at_penetrations"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_boolean(p.secured_at_penetrations)
}

missing contains [p.id, ["systems", i, "pipe", j, "penetrations", k, "through"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	some k, n in p.penetrations
	not is_string(n.through)
}
