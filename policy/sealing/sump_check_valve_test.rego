package policy.sealing.sump_check_valve_test

import data.policy.lib
import data.policy.sealing.sump_check_valve as rule
import rego.v2

# RMS-LB 2018 (12/20) 7.5.3: the discharge of a permanent pump has a check valve.
profile := {"sealing": {"sump_check_valve": {}}}

pit(fields) := {"entry_routes": [{"id": "pit", "kind": "sump", "sump": fields}]}

verdict(job) := v if v := lib.verdict(rule, "pit") with input as job with data.profile as profile

test_met if verdict(pit({"pump": "submersible", "check_valve": true})) == "met"

test_deficient if verdict(pit({"pump": "pedestal", "check_valve": false})) == "deficient"

test_unrecorded if verdict(pit({"pump": "submersible"})) == "unrecorded"

test_unrecorded_pump if verdict(pit({"check_valve": false})) == "unrecorded"

test_not_applicable_without_a_pump if verdict(pit({"pump": "none"})) == "not-applicable"

test_unrecorded_kind if {
	"unrecorded" == lib.verdict(rule, "r") with input as {"entry_routes": [{"id": "r"}]} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as pit({})
	got == {
		["pit", ["entry_routes", 0, "sump", "pump"]],
		["pit", ["entry_routes", 0, "sump", "check_valve"]],
	}
}
