package policy.electrical.disconnect_in_sight_test

import data.policy.electrical.disconnect_in_sight as rule
import data.policy.lib
import rego.v2

# 32 Ill. Adm. Code 422.150(h)(10) (read in a training text), exterior fans, and
# National Electrical Code 2017 430.102(B) (from memory), motors anywhere.
profile := {"electrical": {"disconnect_in_sight": {"places": {"any_of": ["exterior", "roof"]}}}}

wired(fields) := {"systems": [object.union({"id": "s", "powered_by": "fan"}, fields)]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

seen(sight) := wired({"fan": {"place": "exterior"}, "electrical": object.union({"connection": "hard-wired"}, sight)})

test_met if verdict(seen({"disconnect_in_sight": true})) == "met"

test_deficient if verdict(seen({"disconnect_in_sight": false})) == "deficient"

test_unrecorded_outdoors if verdict(seen({})) == "unrecorded"

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
		["s", ["systems", 0, "electrical", "disconnect_in_sight"]],
	}
}
