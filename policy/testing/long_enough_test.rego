package policy.testing.long_enough_test

import data.policy.lib
import data.policy.testing.long_enough as rule
import rego.v2

# EPA checklist (from memory); 25 Pa. Code 240.310(a)(4)(ii); 32 Ill. Adm. Code
# 422.130(b)(1): 48 h or more.
profile := {"testing": {"long_enough": {"minimum": {"si": 172800}}}}

job(about, values) := {
	"job": {"contaminant": "radon"},
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan"}],
	"measurements": {"tests": [object.union({"id": "t", "phase": "after", "device": "charcoal", "blank": false, "kind": "short-term"}, about)]},
	"derived": {"tests": [object.union({"id": "t", "at": "/measurements/tests/0"}, values)]},
}

verdict(about, values) := v if v := lib.verdict(rule, "t") with input as job(about, values) with data.profile as profile

test_met_at_exactly_two_days if verdict({}, {"duration": {"si": 172800}}) == "met"

test_deficient_an_hour_short if verdict({}, {"duration": {"si": 169200}}) == "deficient"

test_long_tests_are_long_enough if verdict({"kind": "long-term"}, {"duration": {"si": 8640000}}) == "met"

test_unrecorded if verdict({}, {}) == "unrecorded"

test_a_test_before_the_work_is_put_aside if verdict({"phase": "before"}, {}) == "not-applicable"

test_unrecorded_without_a_list if {
	"unrecorded" == lib.verdict(rule, "measurements") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"derived": {"tests": [{"id": "t", "at": ""}]}, "systems": [{"id": "s"}], "measurements": {"tests": [{"id": "t"}]}} with data.profile as profile
	got == {
		["t", ["measurements", "tests", 0, "phase"]],
		["t", ["measurements", "tests", 0, "blank"]],
		["t", ["job", "contaminant"]],
		["t", ["derived", "tests", 0, "duration"]],
	}
}
