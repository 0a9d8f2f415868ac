package policy.suction.sump_pipe_lifts_out_test

import data.policy.lib
import data.policy.suction.sump_pipe_lifts_out as rule
import rego.v2

# EPA RMS 1994 14.2.7 (from memory): pipe in a sump can be lifted out so that the
# pump can be serviced.
sump(fields) := {"entry_routes": [{"id": "r", "kind": "sump", "sump": fields}]}

verdict(job) := v if v := lib.verdict(rule, "r") with input as job

drawn(fields) := sump(object.union({"suction_here": true, "pump": "submersible"}, fields))

test_met if verdict(drawn({"pipe_lifts_out": true})) == "met"

test_deficient if verdict(drawn({"pipe_lifts_out": false})) == "deficient"

test_unrecorded if verdict(drawn({})) == "unrecorded"

test_unrecorded_without_pump if verdict(sump({"suction_here": true, "pipe_lifts_out": true})) == "unrecorded"

test_not_applicable_without_suction if verdict(sump({"suction_here": false})) == "not-applicable"

test_not_applicable_without_a_pump if verdict(sump({"pump": "none"})) == "not-applicable"

test_unrecorded_when_the_kind_is_not_said if verdict({"entry_routes": [{"id": "r"}]}) == "unrecorded"

test_unrecorded_without_entry_routes if {
	"unrecorded" == lib.verdict(rule, "entry_routes") with input as {}
}

test_says_what_is_missing if {
	got := rule.missing with input as sump({})
	got == {
		["r", ["entry_routes", 0, "sump", "suction_here"]],
		["r", ["entry_routes", 0, "sump", "pump"]],
		["r", ["entry_routes", 0, "sump", "pipe_lifts_out"]],
	}
}
