package policy.special.crawl_vents_open_test

import data.policy.lib
import data.policy.special.crawl_vents_open as rule
import rego.v2

# EPA RMS 1994 14.8.2 (from memory): vents against radon cannot be closed.
aired(part) := {
	"house": {"foundations": [object.union({"id": "f", "kind": "crawlspace"}, part)]},
	"systems": [{"id": "s", "kind": "crawlspace-ventilation", "foundations": ["f"]}],
}

verdict(job) := v if v := lib.verdict(rule, "f") with input as job

test_met if verdict(aired({"crawl_vents_closable": false})) == "met"

test_deficient if verdict(aired({"crawl_vents_closable": true})) == "deficient"

test_unrecorded if verdict(aired({})) == "unrecorded"

test_unrecorded_areas_of_the_system if {
	verdict({
		"house": {"foundations": [{"id": "f", "kind": "crawlspace", "crawl_vents_closable": false}]},
		"systems": [{"id": "s", "kind": "crawlspace-ventilation"}],
	}) == "unrecorded"
}

test_unrecorded_systems if {
	verdict({"house": {"foundations": [{"id": "f", "kind": "crawlspace", "crawl_vents_closable": false}]}}) == "unrecorded"
}

test_not_applicable_to_a_basement if {
	verdict({"house": {"foundations": [{"id": "f", "kind": "basement"}]}}) == "not-applicable"
}

test_not_applicable_where_nothing_is_aired if {
	verdict({
		"house": {"foundations": [{"id": "f", "kind": "crawlspace"}]},
		"systems": [{"id": "s", "kind": "sub-membrane", "foundations": ["f"]}],
	}) == "not-applicable"
}

test_unrecorded_foundations if "unrecorded" == lib.verdict(rule, "house") with input as {}

test_says_what_is_missing if {
	got := rule.missing with input as {"house": {"foundations": [{"id": "f"}]}, "systems": []}
	got == {["f", ["house", "foundations", 0, "kind"]], ["f", ["house", "foundations", 0, "crawl_vents_closable"]]}
}
