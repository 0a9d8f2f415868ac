package policy.exhaust.below_eave_test

import data.policy.exhaust.below_eave as rule
import data.policy.lib
import rego.v2

# RMS-MF 2018 (12/20) 6.4.11(a)-(c): 20 ft above grade, the reason written down,
# air beside the outlet tested.
profile := {"exhaust": {"below_eave": {"eave": {"si": 0}, "height": {"si": 6.096}}}}

outlet(above_eave, above_grade, discharge) := {
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "discharge": discharge}],
	"derived": {"discharges": [{
		"id": "s", "at": "/systems/0/discharge",
		"height_above_eave": above_eave, "height_above_grade": above_grade,
	}]},
}

shown := {"below_eave_reason": "Eave is 24 ft up", "adjoining_air_tested": true}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met_at_exactly_twenty_feet if verdict(outlet({"si": -1.2}, {"si": 6.096}, shown)) == "met"

test_deficient_too_low if verdict(outlet({"si": -1.2}, {"si": 6}, shown)) == "deficient"

test_deficient_untested if verdict(outlet({"si": -1.2}, {"si": 6.5}, {"below_eave_reason": "Eave is 24 ft up", "adjoining_air_tested": false})) == "deficient"

test_unrecorded_without_a_reason if verdict(outlet({"si": -1.2}, {"si": 6.5}, {"adjoining_air_tested": true})) == "unrecorded"

test_unrecorded_without_the_eave if verdict(outlet({}, {"si": 6.5}, shown)) == "unrecorded"

test_not_applicable_above_the_eave if verdict(outlet({"si": 0.3}, {"si": 5}, {})) == "not-applicable"

test_not_applicable_without_a_fan if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}], "derived": {"discharges": [{"id": "s", "at": "/systems/0/discharge"}]}} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["derived", "discharges", 0, "height_above_eave"]],
	}
}

test_says_what_a_low_outlet_lacks if {
	got := rule.missing with input as outlet({"si": -1.2}, {}, {}) with data.profile as profile
	got == {
		["s", ["derived", "discharges", 0, "height_above_grade"]],
		["s", ["systems", 0, "discharge", "below_eave_reason"]],
		["s", ["systems", 0, "discharge", "adjoining_air_tested"]],
	}
}
