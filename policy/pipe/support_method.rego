# METADATA
# title: The pipe hangs on the building, not on other pipes, ducts or machines
# description: Hung on a water line or duct, the pipe pulls it down or moves with it until something leaks.
# custom:
#   subject: pipe segment
#   grade: required
#   stage: roughed-in
#   remedy: Hang the pipe from the framing with hangers or straps.
#   caution: Work from a ladder that is set and tied, away from power lines.
#   limits:
#     allowed: {dimension: choice, sense: one-of}
package policy.pipe.support_method

import data.policy.pipes
import rego.v2

limits := data.profile.pipe.support_method

subjects contains gap if some gap in pipes.gaps

subjects contains [p.id, ["systems", i, "pipe", j, "support_method"]] if {
	some i, s in input.systems
	some j, p in s.pipe
}

exempt contains outcome if some outcome in pipes.outside

met contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in pipes.judged
	p.support_method in limits.allowed.any_of
}

deficient contains [p.id, ["systems", i, "pipe", j, "support_method"], "allowed"] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.id in pipes.judged
	is_string(p.support_method)
	not p.support_method in limits.allowed.any_of
}

missing contains gap if some gap in pipes.unsaid

missing contains [p.id, ["systems", i, "pipe", j, "support_method"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_string(p.support_method)
}
