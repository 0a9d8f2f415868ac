package policy.testing.tested_after_work_test

import data.policy.lib
import data.policy.testing.tested_after_work as rule
import rego.v2

# EPA RMS 1994 17.4 (from memory) and EPA consumer guide: a test after the work.
# Iowa alone is known to let the owner waive it (Iowa Adm. Code 641-44.6); no
# profile encodes Iowa, so that a waiver is recorded as a variance.
profile := {}

job(test) := {
	"job": {"contaminant": "radon"},
	"systems": [{"id": "s", "powered_by": "fan"}],
	"measurements": {"tests": [object.union({"id": "t", "device": "continuous-monitor"}, test)]},
}

verdict(job) := v if v := lib.verdict(rule, "measurements") with input as job with data.profile as profile

test_met if verdict(job({"phase": "after", "result": {"si": 33.3}})) == "met"

test_deficient_with_only_a_test_before if verdict(job({"phase": "before", "result": {"si": 400}})) == "deficient"

test_a_later_test_does_not_stand_in if verdict(job({"phase": "later", "result": {"si": 40}})) == "deficient"

test_deficient_without_any if verdict(object.union(job({}), {"measurements": {"tests": []}})) == "deficient"

test_a_waiver_is_no_test if {
	verdict(object.union(job({}), {"measurements": {"tests": [], "waiver_signed": true}})) == "deficient"
}

test_unrecorded_without_a_result if verdict(job({"phase": "after"})) == "unrecorded"

test_unrecorded_without_a_phase if verdict(job({"result": {"si": 33.3}})) == "unrecorded"

test_unrecorded if verdict({}) == "unrecorded"

test_not_applicable_to_a_rough_in if {
	verdict(object.union(job({}), {"systems": [{"id": "s", "powered_by": "rough-in"}]})) == "not-applicable"
}

test_not_applicable_to_chemical_vapor if {
	verdict(object.union(job({}), {"job": {"contaminant": "chemical-vapor"}})) == "not-applicable"
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}], "measurements": {"tests": [{"id": "t"}]}}
	got == {
		["measurements", ["systems", 0, "powered_by"]],
		["measurements", ["job", "contaminant"]],
		["measurements", ["measurements", "tests", 0, "phase"]],
		["measurements", ["measurements", "tests", 0, "blank"]],
		["measurements", ["measurements", "tests", 0, "result"]],
	}
}
