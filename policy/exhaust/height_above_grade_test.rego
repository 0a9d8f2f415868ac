package policy.exhaust.height_above_grade_test

import data.policy.exhaust.height_above_grade as rule
import data.policy.lib
import rego.v2

# EPA RMS 1994 14.2.8(2) and 25 Pa. Code 240.308(b)(3): 10 ft or more, 10.0
# passes. The first speaks of systems with a fan only.
profile := {"exhaust": {"height_above_grade": {"minimum": {"si": 3.048}, "not_for": {"any_of": ["passive", "rough-in"]}}}}

outlet(height) := {
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan"}],
	"derived": {"discharges": [{"id": "s", "at": "/systems/0/discharge", "height_above_grade": height}]},
}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met_at_exactly_ten_feet if verdict(outlet({"si": 3.048})) == "met"

# A soft metric 3 m is 9.84 ft.
test_deficient_at_three_metres if verdict(outlet({"si": 3})) == "deficient"

# Worked case 5: 9.2 ft above the ground nearest to the outlet, 10.4 ft above the
# lower end of the lot. 25 Pa. Code 240.308(b)(3) counts from the nearest ground.
test_deficient_above_the_nearest_ground if verdict(outlet({"si": 2.80416})) == "deficient"

# Worked case 33: the outlet 7 ft up fails EPA RMS 1994 14.2.8(2) by itself.
test_deficient_at_seven_feet if verdict(outlet({"si": 2.1336})) == "deficient"

test_unrecorded if verdict(outlet({"undetermined": ["/systems/0/discharge/height_above_grade"]})) == "unrecorded"

test_unrecorded_without_a_discharge if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan"}]}) == "unrecorded"

test_not_applicable_when_only_roughed_in if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "rough-in"}]}) == "not-applicable"

test_not_applicable_to_ventilation if verdict({"systems": [{"id": "s", "kind": "heat-recovery-ventilation", "powered_by": "fan"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}], "derived": {"discharges": [{"id": "s", "at": "/systems/0/discharge"}]}} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["derived", "discharges", 0, "height_above_grade"]],
	}
}

# 25 Pa. Code 240.308(b): passive systems too.
test_passive_counts_where_the_source_says_so if {
	both := {"exhaust": {"height_above_grade": {"minimum": {"si": 3.048}, "not_for": {"any_of": ["rough-in"]}}}}
	"deficient" == lib.verdict(rule, "s") with data.profile as both with input as {
		"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive"}],
		"derived": {"discharges": [{"id": "s", "at": "/systems/0/discharge", "height_above_grade": {"si": 3}}]},
	}
}

# A profile without an established limit decides nothing.
test_unknown_limit_decides_nothing if {
	unknown := {"exhaust": {"height_above_grade": {"minimum": {}, "not_for": {"any_of": ["passive", "rough-in"]}}}}
	"unrecorded" == lib.verdict(rule, "s") with input as outlet({"si": 3.048}) with data.profile as unknown
}
