package policy.pipe.wall_advised_test

import data.policy.lib
import data.policy.pipe.wall_advised as rule
import rego.v2

# EPA RMS 1994 15.2 (from memory): Schedule 40 advised in garages and where
# weather or knocks get at the pipe.
profile := {"pipe": {"wall_advised": {"allowed": {"any_of": ["sch-40"]}, "places": {"any_of": ["garage", "exterior"]}}}}

segment(fields) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"pipe": [object.union({"id": "p", "above_ground": true}, fields)],
}]}

verdict(job) := v if v := lib.verdict(rule, "p") with input as job with data.profile as profile

pvc(place, schedule) := segment({"material": "pvc", "place": place, "schedule": schedule})

test_met if verdict(pvc("garage", "sch-40")) == "met"

test_deficient if verdict(pvc("exterior", "sch-20")) == "deficient"

test_not_applicable_in_the_basement if verdict(pvc("basement", "sch-20")) == "not-applicable"

test_not_applicable_to_metal if verdict(segment({"material": "metal-downspout", "place": "exterior"})) == "not-applicable"

test_unrecorded if verdict(segment({})) == "unrecorded"

test_not_applicable_below_the_slab if verdict(segment({"above_ground": false})) == "not-applicable"

test_unrecorded_without_a_list_of_pipe if {
	"unrecorded" == lib.verdict(rule, "s") with input as {"systems": [{"id": "s", "kind": "sub-slab"}]} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s", "pipe": [{"id": "p"}]}]} with data.profile as profile
	got == {
		["p", ["systems", 0, "kind"]],
		["p", ["systems", 0, "pipe", 0, "above_ground"]],
		["p", ["systems", 0, "pipe", 0, "material"]],
		["p", ["systems", 0, "pipe", 0, "place"]],
		["p", ["systems", 0, "pipe", 0, "schedule"]],
	}
}
