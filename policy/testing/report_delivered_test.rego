package policy.testing.report_delivered_test

import data.policy.lib
import data.policy.testing.report_delivered as rule
import rego.v2

# 32 Ill. Adm. Code 422.130(o)(1) (from memory): 45 days after pick-up at most.
profile := {"testing": {"report_delivered": {"within": {"si": 3888000}}}}

job(about, values) := {
	"job": {"contaminant": "radon"},
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan"}],
	"measurements": {"tests": [object.union({"id": "t", "phase": "after", "device": "charcoal", "blank": false, "kind": "short-term"}, about)]},
	"derived": {"tests": [object.union({"id": "t", "at": "/measurements/tests/0"}, values)]},
}

verdict(about, values) := v if v := lib.verdict(rule, "t") with input as job(about, values) with data.profile as profile

test_met_on_the_last_day if verdict({}, {"days_to_report": {"si": 3888000}}) == "met"

test_deficient_a_day_later if verdict({}, {"days_to_report": {"si": 3974400}}) == "deficient"

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
		["t", ["derived", "tests", 0, "days_to_report"]],
	}
}
