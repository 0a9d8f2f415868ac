package policy.sealing.sump_lid_removable_test

import data.policy.lib
import data.policy.sealing.sump_lid_removable as rule
import rego.v2

# EPA RMS 1994 15.7 (from memory): sealed so that it comes off for service. CCAH
# 2020 404.1.1: the same in new houses.
profile := {"sealing": {"sump_lid_removable": {}}}

pit(fields) := {"entry_routes": [object.union({"id": "pit", "kind": "sump", "treatment": "covered-and-sealed"}, fields)]}

verdict(job) := v if v := lib.verdict(rule, "pit") with input as job with data.profile as profile

test_met if verdict(pit({"removable": true})) == "met"

test_deficient if verdict(pit({"removable": false})) == "deficient"

test_unrecorded if verdict(pit({})) == "unrecorded"

test_not_applicable_without_a_lid if verdict(pit({"treatment": "left-open"})) == "not-applicable"

test_not_applicable_without_a_sump if {
	got := rule.subjects with input as {"entry_routes": [{"id": "crack", "kind": "crack"}]}
	count(got) == 0
}

test_unrecorded_without_entry_routes if {
	"unrecorded" == lib.verdict(rule, "entry_routes") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"entry_routes": [{"id": "pit", "kind": "sump"}]}
	got == {
		["pit", ["entry_routes", 0, "treatment"]],
		["pit", ["entry_routes", 0, "removable"]],
	}
}

test_unrecorded_kind if {
	"unrecorded" == lib.verdict(rule, "r") with input as {"entry_routes": [{"id": "r"}]} with data.profile as profile
}
