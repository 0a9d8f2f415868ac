# METADATA
# title: The pipe is of a plastic that the source names, or of its equal
# description: Pipe that is soft or corrugated sags, holds water and leaks at its joints.
# custom:
#   subject: pipe segment
#   grade: required
#   stage: roughed-in
#   remedy: Replace the run with rigid PVC or ABS, or have the code office accept what is there.
#   limits:
#     allowed: {dimension: choice, sense: one-of}
#     arguable: {dimension: choice, sense: one-of}
package policy.pipe.material

import data.policy.pipes
import rego.v2

limits := data.profile.pipe.material

subjects contains gap if some gap in pipes.gaps

subjects contains [p.id, ["systems", i, "pipe", j, "material"]] if {
	some i, s in input.systems
	some j, p in s.pipe
}

exempt contains outcome if some outcome in pipes.outside

met contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in pipes.judged
	p.material in limits.allowed.any_of
}

undetermined contains [p.id, ["systems", i, "pipe", j, "material"], "whether this material is the equal of those named is for the code office to say"] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.id in pipes.judged
	p.material in limits.arguable.any_of
	not p.material in limits.allowed.any_of
}

deficient contains [p.id, ["systems", i, "pipe", j, "material"], "allowed"] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.id in pipes.judged
	is_string(p.material)
	not p.material in limits.allowed.any_of
	not p.material in limits.arguable.any_of
}

missing contains gap if some gap in pipes.unsaid

missing contains [p.id, ["systems", i, "pipe", j, "material"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_string(p.material)
}
