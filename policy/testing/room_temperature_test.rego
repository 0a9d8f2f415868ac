package policy.testing.room_temperature_test

import data.policy.lib
import data.policy.testing.room_temperature as rule
import rego.v2

# SGM-SF 2017 (12/20), sample notice: about 65 to 80 F (291.48 and 299.82 K).
profile := {"testing": {"room_temperature": {"minimum": {"si": 291.48}, "maximum": {"si": 299.82}}}}

job(about, values) := {
	"job": {"contaminant": "radon"},
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan"}],
	"measurements": {"tests": [object.union({"id": "t", "phase": "after", "device": "charcoal", "blank": false, "kind": "short-term"}, about)]},
	"derived": {"tests": [object.union({"id": "t", "at": "/measurements/tests/0"}, values)]},
}

verdict(about, values) := v if v := lib.verdict(rule, "t") with input as job(about, values) with data.profile as profile

test_met_at_both_ends if {
	verdict({"indoor_temperature": {"si": 291.48}}, {}) == "met"
	verdict({"indoor_temperature": {"si": 299.82}}, {}) == "met"
}

test_deficient_when_cold if verdict({"indoor_temperature": {"si": 289}}, {}) == "deficient"

test_deficient_when_hot if verdict({"indoor_temperature": {"si": 300}}, {}) == "deficient"

test_unrecorded if verdict({}, {}) == "unrecorded"

test_a_test_before_the_work_is_put_aside if verdict({"phase": "before"}, {}) == "not-applicable"

test_long_term_tests_are_put_aside if verdict({"kind": "long-term"}, {}) == "not-applicable"

test_unrecorded_without_a_list if {
	"unrecorded" == lib.verdict(rule, "measurements") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}], "measurements": {"tests": [{"id": "t"}]}} with data.profile as profile
	got == {
		["t", ["measurements", "tests", 0, "phase"]],
		["t", ["measurements", "tests", 0, "blank"]],
		["t", ["job", "contaminant"]],
		["t", ["measurements", "tests", 0, "kind"]],
		["t", ["measurements", "tests", 0, "indoor_temperature"]],
	}
}
