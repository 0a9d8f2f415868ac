package policy.labels.prominent_place_test

import data.policy.labels.prominent_place as rule
import data.policy.lib
import rego.v2

# SGM-SF 2017, publisher's notice on labels (from memory): on a main part such as the
# pipe by the monitor, within 12 in of the service panel, or another prominent place.
profile := {"labels": {"prominent_place": {"places": {"any_of": ["pipe", "gauge", "fan"]}, "panel": {"si": 0.3048}}}}

carrying(label) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"labels": [object.union({"id": "a", "kind": "system"}, label)],
}]}

verdict(job) := v if v := lib.verdict(rule, "a") with input as job with data.profile as profile

test_met_on_the_pipe if verdict(carrying({"place": "pipe"})) == "met"

test_met_in_plain_view if verdict(carrying({"place": "other", "prominent": true})) == "met"

test_met_at_exactly_twelve_inches_from_the_panel if {
	verdict(carrying({"place": "service-panel", "prominent": false, "panel_distance": {"si": 0.3048}})) == "met"
}

test_deficient_farther_from_the_panel if {
	verdict(carrying({"place": "service-panel", "prominent": false, "panel_distance": {"si": 0.31}})) == "deficient"
}

test_unrecorded_place if verdict(carrying({"prominent": false, "panel_distance": {"si": 2}})) == "unrecorded"

test_unrecorded_view if verdict(carrying({"place": "other", "panel_distance": {"si": 2}})) == "unrecorded"

test_unrecorded_distance if verdict(carrying({"place": "other", "prominent": false})) == "unrecorded"

test_unrecorded_labels if {
	"unrecorded" == lib.verdict(rule, "s") with input as {"systems": [{"id": "s"}]} with data.profile as profile
}

test_not_applicable_without_a_fan if {
	verdict({"systems": [{
		"id": "s", "kind": "sub-slab", "powered_by": "passive",
		"labels": [{"id": "a", "kind": "system"}],
	}]}) == "not-applicable"
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s", "kind": "sub-slab", "labels": [{"id": "a", "kind": "system"}, {"id": "b"}]}]}
	got == {
		["a", ["systems", 0, "powered_by"]],
		["b", ["systems", 0, "powered_by"]],
		["b", ["systems", 0, "labels", 1, "kind"]],
		["a", ["systems", 0, "labels", 0, "place"]],
		["a", ["systems", 0, "labels", 0, "prominent"]],
		["a", ["systems", 0, "labels", 0, "panel_distance"]],
	}
}
