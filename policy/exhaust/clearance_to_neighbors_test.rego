package policy.exhaust.clearance_to_neighbors_test

import data.policy.exhaust.clearance_to_neighbors as rule
import data.policy.lib
import rego.v2

# EPA RMS 1994 14.2.8(4) and 25 Pa. Code 240.308(b)(6): 10 ft, no waiver for
# height.
profile := {"exhaust": {"clearance_to_neighbors": {"minimum": {"si": 3.048}, "not_for": {"any_of": ["passive", "rough-in"]}}}}

system(kind, power) := {"id": "s", "kind": kind, "powered_by": power, "discharge": {}}

job(opening, system) := {
	"house": {"openings": [{"id": "win"}]},
	"systems": [system],
	"derived": {"clearances": [object.union(
		{"id": "s/win", "at": "/house/openings/0", "system": "s", "opening": "win"},
		opening,
	)]},
}

with_fan := system("drain-tile", "fan")

verdict(job) := v if v := lib.verdict(rule, "s/win") with input as job with data.profile as profile

test_met_at_exactly_ten_feet if {
	verdict(job({"building": "adjacent", "distance": {"si": 3.048}}, with_fan)) == "met"
}

test_height_does_not_make_up_for_distance if {
	verdict(job({"building": "adjacent", "distance": {"si": 3}, "drop": {"si": 5}}, with_fan)) == "deficient"
}

test_unrecorded if verdict(job({"building": "adjacent"}, with_fan)) == "unrecorded"

test_unrecorded_without_the_building if verdict(job({"distance": {"si": 4}}, with_fan)) == "unrecorded"

test_openings_of_this_house_have_their_own_requirement if {
	verdict(job({"building": "own", "distance": {"si": 2}}, with_fan)) == "not-applicable"
}

test_not_applicable_without_a_fan if {
	verdict(job({"building": "adjacent", "distance": {"si": 2}}, system("sub-slab", "passive"))) == "not-applicable"
}

test_not_applicable_to_ventilation if {
	verdict(job({"building": "adjacent", "distance": {"si": 2}}, system("heat-recovery-ventilation", "fan"))) == "not-applicable"
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_unrecorded_without_openings if {
	"unrecorded" == lib.verdict(rule, "s") with input as {"systems": [with_fan]} with data.profile as profile
}

test_no_openings_needed_without_an_outlet if {
	"not-applicable" == lib.verdict(rule, "s") with data.profile as profile
		with input as {"systems": [system("sealing-only", "passive")]}
}

test_says_what_is_missing if {
	blank := {
		"house": {"openings": [{"id": "win"}]},
		"systems": [{"id": "s", "discharge": {}}],
		"derived": {"clearances": [{"id": "s/win", "at": "", "system": "s", "opening": "win"}]},
	}
	got := rule.missing with input as blank with data.profile as profile
	got == {
		["s/win", ["systems", 0, "kind"]],
		["s/win", ["systems", 0, "powered_by"]],
		["s/win", ["house", "openings", 0, "building"]],
		["s/win", ["derived", "clearances", 0, "distance"]],
	}
}
