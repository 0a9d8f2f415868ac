package policy.exhaust.height_above_flat_roof_test

import data.policy.exhaust.height_above_flat_roof as rule
import data.policy.lib
import rego.v2

# RMS-MF 2018 (12/20) 6.4.10(c): 18 in.
profile := {"exhaust": {"height_above_flat_roof": {"minimum": {"si": 0.4572}, "not_for": {"any_of": ["passive", "rough-in"]}}}}

through(roof, height) := {
	"house": {"roof_kind": roof},
	"systems": [{
		"id": "s", "kind": "sub-slab", "powered_by": "fan",
		"discharge": {"mounting": "through-roof", "height_above_roof": height},
	}],
}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

# Worked case 9, second job: 13 in above a flat roof.
test_deficient_at_thirteen_inches if verdict(through("flat", {"si": 0.3302})) == "deficient"

test_met_at_exactly_eighteen_inches if verdict(through("flat", {"si": 0.4572})) == "met"

test_unrecorded if verdict(through("flat", {})) == "unrecorded"

test_not_applicable_to_a_pitched_roof if verdict(through("pitched", {"si": 0.3302})) == "not-applicable"

test_not_applicable_on_a_wall if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "discharge": {"mounting": "exterior-wall"}}]}) == "not-applicable"

test_not_applicable_when_only_roughed_in if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "rough-in"}]}) == "not-applicable"

test_not_applicable_to_ventilation if verdict({"systems": [{"id": "s", "kind": "heat-recovery-ventilation", "powered_by": "fan"}]}) == "not-applicable"

test_unrecorded_without_the_kind_of_roof if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "discharge": {"mounting": "through-roof", "height_above_roof": {"si": 1}}}]}) == "unrecorded"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["systems", 0, "discharge", "mounting"]],
		["s", ["systems", 0, "discharge", "height_above_roof"]],
		["s", ["house", "roof_kind"]],
	}
}
