package policy.testing.system_running_test

import data.policy.lib
import data.policy.testing.system_running as rule
import rego.v2

# EPA measurement protocol text (from memory): the system runs all the time.
profile := {}

job(about, values) := {
	"job": {"contaminant": "radon"},
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan"}],
	"measurements": {"tests": [object.union({"id": "t", "phase": "after", "device": "charcoal", "blank": false, "kind": "short-term"}, about)]},
	"derived": {"tests": [object.union({"id": "t", "at": "/measurements/tests/0"}, values)]},
}

verdict(about, values) := v if v := lib.verdict(rule, "t") with input as job(about, values) with data.profile as profile

test_met if verdict({"system_running": true}, {}) == "met"

test_deficient if verdict({"system_running": false}, {}) == "deficient"

test_unrecorded if verdict({}, {}) == "unrecorded"

test_a_test_before_the_work_is_put_aside if verdict({"phase": "before"}, {}) == "not-applicable"

test_not_applicable_without_a_fan if {
	passive := object.union(job({}, {}), {"systems": [{"id": "s", "powered_by": "passive"}]})
	"not-applicable" == lib.verdict(rule, "t") with input as passive with data.profile as profile
}

test_unrecorded_without_a_list if {
	"unrecorded" == lib.verdict(rule, "measurements") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}], "measurements": {"tests": [{"id": "t"}]}} with data.profile as profile
	got == {
		["t", ["measurements", "tests", 0, "phase"]],
		["t", ["measurements", "tests", 0, "blank"]],
		["t", ["job", "contaminant"]],
		["t", ["systems", 0, "powered_by"]],
		["t", ["measurements", "tests", 0, "system_running"]],
	}
}
