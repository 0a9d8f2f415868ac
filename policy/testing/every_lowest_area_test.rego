package policy.testing.every_lowest_area_test

import data.policy.lib
import data.policy.testing.every_lowest_area as rule
import rego.v2

# 32 Ill. Adm. Code 422.130(a)(1): basement, slab room and room over a crawlspace
# are all measured; 25 Pa. Code 240.310(a): each zone that touches soil.
profile := {"testing": {"every_lowest_area": {"kinds": {"any_of": ["basement", "slab-on-grade", "crawlspace", "earth-floor"]}}}}

job(area, tests) := {
	"job": {"contaminant": "radon"},
	"house": {"foundations": [object.union({"id": "f", "kind": "basement"}, area)]},
	"measurements": {"tests": tests},
}

verdict(job) := v if v := lib.verdict(rule, "f") with input as job with data.profile as profile

over(area) := {"id": "t", "phase": "after", "device": "continuous-monitor", "foundation": area}

test_met if verdict(job({}, [over("f")])) == "met"

test_deficient_when_only_another_area_was_tested if verdict(job({}, [over("wing")])) == "deficient"

test_deficient_over_a_crawlspace if verdict(job({"kind": "crawlspace"}, [over("wing")])) == "deficient"

test_unrecorded_when_a_test_does_not_say_where if {
	verdict(job({}, [over("wing"), {"id": "u", "phase": "after", "device": "continuous-monitor"}])) == "unrecorded"
}

test_unrecorded_without_tests if {
	verdict({"job": {"contaminant": "radon"}, "house": {"foundations": [{"id": "f", "kind": "basement"}]}}) == "unrecorded"
}

test_nobody_lives_over_a_garage_slab if verdict(job({"kind": "garage-slab"}, [over("wing")])) == "not-applicable"

test_nothing_to_judge_without_a_test_after if verdict(job({}, [])) == "not-applicable"

test_not_applicable_to_chemical_vapor if {
	verdict(object.union(job({}, [over("wing")]), {"job": {"contaminant": "chemical-vapor"}})) == "not-applicable"
}

test_unrecorded_without_areas if {
	"unrecorded" == lib.verdict(rule, "house") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"house": {"foundations": [{"id": "f"}]}, "measurements": {"tests": [{"id": "t"}]}} with data.profile as profile
	got == {
		["f", ["house", "foundations", 0, "kind"]],
		["f", ["job", "contaminant"]],
		["f", ["measurements", "tests", 0, "phase"]],
		["f", ["measurements", "tests", 0, "blank"]],
		["f", ["measurements", "tests", 0, "foundation"]],
	}
}
