package policy.membrane.turn_up_test

import data.policy.lib
import data.policy.membrane.turn_up as rule
import rego.v2

# Common practice, with the figure of a state weatherization field guide: 6 in.
profile := {"membrane": {"turn_up": {"minimum": {"si": 0.1524}}}}

sheet(fields) := {"systems": [{"id": "s", "kind": "sub-membrane", "membrane": fields}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met_at_exactly_six_inches if verdict(sheet({"wall_turn_up": {"si": 0.1524}})) == "met"

test_deficient if verdict(sheet({"wall_turn_up": {"si": 0.15}})) == "deficient"

test_unrecorded if verdict(sheet({})) == "unrecorded"

test_not_applicable_without_a_membrane if verdict({"systems": [{"id": "s", "kind": "sub-slab"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "membrane", "wall_turn_up"]],
	}
}
