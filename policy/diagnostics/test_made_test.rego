package policy.diagnostics.test_made_test

import data.policy.diagnostics.test_made as rule
import data.policy.lib
import rego.v2

# EPA RMS 1994 11.2 (from memory), advice: sub-slab communication is tested.
profile := {"diagnostics": {"test_made": {"kinds": {"any_of": ["sub-slab", "drain-tile"]}}}}

job(system, tests) := {
	"systems": [object.union({"id": "s", "kind": "sub-slab", "foundations": ["f"]}, system)],
	"diagnostics": {"communication_tests": tests},
}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

at(area, holes) := {"id": "t", "foundation": area, "holes": holes}

test_met if verdict(job({}, [at("f", [{"id": "h"}])])) == "met"

test_deficient_without_a_test if verdict(job({}, [])) == "deficient"

test_deficient_without_holes if verdict(job({}, [at("f", [])])) == "deficient"

test_deficient_under_another_area if verdict(job({}, [at("g", [{"id": "h"}])])) == "deficient"

test_unrecorded_when_a_test_does_not_say_where if verdict(job({}, [{"id": "t", "holes": [{"id": "h"}]}])) == "unrecorded"

test_unrecorded_without_tests if verdict(object.remove(job({}, []), ["diagnostics"])) == "unrecorded"

test_not_applicable_to_membranes if verdict(job({"kind": "sub-membrane"}, [])) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	vague := rule.missing with input as {"systems": [{"id": "s"}], "diagnostics": {"communication_tests": [{"id": "t"}]}}
		with data.profile as profile
	vague == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "foundations"]],
		["s", ["diagnostics", "communication_tests", 0, "foundation"]],
		["s", ["diagnostics", "communication_tests", 0, "holes"]],
	}
	none := rule.missing with input as object.remove(job({}, []), ["diagnostics"]) with data.profile as profile
	none == {["s", ["diagnostics", "communication_tests"]]}
}
