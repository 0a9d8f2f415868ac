package policy.diagnostics.vapor_test_points_test

import data.policy.diagnostics.vapor_test_points as rule
import data.policy.lib
import rego.v2

# SGM-SF 2017 (12/20) 13.3.3.2: chemical vapor: three points in a dwelling, one in each
# slab larger than 64 sq ft (5.9457946 m2), one in each membrane.
profile := {"diagnostics": {"vapor_test_points": {
	"house": {"si": 3}, "slab": {"si": 5.9457946},
	"slabs": {"any_of": ["basement", "slab-on-grade", "garage-slab"]}, "contaminants": {"any_of": ["chemical-vapor", "both"]},
}}}

holes(count) := [{"id": id} | some id in array.slice(["a", "b", "c"], 0, count)]

job(area, tests) := {
	"job": {"contaminant": "chemical-vapor"},
	"house": {"foundations": [object.union({"id": "f", "kind": "basement", "footprint": {"si": 90}}, area)]},
	"systems": [{"id": "s", "kind": "sub-membrane", "foundations": ["crawl"]}],
	"diagnostics": {"communication_tests": tests},
}

points(area, count) := {"id": "t", "foundation": area, "holes": holes(count)}

verdict(subject, job) := v if v := lib.verdict(rule, subject) with input as job with data.profile as profile

test_met_with_exactly_three if verdict("diagnostics", job({}, [points("f", 3)])) == "met"

test_deficient_with_two if verdict("diagnostics", job({}, [points("f", 2)])) == "deficient"

test_each_slab_needs_one if {
	verdict("f", job({}, [points("f", 1)])) == "met"
	verdict("f", job({}, [points("g", 3)])) == "deficient"
}

test_a_slab_of_exactly_64_square_feet_needs_none if {
	verdict("f", job({"footprint": {"si": 5.9457946}}, [points("g", 3)])) == "not-applicable"
}

test_each_membrane_needs_one if {
	verdict("crawl", job({"id": "crawl", "kind": "crawlspace"}, [points("crawl", 1)])) == "met"
	verdict("crawl", job({"id": "crawl", "kind": "crawlspace"}, [points("f", 3)])) == "deficient"
}

test_a_crawlspace_without_membrane_needs_none if {
	verdict("f", job({"kind": "crawlspace"}, [points("g", 3)])) == "not-applicable"
}

test_unrecorded_when_a_test_does_not_list_its_holes if {
	verdict("diagnostics", job({}, [points("f", 1), {"id": "u", "foundation": "f"}])) == "unrecorded"
}

test_unrecorded_without_tests if verdict("diagnostics", object.remove(job({}, []), ["diagnostics"])) == "unrecorded"

test_not_applicable_to_radon if {
	verdict("diagnostics", object.union(job({}, []), {"job": {"contaminant": "radon"}})) == "not-applicable"
}

test_says_what_is_missing if {
	vague := rule.missing with data.profile as profile
		with input as {"house": {"foundations": [{"id": "f"}]}, "diagnostics": {"communication_tests": [{"id": "t"}]}}
	vague == {[id, path] |
		some id in ["diagnostics", "f"]
		some path in [
			["job", "contaminant"],
			["diagnostics", "communication_tests", 0, "holes"],
			["diagnostics", "communication_tests", 0, "foundation"],
		]
	} | {
		["f", ["house", "foundations", 0, "kind"]],
		["f", ["house", "foundations", 0, "footprint"]],
	}
	none := rule.missing with input as {"job": {"contaminant": "both"}} with data.profile as profile
	none == {["diagnostics", ["diagnostics", "communication_tests"]]}
}

test_says_which_system_may_have_a_membrane if {
	crawl := {"house": {"foundations": [{"id": "f", "kind": "crawlspace", "footprint": {"si": 60}}]}}
	told := object.union(job({}, []), crawl)
	vague := rule.missing with data.profile as profile with input as object.union(told, {"systems": [{"id": "s"}]})
	vague == {["f", ["systems", 0, "kind"]], ["f", ["systems", 0, "foundations"]]}
	none := rule.missing with data.profile as profile with input as object.remove(told, ["systems"])
	none == {["f", ["systems"]]}
}
