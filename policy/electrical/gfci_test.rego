package policy.electrical.gfci_test

import data.policy.electrical.gfci as rule
import data.policy.lib
import rego.v2

# National Electrical Code 2017 210.8(A) (from memory): 125 V outlets in garages,
# outdoors, in crawlspaces and basements.
profile := {"electrical": {"gfci": {"places": {"any_of": ["garage", "exterior"]}, "connections": {"any_of": ["plug-in"]}}}}

wired(fields) := {"systems": [object.union({"id": "s", "powered_by": "fan"}, fields)]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

fed(place, connection, gfci) := wired({"fan": {"place": place}, "electrical": object.union({"connection": connection}, gfci)})

test_met if verdict(fed("garage", "plug-in", {"gfci": true})) == "met"

test_deficient if verdict(fed("garage", "plug-in", {"gfci": false})) == "deficient"

test_unrecorded_in_the_garage if verdict(fed("garage", "plug-in", {})) == "unrecorded"

test_not_applicable_in_the_attic if verdict(fed("attic", "plug-in", {})) == "not-applicable"

test_not_applicable_to_fixed_wiring if verdict(fed("exterior", "hard-wired", {})) == "not-applicable"

# A county's photo guidance (no source: common practice): outdoors the switch too.
test_deficient_with_fixed_wiring_where_it_counts if {
	county := {"electrical": {"gfci": {"places": {"any_of": ["exterior"]}, "connections": {"any_of": ["plug-in", "hard-wired"]}}}}
	"deficient" == lib.verdict(rule, "s") with input as fed("exterior", "hard-wired", {"gfci": false}) with data.profile as county
}

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
		["s", ["systems", 0, "electrical", "gfci"]],
	}
}
