package policy.diagnostics.smoke_drawn_in_test

import data.policy.diagnostics.smoke_drawn_in as rule
import data.policy.lib
import rego.v2

# EPA RMS 1994 11.2 (from memory), advice: smoke is among the diagnostic tests; that
# it should be drawn in is common practice.
profile := {}

verdict(test) := v if {
	v := lib.verdict(rule, "t") with input as {"diagnostics": {"smoke_tests": [object.union({"id": "t"}, test)]}}
}

test_met if verdict({"result": "drawn-in"}) == "met"

test_deficient if verdict({"result": "pushed-out"}) == "deficient"

test_undetermined if verdict({"result": "still"}) == "undetermined"

test_unrecorded if verdict({}) == "unrecorded"

test_unrecorded_without_a_list if {
	"unrecorded" == lib.verdict(rule, "diagnostics") with input as {} with data.profile as profile
}
