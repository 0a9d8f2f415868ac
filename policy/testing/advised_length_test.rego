package policy.testing.advised_length_test

import data.policy.lib
import data.policy.testing.advised_length as rule
import rego.v2

# EPA consumer guide (from memory): 2 to 7 days.
profile := {"testing": {"advised_length": {"minimum": {"si": 172800}, "maximum": {"si": 604800}}}}

job(about, values) := {
	"job": {"contaminant": "radon"},
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan"}],
	"measurements": {"tests": [object.union({"id": "t", "phase": "after", "device": "charcoal", "blank": false, "kind": "short-term"}, about)]},
	"derived": {"tests": [object.union({"id": "t", "at": "/measurements/tests/0"}, values)]},
}

verdict(about, values) := v if v := lib.verdict(rule, "t") with input as job(about, values) with data.profile as profile

test_met_at_both_ends if {
	verdict({}, {"duration": {"si": 172800}}) == "met"
	verdict({}, {"duration": {"si": 604800}}) == "met"
}

test_deficient_below if verdict({}, {"duration": {"si": 169200}}) == "deficient"

test_deficient_above if verdict({}, {"duration": {"si": 608400}}) == "deficient"

test_unrecorded if verdict({}, {}) == "unrecorded"

test_a_test_before_the_work_is_put_aside if verdict({"phase": "before"}, {}) == "not-applicable"

test_long_term_tests_are_put_aside if verdict({"kind": "long-term"}, {}) == "not-applicable"

test_unrecorded_without_a_list if {
	"unrecorded" == lib.verdict(rule, "measurements") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"derived": {"tests": [{"id": "t", "at": ""}]}, "systems": [{"id": "s"}], "measurements": {"tests": [{"id": "t"}]}} with data.profile as profile
	got == {
		["t", ["measurements", "tests", 0, "phase"]],
		["t", ["measurements", "tests", 0, "blank"]],
		["t", ["job", "contaminant"]],
		["t", ["measurements", "tests", 0, "kind"]],
		["t", ["derived", "tests", 0, "duration"]],
	}
}
