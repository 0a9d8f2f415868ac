package policy.testing.long_test_made_test

import data.policy.lib
import data.policy.testing.long_test_made as rule
import rego.v2

# Health Canada public advice (from memory): three months or more, taken as 90 days.
profile := {"testing": {"long_test_made": {"minimum": {"si": 7776000}}}}

job(tests, values) := {
	"job": {"contaminant": "radon"},
	"measurements": {"tests": tests},
	"derived": {"tests": values},
}

verdict(tests, values) := v if v := lib.verdict(rule, "measurements") with input as job(tests, values) with data.profile as profile

after(id) := {"id": id, "phase": "after", "device": "alpha-track", "blank": false}

lasted(id, seconds) := {"id": id, "at": "", "duration": {"si": seconds}}

test_met_at_exactly_ninety_days if verdict([after("t")], [lasted("t", 7776000)]) == "met"

test_deficient_with_a_short_one if verdict([after("t")], [lasted("t", 172800)]) == "deficient"

test_one_long_test_is_enough if verdict([after("a"), after("b")], [lasted("a", 172800), lasted("b", 8640000)]) == "met"

test_a_test_without_an_end_may_be_long if {
	verdict([after("a"), after("b")], [lasted("a", 172800), {"id": "b", "at": ""}]) == "unrecorded"
}

test_nothing_to_judge_without_a_test_after if verdict([], []) == "not-applicable"

test_not_applicable_to_chemical_vapor if {
	other := object.union(job([after("t")], []), {"job": {"contaminant": "chemical-vapor"}})
	"not-applicable" == lib.verdict(rule, "measurements") with input as other with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"derived": {"tests": [{"id": "t", "at": ""}]}, "systems": [], "measurements": {"tests": [{"id": "t"}]}} with data.profile as profile
	got == {
		["measurements", ["measurements", "tests", 0, "phase"]],
		["measurements", ["measurements", "tests", 0, "blank"]],
		["measurements", ["job", "contaminant"]],
		["measurements", ["derived", "tests", 0, "duration"]],
	}
}
