package policy.sealing.sump_pump_test

import data.policy.lib
import data.policy.sealing.sump_pump as rule
import rego.v2

# EPA RMS 1994 14.1.5 (from memory): a submersible pump is advised where the pit
# is the suction point.
profile := {"sealing": {"sump_pump": {"pumps": {"any_of": ["submersible"]}}}}

pit(fields) := {"entry_routes": [{"id": "pit", "kind": "sump", "sump": fields}]}

verdict(job) := v if v := lib.verdict(rule, "pit") with input as job with data.profile as profile

test_met if verdict(pit({"suction_here": true, "pump": "submersible"})) == "met"

test_deficient if verdict(pit({"suction_here": true, "pump": "pedestal"})) == "deficient"

test_unrecorded if verdict(pit({"suction_here": true})) == "unrecorded"

test_unrecorded_suction if verdict(pit({"pump": "pedestal"})) == "unrecorded"

test_not_applicable_without_suction if verdict(pit({"suction_here": false})) == "not-applicable"

test_not_applicable_without_a_pump if verdict(pit({"suction_here": true, "pump": "none"})) == "not-applicable"

test_unrecorded_kind if {
	"unrecorded" == lib.verdict(rule, "r") with input as {"entry_routes": [{"id": "r"}]} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as pit({})
	got == {
		["pit", ["entry_routes", 0, "sump", "suction_here"]],
		["pit", ["entry_routes", 0, "sump", "pump"]],
	}
}
