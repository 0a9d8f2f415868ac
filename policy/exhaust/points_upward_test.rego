package policy.exhaust.points_upward_test

import data.policy.exhaust.points_upward as rule
import data.policy.lib
import rego.v2

# RMS-MF 2018 (12/20) 6.4.9: at most 45 degrees off vertical; the first printing
# of SGM-SF 2017, 7.4.11, treats a level outlet apart.
profile := {"exhaust": {
	"points_upward": {"maximum": {"si": 45}, "exceptions": {"any_of": ["level"]}, "not_for": {"any_of": ["passive", "rough-in"]}},
	"level_outlet": {"angle": {"si": 90}},
}}

outlet(discharge) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"discharge": discharge,
}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met_straight_up if verdict(outlet({"angle_from_vertical": {"si": 0}})) == "met"

test_met_at_exactly_45_degrees if verdict(outlet({"angle_from_vertical": {"si": 45}})) == "met"

# Worked case 11: a 60-degree elbow fails both texts.
test_deficient_at_60_degrees if verdict(outlet({"angle_from_vertical": {"si": 60}})) == "deficient"

test_deficient_downward if verdict(outlet({"angle_from_vertical": {"si": 180}})) == "deficient"

test_a_level_outlet_has_its_own_requirement if verdict(outlet({"angle_from_vertical": {"si": 90}})) == "not-applicable"

test_unrecorded if verdict(outlet({})) == "unrecorded"

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
		["s", ["systems", 0, "discharge", "angle_from_vertical"]],
	}
}

# 25 Pa. Code 240.308(b)(2): vertical, one 45-degree elbow at most, no other
# way out; passive systems too.
pennsylvania := {"exhaust": {
	"points_upward": {"maximum": {"si": 45}, "exceptions": {"any_of": []}, "not_for": {"any_of": ["rough-in"]}},
	"level_outlet": {"angle": {"si": 90}},
}}

# Worked case 11.
test_pennsylvania_fails_60_degrees if {
	"deficient" == lib.verdict(rule, "s") with data.profile as pennsylvania
		with input as outlet({"angle_from_vertical": {"si": 60}})
}

test_pennsylvania_has_no_exception_for_level if {
	"deficient" == lib.verdict(rule, "s") with data.profile as pennsylvania
		with input as outlet({"angle_from_vertical": {"si": 90}})
}
