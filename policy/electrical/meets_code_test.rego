package policy.electrical.meets_code_test

import data.policy.electrical.meets_code as rule
import data.policy.lib
import rego.v2

# EPA RMS 1994 14.6.1 (from memory) and 32 Ill. Adm. Code 422.150(h)(10) (read in
# a course text): National Electrical Code and local rules.
wired(fields) := {"systems": [object.union({"id": "s", "powered_by": "fan"}, fields)]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job

test_met if verdict(wired({"electrical": {"meets_code": true}})) == "met"

test_deficient if verdict(wired({"electrical": {"meets_code": false}})) == "deficient"

test_unrecorded if verdict(wired({})) == "unrecorded"

test_not_applicable_without_a_fan if verdict({"systems": [{"id": "s", "powered_by": "passive"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {}
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]}
	got == {
		["s", ["systems", 0, "powered_by"]],
		["s", ["systems", 0, "electrical", "meets_code"]],
	}
}
