package policy.diagnostics.meter_zeroed_test

import data.policy.diagnostics.meter_zeroed as rule
import data.policy.lib
import rego.v2

# common practice: the zero is read before and after.
profile := {}

verdict(test) := v if {
	v := lib.verdict(rule, "t") with input as {"diagnostics": {"communication_tests": [object.union({"id": "t"}, test)]}}
}

test_met if verdict({"zero_checked": true}) == "met"

test_deficient if verdict({"zero_checked": false}) == "deficient"

test_unrecorded if verdict({}) == "unrecorded"

test_unrecorded_without_a_list if {
	"unrecorded" == lib.verdict(rule, "diagnostics") with input as {} with data.profile as profile
}
