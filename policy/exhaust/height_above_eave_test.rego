package policy.exhaust.height_above_eave_test

import data.policy.exhaust.height_above_eave as rule
import data.policy.lib
import rego.v2

# EPA RMS 1994 14.2.8(1): above the eave.
profile := {"exhaust": {"height_above_eave": {"above": {"si": 0}}}}

outlet(height) := {
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan"}],
	"derived": {"discharges": [{"id": "s", "at": "/systems/0/discharge", "height_above_eave": height}]},
}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met_just_above if verdict(outlet({"si": 0.01})) == "met"

test_deficient_level_with_the_eave if verdict(outlet({"si": 0})) == "deficient"

test_deficient_below if verdict(outlet({"si": -1.2})) == "deficient"

test_unrecorded if verdict(outlet({"undetermined": ["/house/eave_level"]})) == "unrecorded"

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
