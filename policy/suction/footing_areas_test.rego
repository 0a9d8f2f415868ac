package policy.suction.footing_areas_test

import data.policy.lib
import data.policy.suction.footing_areas as rule
import rego.v2

# IRC 2018 AF103.6.2 (from memory): where interior footings part the fill, each
# part has its own riser or is joined to one.
area(fields) := {"house": {"foundations": [object.union({"id": "f"}, fields)]}}

verdict(job) := v if v := lib.verdict(rule, "f") with input as job

test_met if verdict(area({"split_by_footings": true, "parts_connected": true})) == "met"

test_deficient if verdict(area({"split_by_footings": true, "parts_connected": false})) == "deficient"

test_unrecorded if verdict(area({"split_by_footings": true})) == "unrecorded"

test_not_applicable_in_one_piece if verdict(area({"split_by_footings": false})) == "not-applicable"

test_unrecorded_whether_split if verdict(area({"parts_connected": true})) == "unrecorded"

test_unrecorded_without_foundations if {
	"unrecorded" == lib.verdict(rule, "house") with input as {}
}

test_says_what_is_missing if {
	got := rule.missing with input as area({})
	got == {
		["f", ["house", "foundations", 0, "split_by_footings"]],
		["f", ["house", "foundations", 0, "parts_connected"]],
	}
}
