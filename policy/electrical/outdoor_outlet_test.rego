package policy.electrical.outdoor_outlet_test

import data.policy.electrical.outdoor_outlet as rule
import data.policy.lib
import rego.v2

# National Electrical Code 2017 406.9(B) (from memory): weather-resistant outlet
# with a cover that closes over the plug.
profile := {"electrical": {"outdoor_outlet": {"outdoors": {"any_of": ["exterior", "enclosure-outdoors", "roof"]}}}}

wired(fields) := {"systems": [object.union({"id": "s", "powered_by": "fan"}, fields)]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

socket(proof) := wired({"fan": {"place": "exterior"}, "electrical": object.union({"connection": "plug-in"}, proof)})

test_met if verdict(socket({"outlet_weatherproof": true})) == "met"

test_deficient if verdict(socket({"outlet_weatherproof": false})) == "deficient"

test_unrecorded_outdoors if verdict(socket({})) == "unrecorded"

test_not_applicable_in_the_attic if verdict(wired({"fan": {"place": "attic"}})) == "not-applicable"

test_not_applicable_to_fixed_wiring if verdict(wired({"electrical": {"connection": "hard-wired"}})) == "not-applicable"

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
		["s", ["systems", 0, "electrical", "outlet_weatherproof"]],
	}
}
