package policy.exhaust.level_outlet_test

import data.policy.exhaust.level_outlet as rule
import data.policy.lib
import rego.v2

# SGM-SF 2017, first printing, 7.4.11, informative there: a level outlet 20 ft
# above grade and 10 ft from openings.
profile := {"exhaust": {"level_outlet": {"angle": {"si": 90}, "height": {"si": 6.096}, "radius": {"si": 3.048}}}}

outlet(angle, height, distance) := {
	"house": {"openings": [{"id": "win"}]},
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "discharge": {"angle_from_vertical": angle}}],
	"derived": {
		"discharges": [{"id": "s", "at": "/systems/0/discharge", "height_above_grade": height}],
		"clearances": [{"id": "s/win", "at": "/house/openings/0", "system": "s", "opening": "win", "distance": distance}],
	},
}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met_at_exactly_both_limits if verdict(outlet({"si": 90}, {"si": 6.096}, {"si": 3.048})) == "met"

test_deficient_too_low if verdict(outlet({"si": 90}, {"si": 6}, {"si": 3.048})) == "deficient"

test_deficient_too_near if verdict(outlet({"si": 90}, {"si": 6.096}, {"si": 3})) == "deficient"

test_unrecorded_distance if verdict(outlet({"si": 90}, {"si": 6.096}, {})) == "unrecorded"

test_unrecorded_angle if verdict(outlet({}, {"si": 6.096}, {"si": 3.048})) == "unrecorded"

test_unrecorded_openings if {
	verdict(object.remove(outlet({"si": 90}, {"si": 6.096}, {"si": 3.048}), ["house"])) == "unrecorded"
}

test_not_applicable_to_an_upright_outlet if verdict(outlet({"si": 0}, {"si": 2}, {"si": 2})) == "not-applicable"

test_not_applicable_without_a_fan if {
	verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive"}]}) == "not-applicable"
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	blank := {
		"systems": [{"id": "s", "discharge": {}}],
		"derived": {
			"discharges": [{"id": "s", "at": "/systems/0/discharge"}],
			"clearances": [{"id": "s/win", "at": "", "system": "s", "opening": "win"}],
		},
	}
	got := rule.missing with input as blank with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["house", "openings"]],
		["s", ["systems", 0, "discharge", "angle_from_vertical"]],
		["s", ["derived", "discharges", 0, "height_above_grade"]],
		["s", ["derived", "clearances", 0, "distance"]],
	}
}
