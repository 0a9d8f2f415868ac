package policy.diagnostics.field_test_before_design_test

import data.policy.diagnostics.field_test_before_design as rule
import data.policy.lib
import rego.v2

# SGM-SF 2023, as summarised in the publisher's newsletter (from memory): a field test
# before design everywhere but for radon in single-family homes, with the state of
# the building and the season on record; existing buildings.
profile := {"diagnostics": {"field_test_before_design": {"spared": {"any_of": ["detached", "attached", "manufactured"]}}}}

job(kind, test) := {
	"job": {"contaminant": "radon", "dates": {"work_started": {"si": 1000}}},
	"house": {"kind": kind, "new_construction": false},
	"diagnostics": {"communication_tests": [object.union({"id": "t", "on": {"si": 1000}, "outdoor_temperature": {"si": 280}, "exhausts_running": false}, test)]},
}

verdict(job) := v if v := lib.verdict(rule, "diagnostics") with input as job with data.profile as profile

test_met if verdict(job("two-family", {})) == "met"

test_deficient_after_the_start_of_work if verdict(job("two-family", {"on": {"si": 1001}})) == "deficient"

test_deficient_without_a_test if {
	verdict(object.union(job("two-family", {}), {"diagnostics": {"communication_tests": []}})) == "deficient"
}

test_optional_in_a_single_family_home if verdict(job("detached", {"on": {"si": 9999}})) == "not-applicable"

test_not_optional_for_chemical_vapor if {
	verdict(object.union(job("detached", {"on": {"si": 9999}}), {"job": {"contaminant": "both"}})) == "deficient"
}

test_not_applicable_to_a_new_building if {
	verdict(object.union(job("two-family", {}), {"house": {"new_construction": true}})) == "not-applicable"
}

test_unrecorded_without_the_weather if {
	no_weather := object.union(job("two-family", {}), {"diagnostics": {"communication_tests": [{"id": "t", "on": {"si": 1}, "exhausts_running": true}]}})
	verdict(no_weather) == "unrecorded"
}

test_unrecorded if verdict({}) == "unrecorded"

test_says_what_is_missing if {
	none := rule.missing with input as {} with data.profile as profile
	none == {["diagnostics", path] | some path in [
		["house", "kind"],
		["job", "contaminant"],
		["house", "new_construction"],
		["diagnostics", "communication_tests"],
		["job", "dates", "work_started"],
	]}
	vague := rule.missing with data.profile as profile
		with input as object.union(job("two-family", {}), {"diagnostics": {"communication_tests": [{"id": "t"}]}})
	vague == {["diagnostics", ["diagnostics", "communication_tests", 0, field]] | some field in ["on", "outdoor_temperature", "exhausts_running"]}
}
