package policy.pipe.garage_separation_test

import data.policy.lib
import data.policy.pipe.garage_separation as rule
import rego.v2

# IRC 2018 R302.5.3 and R302.11 item 4 (from memory): penetrations between garage
# and house sealed like fireblocking.
profile := {"pipe": {"garage_separation": {"allowed": {"any_of": ["fireblock", "collar", "damper", "intumescent", "listed-system"]}}}}

segment(holes) := {
	"house": {"garage": {"attached": true}},
	"systems": [{"id": "s", "kind": "sub-slab", "pipe": [object.union({"id": "p"}, holes)]}],
}

hole(fields) := segment({"penetrations": [object.union({"id": "n"}, fields)]})

verdict(job) := v if v := lib.verdict(rule, "n") with input as job with data.profile as profile

test_met if verdict(hole({"through": "garage-separation", "sealed": true, "fire_protection": "fireblock"})) == "met"

test_met_through_a_ceiling_over_the_garage if {
	verdict(hole({"through": "ceiling", "garage_side": true, "sealed": true, "fire_protection": "collar"})) == "met"
}

test_deficient_open if verdict(hole({"through": "garage-separation", "sealed": false})) == "deficient"

test_deficient_unprotected if {
	verdict(hole({"through": "garage-separation", "sealed": true, "fire_protection": "none"})) == "deficient"
}

test_unrecorded_protection if verdict(hole({"through": "garage-separation", "sealed": true})) == "unrecorded"

test_not_applicable_elsewhere if verdict(hole({"through": "floor", "garage_side": false})) == "not-applicable"

test_not_applicable_without_garage if {
	verdict({"house": {"garage": {"attached": false}}, "systems": [{"id": "s", "kind": "sub-slab", "pipe": [{"id": "p", "penetrations": [{"id": "n"}]}]}]}) == "not-applicable"
}

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
		["n", ["systems", 0, "pipe", 0, "penetrations", 0, "through"]],
		["n", ["systems", 0, "pipe", 0, "penetrations", 0, "garage_side"]],
		["n", ["systems", 0, "pipe", 0, "penetrations", 0, "sealed"]],
		["n", ["systems", 0, "pipe", 0, "penetrations", 0, "fire_protection"]],
		["n", ["house", "garage", "attached"]],
	}
}
