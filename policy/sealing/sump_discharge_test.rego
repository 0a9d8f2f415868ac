package policy.sealing.sump_discharge_test

import data.policy.lib
import data.policy.sealing.sump_discharge as rule
import rego.v2

# RMS-LB 2018 (12/20) 7.5.3: where the discharge is found to be flexible, rigid
# pipe is recommended in writing.
profile := {"sealing": {"sump_discharge": {}}}

pit(fields) := {"entry_routes": [{"id": "pit", "kind": "sump", "sump": fields}]}

verdict(job) := v if v := lib.verdict(rule, "pit") with input as job with data.profile as profile

test_met_with_rigid_pipe if verdict(pit({"pump": "submersible", "discharge_pipe": "rigid"})) == "met"

test_met_when_advised if {
	verdict(pit({"pump": "submersible", "discharge_pipe": "flexible", "rigid_pipe_advised": true})) == "met"
}

test_deficient if {
	verdict(pit({"pump": "submersible", "discharge_pipe": "flexible", "rigid_pipe_advised": false})) == "deficient"
}

test_unrecorded_advice if verdict(pit({"pump": "submersible", "discharge_pipe": "flexible"})) == "unrecorded"

test_unrecorded_pipe if verdict(pit({"pump": "submersible"})) == "unrecorded"

test_unrecorded_pump if verdict(pit({"discharge_pipe": "rigid"})) == "unrecorded"

test_not_applicable_without_a_pump if verdict(pit({"pump": "none"})) == "not-applicable"

test_unrecorded_without_entry_routes if {
	"unrecorded" == lib.verdict(rule, "entry_routes") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"entry_routes": [
		{"id": "a", "kind": "sump"},
		{"id": "b", "kind": "sump", "sump": {"pump": "submersible", "discharge_pipe": "flexible"}},
	]}
	got == {
		["a", ["entry_routes", 0, "sump", "pump"]],
		["a", ["entry_routes", 0, "sump", "discharge_pipe"]],
		["b", ["entry_routes", 1, "sump", "rigid_pipe_advised"]],
	}
}
