package policy.diagnostics.plan_b_test

import data.policy.diagnostics.plan_b as rule
import data.policy.lib
import rego.v2

# common practice: a second plan where the slab does not communicate.
profile := {"diagnostics": {"plan_b": {"no_plan": {"any_of": ["none", "unknown", "n/a"]}}}}

job(communicates, plan) := {"diagnostics": {"slab_communicates": communicates, "plan_b": plan}}

verdict(job) := v if v := lib.verdict(rule, "diagnostics") with input as job with data.profile as profile

test_met if verdict(job(false, "Suction on the block walls")) == "met"

test_deficient_without_a_plan if verdict(job(false, "None")) == "deficient"

test_not_applicable_when_suction_reaches if verdict(job(true, "none")) == "not-applicable"

test_unrecorded if verdict({}) == "unrecorded"

test_unrecorded_when_it_is_not_said_if_suction_reaches if {
	verdict({"diagnostics": {"plan_b": "Suction on the block walls"}}) == "unrecorded"
}

test_says_what_is_missing if {
	got := rule.missing with data.profile as profile with input as {}
	got == {
		["diagnostics", ["diagnostics", "slab_communicates"]],
		["diagnostics", ["diagnostics", "plan_b"]],
	}
}
