package policy.pipe.fire_rated_penetrations_test

import data.policy.lib
import data.policy.pipe.fire_rated_penetrations as rule
import rego.v2

# EPA RMS 1994 14.1.4 (from memory): penetrations of rated assemblies protected as
# codes say; an inspection list looks for a collar or damper.
profile := {"pipe": {"fire_rated_penetrations": {"allowed": {"any_of": ["collar", "damper", "intumescent", "listed-system"]}}}}

segment(holes) := {"systems": [{
	"id": "s", "kind": "sub-slab",
	"pipe": [object.union({"id": "p"}, holes)],
}]}

hole(fields) := segment({"penetrations": [object.union({"id": "n"}, fields)]})

verdict(job) := v if v := lib.verdict(rule, "n") with input as job with data.profile as profile

test_met if verdict(hole({"fire_rated": true, "fire_protection": "collar"})) == "met"

test_deficient if verdict(hole({"fire_rated": true, "fire_protection": "none"})) == "deficient"

test_deficient_with_fireblocking_only if verdict(hole({"fire_rated": true, "fire_protection": "fireblock"})) == "deficient"

test_unrecorded_in_a_rated_wall if verdict(hole({"fire_rated": true})) == "unrecorded"

test_not_applicable_without_rating if verdict(hole({"fire_rated": false})) == "not-applicable"

test_unrecorded if verdict(hole({})) == "unrecorded"

test_unrecorded_without_a_list_of_holes if {
	"unrecorded" == lib.verdict(rule, "p") with input as segment({}) with data.profile as profile
}

test_not_applicable_to_ventilation if {
	verdict({"systems": [{"id": "s", "kind": "heat-recovery-ventilation", "pipe": [{"id": "p", "penetrations": [{"id": "n"}]}]}]}) == "not-applicable"
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s", "pipe": [{"id": "p", "penetrations": [{"id": "n"}]}]}]} with data.profile as profile
	got == {
		["n", ["systems", 0, "kind"]],
		["n", ["systems", 0, "pipe", 0, "penetrations", 0, "fire_rated"]],
		["n", ["systems", 0, "pipe", 0, "penetrations", 0, "fire_protection"]],
	}
}
