package policy.labels.pipe_on_each_level_test

import data.policy.labels.pipe_on_each_level as rule
import data.policy.lib
import rego.v2

# EPA RMS 1994 16.5 (from memory): one label or more on each floor, on interior pipe
# in view. IRC 2018 Appendix F AF103.9 (from memory): also in attics, also passive.
profile := {"labels": {"pipe_on_each_level": {
	"places": {"any_of": ["conditioned-room", "basement", "garage"]},
	"not_for": {"any_of": ["passive", "rough-in"]},
}}}

run := {"id": "p", "visible": true, "place": "basement", "level": "basement"}

laid(pipe, labels) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"pipe": [pipe], "labels": labels,
}]}

here := {"id": "a", "kind": "pipe", "level": "Basement"}

there := {"id": "a", "kind": "pipe", "level": "first floor"}

verdict(job) := v if v := lib.verdict(rule, "p") with input as job with data.profile as profile

test_met if verdict(laid(run, [here])) == "met"

test_met_by_the_system_label_on_the_pipe if {
	verdict(laid(run, [{"id": "a", "kind": "system", "place": "pipe", "level": "basement"}])) == "met"
}

test_deficient_on_another_level if verdict(laid(run, [there])) == "deficient"

test_deficient_without_labels if verdict(laid(run, [])) == "deficient"

test_deficient_when_the_system_label_hangs_elsewhere if {
	verdict(laid(run, [{"id": "a", "kind": "system", "place": "service-panel", "level": "basement"}])) == "deficient"
}

test_unrecorded_level_of_the_label if verdict(laid(run, [there, {"id": "b", "kind": "pipe"}])) == "unrecorded"

test_unrecorded_kind_of_label if verdict(laid(run, [there, {"id": "b"}])) == "unrecorded"

test_unrecorded_place_of_the_system_label if verdict(laid(run, [there, {"id": "b", "kind": "system"}])) == "unrecorded"

test_unrecorded_view if verdict(laid(object.remove(run, ["visible"]), [here])) == "unrecorded"

test_unrecorded_place if verdict(laid(object.remove(run, ["place"]), [here])) == "unrecorded"

test_unrecorded_level if verdict(laid(object.remove(run, ["level"]), [here])) == "unrecorded"

test_unrecorded_labels if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "pipe": [run]}]}) == "unrecorded"

test_unrecorded_pipe if {
	"unrecorded" == lib.verdict(rule, "s") with input as {"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan"}]} with data.profile as profile
}

test_not_applicable_out_of_view if verdict(laid(object.union(run, {"visible": false}), [])) == "not-applicable"

test_not_applicable_outdoors if verdict(laid(object.union(run, {"place": "exterior"}), [])) == "not-applicable"

passive(pipe) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "passive",
	"pipe": pipe, "labels": [],
}]}

test_not_applicable_without_a_fan if verdict(passive([run])) == "not-applicable"

test_not_applicable_to_ventilation if {
	verdict({"systems": [{"id": "s", "kind": "heat-recovery-ventilation", "powered_by": "fan", "pipe": [run]}]}) == "not-applicable"
}

test_not_applicable_without_fan_and_pipe if {
	"not-applicable" == lib.verdict(rule, "s") with input as {"systems": [{"id": "s", "powered_by": "passive"}]} with data.profile as profile
}

test_deficient_in_an_attic_of_a_new_house if {
	irc := {"labels": {"pipe_on_each_level": {"places": {"any_of": ["attic"]}, "not_for": {"any_of": []}}}}
	attic := {"id": "p", "visible": true, "place": "attic", "level": "attic"}
	"deficient" == lib.verdict(rule, "p") with input as passive([attic]) with data.profile as irc
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with data.profile as profile with input as {"systems": [{
		"id": "s",
		"pipe": [{"id": "p"}],
		"labels": [{"id": "a"}, {"id": "b", "kind": "pipe"}, {"id": "c", "kind": "system"}],
	}]}
	got == {
		["p", ["systems", 0, "kind"]],
		["p", ["systems", 0, "powered_by"]],
		["p", ["systems", 0, "labels", 0, "kind"]],
		["p", ["systems", 0, "labels", 1, "level"]],
		["p", ["systems", 0, "labels", 2, "place"]],
		["p", ["systems", 0, "pipe", 0, "visible"]],
		["p", ["systems", 0, "pipe", 0, "place"]],
		["p", ["systems", 0, "pipe", 0, "level"]],
	}
}
