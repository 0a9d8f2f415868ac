package policy.electrical.exterior_hard_wired_test

import data.policy.electrical.exterior_hard_wired as rule
import data.policy.lib
import rego.v2

# EPA RMS 1994 14.6.5 (from memory): no plug-in fan outdoors. 32 Ill. Adm. Code
# 422.150(h)(10) (read in a training text): one in a weatherproof housing or chase.
profile := {"electrical": {"exterior_hard_wired": {"outdoors": {"any_of": ["exterior", "roof"]}, "exceptions": {"any_of": []}}}}

illinois := {"electrical": {"exterior_hard_wired": {"outdoors": {"any_of": ["exterior", "roof"]}, "exceptions": {"any_of": ["weatherproof-housing"]}}}}

wired(fields) := {"systems": [object.union({"id": "s", "powered_by": "fan"}, fields)]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

fan(connection, housing) := wired({
	"fan": object.union({"place": "exterior"}, housing),
	"electrical": {"connection": connection},
})

test_met if verdict(fan("hard-wired", {})) == "met"

test_deficient_with_a_plug if verdict(fan("plug-in", {"housing_weatherproof": true})) == "deficient"

test_met_with_a_plug_in_a_housing_where_that_counts if {
	"met" == lib.verdict(rule, "s") with input as fan("plug-in", {"housing_weatherproof": true}) with data.profile as illinois
}

test_deficient_without_the_housing if {
	"deficient" == lib.verdict(rule, "s") with input as fan("plug-in", {"housing_weatherproof": false}) with data.profile as illinois
}

test_unrecorded_whether_there_is_a_housing if {
	"unrecorded" == lib.verdict(rule, "s") with input as fan("plug-in", {}) with data.profile as illinois
}

test_says_that_the_housing_is_missing if {
	got := rule.missing with input as fan("plug-in", {}) with data.profile as illinois
	got == {["s", ["systems", 0, "fan", "housing_weatherproof"]]}
}

test_not_applicable_in_the_attic if verdict(wired({"fan": {"place": "attic"}})) == "not-applicable"

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
	}
}
