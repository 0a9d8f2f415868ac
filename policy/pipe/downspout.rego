# METADATA
# title: A downspout stands in for pipe only outdoors, and only in the large size
# description: Downspout seams leak; indoors they let soil gas into the room they pass.
# custom:
#   subject: pipe segment
#   grade: recommended
#   stage: roughed-in
#   remedy: Use round pipe here.
#   limits:
#     shapes: {dimension: choice, sense: one-of}
#     places: {dimension: choice, sense: one-of}
package policy.pipe.downspout

import data.policy.pipes
import rego.v2

limits := data.profile.pipe.downspout

subjects contains gap if some gap in pipes.gaps

subjects contains [p.id, ["systems", i, "pipe", j, "shape"]] if {
	some i, s in input.systems
	some j, p in s.pipe
}

exempt contains outcome if some outcome in pipes.outside

exempt contains [p.id, "it is round pipe"] if {
	some s in input.systems
	some p in s.pipe
	p.shape == "round"
}

judged contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in pipes.judged
	is_string(p.shape)
	p.shape != "round"
}

met contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in judged
	p.shape in limits.shapes.any_of
	p.place in limits.places.any_of
}

deficient contains [p.id, ["systems", i, "pipe", j, "shape"], "shapes"] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.id in judged
	not p.shape in limits.shapes.any_of
}

deficient contains [p.id, ["systems", i, "pipe", j, "place"], "places"] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.id in judged
	is_string(p.place)
	not p.place in limits.places.any_of
}

missing contains gap if some gap in pipes.unsaid

missing contains [p.id, ["systems", i, "pipe", j, "shape"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_string(p.shape)
}

missing contains [p.id, ["systems", i, "pipe", j, "place"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.shape != "round"
	not is_string(p.place)
}
