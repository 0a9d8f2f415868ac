package policy.membrane.seams_sealed_test

import data.policy.lib
import data.policy.membrane.seams_sealed as rule
import rego.v2

# CC-1000 2018 6.4.3: tape, ASTM C920 caulk or equal. Illinois training text on 32
# Ill. Adm. Code 422.160: airtight. EPA RMS 1994 14.5.6 (from memory): should.
profile := {"membrane": {"seams_sealed": {}}}

sheet(fields) := {"systems": [{"id": "s", "kind": "sub-membrane", "membrane": fields}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met if verdict(sheet({"has_seams": true, "seams_sealed": true})) == "met"

test_deficient if verdict(sheet({"has_seams": true, "seams_sealed": false})) == "deficient"

test_unrecorded if verdict(sheet({"has_seams": true})) == "unrecorded"

test_unrecorded_condition if verdict(sheet({"seams_sealed": true})) == "unrecorded"

test_not_applicable if verdict(sheet({"has_seams": false, "seams_sealed": false})) == "not-applicable"

test_not_applicable_without_a_membrane if verdict({"systems": [{"id": "s", "kind": "sub-slab"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]}
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "membrane", "has_seams"]],
		["s", ["systems", 0, "membrane", "seams_sealed"]],
	}
}
