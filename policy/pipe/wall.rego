# METADATA
# title: The wall of the pipe is thick enough
# description: Thin pipe sags between its supports and breaks when something falls against it.
# custom:
#   subject: pipe segment
#   grade: required
#   stage: roughed-in
#   remedy: Replace the run with pipe of the wall class called for.
#   limits:
#     allowed: {dimension: choice, sense: one-of}
#     arguable: {dimension: choice, sense: one-of}
package policy.pipe.wall

import data.policy.pipes
import rego.v2

limits := data.profile.pipe.wall

subjects contains gap if some gap in pipes.gaps

subjects contains [p.id, ["systems", i, "pipe", j, "schedule"]] if {
	some i, s in input.systems
	some j, p in s.pipe
}

exempt contains outcome if some outcome in pipes.outside

exempt contains [p.id, "the wall classes are those of plastic pipe"] if {
	some s in input.systems
	some p in s.pipe
	p.material == "metal-downspout"
}

judged contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in pipes.judged
	is_string(p.material)
	p.material != "metal-downspout"
}

met contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in judged
	p.schedule in limits.allowed.any_of
}

undetermined contains [p.id, ["systems", i, "pipe", j, "schedule"], "whether this wall is as thick as the one called for is not established"] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.id in judged
	p.schedule in limits.arguable.any_of
	not p.schedule in limits.allowed.any_of
}

deficient contains [p.id, ["systems", i, "pipe", j, "schedule"], "allowed"] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.id in judged
	is_string(p.schedule)
	not p.schedule in limits.allowed.any_of
	not p.schedule in limits.arguable.any_of
}

missing contains gap if some gap in pipes.unsaid

missing contains [p.id, ["systems", i, "pipe", j, "material"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_string(p.material)
}

missing contains [p.id, ["systems", i, "pipe", j, "schedule"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_string(p.schedule)
}
