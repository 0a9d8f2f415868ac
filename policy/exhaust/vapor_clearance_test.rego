package policy.exhaust.vapor_clearance_test

import data.policy.exhaust.vapor_clearance as rule
import data.policy.lib
import rego.v2

# 35 Ill. Adm. Code 742.1210(c)(1)(D): 10 ft from any door or window, no waiver
# for height.
profile := {"exhaust": {"vapor_clearance": {
	"minimum": {"si": 3.048},
	"kinds": {"any_of": ["door", "window"]},
	"contaminants": {"any_of": ["chemical-vapor", "both"]},
}}}

job(contaminant, power, opening) := {
	"job": {"contaminant": contaminant},
	"house": {"openings": [{"id": "win"}]},
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": power, "discharge": {}}],
	"derived": {"clearances": [object.union(
		{"id": "s/win", "at": "/house/openings/0", "system": "s", "opening": "win"},
		opening,
	)]},
}

window(distance, drop) := {"kind": "window", "distance": {"si": distance}, "drop": {"si": drop}}

verdict(job) := v if v := lib.verdict(rule, "s/win") with input as job with data.profile as profile

test_met_at_exactly_ten_feet if verdict(job("chemical-vapor", "fan", window(3.048, 0))) == "met"

test_height_does_not_make_up_for_distance if verdict(job("both", "fan", window(3, 4))) == "deficient"

test_unrecorded if verdict(job("both", "fan", {"kind": "window"})) == "unrecorded"

test_unrecorded_without_the_kind if verdict(job("both", "fan", {"distance": {"si": 4}})) == "unrecorded"

test_unrecorded_without_the_contaminant if {
	verdict(object.remove(job("both", "fan", window(2, 0)), ["job"])) == "unrecorded"
}

test_not_applicable_to_radon if verdict(job("radon", "fan", window(2, 0))) == "not-applicable"

test_not_applicable_without_a_fan if verdict(job("both", "passive", window(2, 0))) == "not-applicable"

test_not_applicable_to_a_chimney if {
	verdict(job("both", "fan", {"kind": "chimney", "distance": {"si": 1}})) == "not-applicable"
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_unrecorded_without_openings if {
	"unrecorded" == lib.verdict(rule, "s") with data.profile as profile
		with input as object.remove(job("both", "fan", {}), ["house", "derived"])
}

test_no_openings_needed_without_a_fan if {
	"not-applicable" == lib.verdict(rule, "s") with data.profile as profile
		with input as object.remove(job("both", "passive", {}), ["house", "derived"])
}

test_says_what_is_missing if {
	blank := {
		"house": {"openings": [{"id": "win"}]},
		"systems": [{"id": "s"}, {"id": "u"}],
		"derived": {"clearances": [{"id": "s/win", "at": "", "system": "s", "opening": "win"}]},
	}
	got := rule.missing with input as blank with data.profile as profile
	got == {
		["u", ["job", "contaminant"]],
		["u", ["systems", 1, "discharge"]],
		["s/win", ["job", "contaminant"]],
		["s/win", ["systems", 0, "kind"]],
		["s/win", ["systems", 0, "powered_by"]],
		["s/win", ["house", "openings", 0, "kind"]],
		["s/win", ["derived", "clearances", 0, "distance"]],
	}
}
