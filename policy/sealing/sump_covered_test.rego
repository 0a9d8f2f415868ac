package policy.sealing.sump_covered_test

import data.policy.lib
import data.policy.sealing.sump_covered as rule
import rego.v2

# EPA RMS 1994 14.5.1 (from memory): a pit that lets soil gas in, or conditioned
# air into the system, is covered and sealed. IRC 2018 AF103.4.4 and CCAH 2020
# 404.1.1: pits open to soil in new houses. RMS-LB 2018 (12/20) 7.5 (from memory):
# in others too.
profile := {"sealing": {"sump_covered": {"treatments": {"any_of": ["covered-and-sealed", "sealed", "closed"]}}}}

pit(treatment, open) := {"entry_routes": [{
	"id": "pit", "kind": "sump",
	"treatment": treatment, "sump": {"open_to_soil": open},
}]}

verdict(job) := v if v := lib.verdict(rule, "pit") with input as job with data.profile as profile

test_met if verdict(pit("covered-and-sealed", false)) == "met"

test_deficient_when_left_open if verdict(pit("left-open", true)) == "deficient"

test_deficient_when_the_cover_leaks if verdict(pit("covered-and-sealed", true)) == "deficient"

test_not_applicable_to_a_closed_basin if verdict(pit("left-open", false)) == "not-applicable"

test_unrecorded_treatment if {
	verdict({"entry_routes": [{"id": "pit", "kind": "sump", "sump": {"open_to_soil": false}}]}) == "unrecorded"
}

test_unrecorded_whether_open if {
	verdict({"entry_routes": [{"id": "pit", "kind": "sump", "treatment": "left-open"}]}) == "unrecorded"
}

test_unrecorded_kind if {
	"unrecorded" == lib.verdict(rule, "r") with input as {"entry_routes": [{"id": "r"}]} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"entry_routes": [{"id": "pit", "kind": "sump"}]}
	got == {
		["pit", ["entry_routes", 0, "treatment"]],
		["pit", ["entry_routes", 0, "sump", "open_to_soil"]],
	}
}
