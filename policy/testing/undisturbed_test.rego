package policy.testing.undisturbed_test

import data.policy.lib
import data.policy.testing.undisturbed as rule
import rego.v2

# 25 Pa. Code 240.310(a)(4)(i): devices stay undisturbed during the test; 32 Ill.
# Adm. Code 422.130(a)(1)(D)(i) says the same.
job(about) := {
	"job": {"contaminant": "radon"},
	"measurements": {"tests": [object.union({"id": "t", "phase": "after", "device": "charcoal", "blank": false, "kind": "short-term"}, about)]},
}

verdict(about) := v if v := lib.verdict(rule, "t") with input as job(about)

test_met if verdict({"tampering": false}) == "met"

test_deficient if verdict({"tampering": true}) == "deficient"

test_unrecorded if verdict({}) == "unrecorded"

test_a_test_before_the_work_is_put_aside if verdict({"phase": "before", "tampering": true}) == "not-applicable"

test_unrecorded_without_a_list if "unrecorded" == lib.verdict(rule, "measurements") with input as {}

test_says_what_is_missing if {
	got := rule.missing with input as {"measurements": {"tests": [{"id": "t"}]}}
	got == {
		["t", ["measurements", "tests", 0, "phase"]],
		["t", ["measurements", "tests", 0, "blank"]],
		["t", ["job", "contaminant"]],
		["t", ["measurements", "tests", 0, "tampering"]],
	}
}
