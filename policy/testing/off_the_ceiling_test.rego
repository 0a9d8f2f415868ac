package policy.testing.off_the_ceiling_test

import data.policy.lib
import data.policy.testing.off_the_ceiling as rule
import rego.v2

# 25 Pa. Code 240.310(a)(1)(iii): 1 ft from the ceiling too.
profile := {"testing": {"off_the_ceiling": {"minimum": {"si": 0.3048}}}}

job(about, values) := {
	"job": {"contaminant": "radon"},
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan"}],
	"measurements": {"tests": [object.union({"id": "t", "phase": "after", "device": "charcoal", "blank": false, "kind": "short-term"}, about)]},
	"derived": {"tests": [object.union({"id": "t", "at": "/measurements/tests/0"}, values)]},
}

verdict(about, values) := v if v := lib.verdict(rule, "t") with input as job(about, values) with data.profile as profile

test_met_at_exactly_the_limit if verdict({"to_ceiling": {"si": 0.3048}}, {}) == "met"

test_deficient_below if verdict({"to_ceiling": {"si": 0.3}}, {}) == "deficient"

test_unrecorded if verdict({}, {}) == "unrecorded"

test_a_test_before_the_work_is_put_aside if verdict({"phase": "before"}, {}) == "not-applicable"

test_unrecorded_without_a_list if {
	"unrecorded" == lib.verdict(rule, "measurements") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}], "measurements": {"tests": [{"id": "t"}]}} with data.profile as profile
	got == {
		["t", ["measurements", "tests", 0, "phase"]],
		["t", ["measurements", "tests", 0, "blank"]],
		["t", ["job", "contaminant"]],
		["t", ["measurements", "tests", 0, "to_ceiling"]],
	}
}
