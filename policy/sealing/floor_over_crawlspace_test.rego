package policy.sealing.floor_over_crawlspace_test

import data.policy.lib
import data.policy.sealing.floor_over_crawlspace as rule
import rego.v2

# EPA RMS 1994 14.5.8 (from memory): the floor above is sealed. SGM-SF 2017 (12/20)
# 7.9: isolation is critical where the crawlspace itself is under suction.
profile := {"sealing": {"floor_over_crawlspace": {}}}

crawl(fields) := {
	"systems": [{"id": "s", "kind": "crawlspace-depressurization", "foundations": ["f"]}],
	"house": {"foundations": [object.union({"id": "f"}, fields)]},
}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met if verdict(crawl({"floor_above_sealed": true})) == "met"

test_deficient if verdict(crawl({"floor_above_sealed": false})) == "deficient"

test_unrecorded if verdict(crawl({})) == "unrecorded"

test_unrecorded_areas if verdict({"systems": [{"id": "s", "kind": "crawlspace-depressurization", "foundations": []}]}) == "unrecorded"

test_one_of_two_areas_is_not_enough if {
	verdict({
		"systems": [{"id": "s", "kind": "crawlspace-depressurization", "foundations": ["f", "g"]}],
		"house": {"foundations": [{"id": "f", "floor_above_sealed": true}, {"id": "g"}]},
	}) == "unrecorded"
}

test_not_applicable_below_a_membrane if verdict({"systems": [{"id": "s", "kind": "sub-membrane"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]}
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "foundations"]],
	}
}

test_says_that_the_floor_is_missing if {
	got := rule.missing with input as crawl({})
	got == {["s", ["house", "foundations", 0, "floor_above_sealed"]]}
}
