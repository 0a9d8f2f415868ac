package policy.electrical.disconnect_distance_test

import data.policy.electrical.disconnect_distance as rule
import data.policy.lib
import rego.v2

# 32 Ill. Adm. Code 422.150(h)(10) (read in a training text): within 4 ft of an
# exterior fan. National Electrical Code 2017 article 100 (from memory): in sight
# is no more than 50 ft.
profile := {"electrical": {"disconnect_distance": {"maximum": {"si": 1.2192}, "places": {"any_of": ["exterior", "roof"]}}}}

wired(fields) := {"systems": [object.union({"id": "s", "powered_by": "fan"}, fields)]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

apart(distance) := wired({"fan": {"place": "exterior"}, "electrical": {"connection": "hard-wired", "disconnect_distance": {"si": distance}}})

test_met_at_exactly_four_feet if verdict(apart(1.2192)) == "met"

test_deficient_farther if verdict(apart(1.22)) == "deficient"

test_met_at_exactly_fifty_feet_by_the_electrical_code if {
	nec := {"electrical": {"disconnect_distance": {"maximum": {"si": 15.24}, "places": {"any_of": ["exterior", "roof", "attic"]}}}}
	"met" == lib.verdict(rule, "s") with input as apart(15.24) with data.profile as nec
}

test_not_applicable_in_the_attic_where_the_source_is_about_outdoors if verdict(wired({"fan": {"place": "attic"}})) == "not-applicable"

test_not_applicable_with_a_plug if verdict(wired({"electrical": {"connection": "plug-in"}})) == "not-applicable"

test_unrecorded if verdict(wired({})) == "unrecorded"

test_not_applicable_without_a_fan if verdict({"systems": [{"id": "s", "powered_by": "passive"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	got == {
		["s", ["systems", 0, "powered_by"]],
		["s", ["systems", 0, "fan", "place"]],
		["s", ["systems", 0, "electrical", "connection"]],
		["s", ["systems", 0, "electrical", "disconnect_distance"]],
	}
}
