package policy.labels.exterior_weatherproof_test

import data.policy.labels.exterior_weatherproof as rule
import data.policy.lib
import rego.v2

# Illinois (from memory, course text): outdoor fan and pipe carry weatherproof labels.
profile := {"labels": {"exterior_weatherproof": {"outdoors": {"any_of": ["exterior", "enclosure-outdoors", "roof"]}}}}

built(fan, pipe, labels) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"fan": fan, "pipe": [pipe], "labels": labels,
}]}

out := {"place": "exterior"}

stack := {"id": "p", "place": "exterior"}

riser := {"id": "p", "place": "basement"}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met if verdict(built(out, stack, [{"id": "a", "kind": "exterior", "place": "fan", "weatherproof": true}])) == "met"

test_met_on_the_stack if {
	verdict(built({"place": "attic"}, stack, [{"id": "a", "kind": "pipe", "place": "exterior-pipe", "weatherproof": true}])) == "met"
}

test_deficient_without_a_label if verdict(built(out, stack, [{"id": "a", "kind": "system", "place": "pipe"}])) == "deficient"

test_deficient_paper if {
	verdict(built(out, stack, [{"id": "a", "kind": "exterior", "place": "exterior-pipe", "weatherproof": false}])) == "deficient"
}

test_unrecorded_weatherproof if {
	verdict(built(out, stack, [{"id": "a", "kind": "exterior", "place": "exterior-pipe"}])) == "unrecorded"
}

test_unrecorded_place_of_the_label if verdict(built(out, stack, [{"id": "a", "kind": "pipe"}])) == "unrecorded"

test_unrecorded_place_of_the_fan if verdict(built({}, riser, [])) == "unrecorded"

test_unrecorded_place_of_the_pipe if verdict(built({"place": "attic"}, {"id": "p"}, [])) == "unrecorded"

test_unrecorded_labels if {
	verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "fan": out}]}) == "unrecorded"
}

test_not_applicable_when_all_is_indoors if verdict(built({"place": "attic"}, riser, [])) == "not-applicable"

test_not_applicable_without_a_fan if {
	verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive", "labels": []}]}) == "not-applicable"
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with data.profile as profile with input as {"systems": [
		{"id": "s", "labels": [{"id": "a"}, {"id": "b", "kind": "exterior"}]},
		{"id": "t", "kind": "sub-slab", "powered_by": "fan", "fan": {"place": "attic"}, "pipe": [{"id": "p"}], "labels": []},
	]}
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["systems", 0, "labels", 0, "kind"]],
		["s", ["systems", 0, "labels", 0, "place"]],
		["s", ["systems", 0, "labels", 1, "place"]],
		["s", ["systems", 0, "labels", 1, "weatherproof"]],
		["s", ["systems", 0, "fan", "place"]],
		["s", ["systems", 0, "pipe"]],
		["t", ["systems", 1, "pipe", 0, "place"]],
	}
}
