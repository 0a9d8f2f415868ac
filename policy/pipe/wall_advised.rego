# METADATA
# title: The pipe has the heavier wall where it is advised
# description: Where cars, ladders, sun and ice get at it, thin pipe does not last as long as the fan.
# custom:
#   subject: pipe segment
#   grade: recommended
#   stage: roughed-in
#   remedy: Use the heavier pipe for this run.
#   limits:
#     allowed: {dimension: choice, sense: one-of}
#     places: {dimension: choice, sense: one-of}
package policy.pipe.wall_advised

import data.policy.pipes
import rego.v2

limits := data.profile.pipe.wall_advised

subjects contains gap if some gap in pipes.gaps

subjects contains [p.id, ["systems", i, "pipe", j, "schedule"]] if {
	some i, s in input.systems
	some j, p in s.pipe
}

exempt contains outcome if some outcome in pipes.outside

exempt contains [p.id, "the advice is not about pipe in this place"] if {
	some s in input.systems
	some p in s.pipe
	is_string(p.place)
	not p.place in limits.places.any_of
}

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
	p.place in limits.places.any_of
}

met contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in judged
	p.schedule in limits.allowed.any_of
}

deficient contains [p.id, ["systems", i, "pipe", j, "schedule"], "allowed"] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.id in judged
	is_string(p.schedule)
	not p.schedule in limits.allowed.any_of
}

missing contains gap if some gap in pipes.unsaid

missing contains [p.id, ["systems", i, "pipe", j, "material"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_string(p.material)
}

missing contains [p.id, ["systems", i, "pipe", j, "place"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_string(p.place)
}

missing contains [p.id, ["systems", i, "pipe", j, "schedule"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_string(p.schedule)
}
