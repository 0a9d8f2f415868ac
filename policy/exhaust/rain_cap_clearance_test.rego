package policy.exhaust.rain_cap_clearance_test

import data.policy.exhaust.rain_cap_clearance as rule
import data.policy.lib
import rego.v2

# SGM-SF 2017, first printing, 7.4.11: with a cap 15 ft above grade, and 4 ft
# above or 15 ft away from openings that open, of any building.
profile := {"exhaust": {"rain_cap_clearance": {"height": {"si": 4.572}, "away": {"si": 4.572}, "drop": {"si": 1.2192}}}}

capped(height, opening) := {
	"house": {"openings": [{"id": "win"}]},
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "discharge": {"rain_cap": true}}],
	"derived": {
		"discharges": [{"id": "s", "at": "/systems/0/discharge", "height_above_grade": height}],
		"clearances": [object.union(
			{"id": "s/win", "at": "/house/openings/0", "system": "s", "opening": "win"},
			opening,
		)],
	},
}

high := {"si": 4.572}

window(distance, drop) := {"kind": "window", "operable": true, "distance": distance, "drop": drop}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met_at_exactly_fifteen_feet if verdict(capped(high, window({"si": 4.572}, {"si": 0}))) == "met"

test_met_at_exactly_four_feet_above if verdict(capped(high, window({"si": 2}, {"si": 1.2192}))) == "met"

test_met_beside_a_fixed_pane if {
	verdict(capped(high, {"kind": "window", "operable": false, "distance": {"si": 2}, "drop": {"si": 0}})) == "met"
}

test_deficient_too_low if verdict(capped({"si": 4.5}, window({"si": 5}, {"si": 0}))) == "deficient"

test_deficient_too_near if verdict(capped(high, window({"si": 4.5}, {"si": 1.2}))) == "deficient"

# An air intake stands open whatever the record says of it.
test_deficient_too_near_to_an_intake if {
	verdict(capped(high, {"kind": "intake", "operable": false, "distance": {"si": 4}, "drop": {"si": 0}})) == "deficient"
}

test_unrecorded_without_numbers if verdict(capped(high, window({}, {}))) == "unrecorded"

test_unrecorded_without_the_cap if {
	verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "discharge": {}}]}) == "unrecorded"
}

test_unrecorded_openings if {
	verdict(object.remove(capped(high, window({"si": 5}, {"si": 0})), ["house"])) == "unrecorded"
}

test_not_applicable_without_a_cap if {
	verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "discharge": {"rain_cap": false}}]}) == "not-applicable"
}

test_not_applicable_without_a_fan if {
	verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive"}]}) == "not-applicable"
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	blank := {
		"house": {"openings": [{"id": "win"}]},
		"systems": [{"id": "s"}],
		"derived": {
			"discharges": [{"id": "s", "at": "/systems/0/discharge"}],
			"clearances": [{"id": "s/win", "at": "", "system": "s", "opening": "win"}],
		},
	}
	got := rule.missing with input as blank with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["systems", 0, "discharge"]],
		["s", ["systems", 0, "discharge", "rain_cap"]],
		["s", ["house", "openings", 0, "kind"]],
		["s", ["house", "openings", 0, "operable"]],
		["s", ["derived", "discharges", 0, "height_above_grade"]],
		["s", ["derived", "clearances", 0, "distance"]],
		["s", ["derived", "clearances", 0, "drop"]],
	}
}
