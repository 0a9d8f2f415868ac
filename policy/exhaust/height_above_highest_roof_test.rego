package policy.exhaust.height_above_highest_roof_test

import data.policy.exhaust.height_above_highest_roof as rule
import data.policy.lib
import rego.v2

# 32 Ill. Adm. Code 422.160 (from memory of a training text; sub-clause not
# verified): 12 in above the highest roof, new houses with combined foundations.
profile := {"exhaust": {"height_above_highest_roof": {"minimum": {"si": 0.3048}, "not_for": {"any_of": ["rough-in"]}}}}

stack(new, foundations, height) := {
	"house": {"new_construction": new, "foundations": foundations},
	"systems": [{
		"id": "s", "kind": "sub-slab", "powered_by": "passive",
		"discharge": {"height_above_highest_roof": height},
	}],
}

joined := [{"id": "basement"}, {"id": "crawlspace"}]

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met_at_exactly_twelve_inches if verdict(stack(true, joined, {"si": 0.3048})) == "met"

test_deficient_below if verdict(stack(true, joined, {"si": -0.5})) == "deficient"

test_unrecorded if verdict(stack(true, joined, {})) == "unrecorded"

test_not_applicable_to_an_old_house if verdict(stack(false, joined, {"si": -0.5})) == "not-applicable"

test_not_applicable_to_one_foundation if verdict(stack(true, [{"id": "basement"}], {"si": -0.5})) == "not-applicable"

test_not_applicable_when_only_roughed_in if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "rough-in"}]}) == "not-applicable"

test_not_applicable_to_ventilation if verdict({"systems": [{"id": "s", "kind": "heat-recovery-ventilation", "powered_by": "fan"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["house", "new_construction"]],
		["s", ["house", "foundations"]],
		["s", ["systems", 0, "discharge", "height_above_highest_roof"]],
	}
}
