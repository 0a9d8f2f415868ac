package policy.special.isolation_not_alone_test

import data.policy.lib
import data.policy.special.isolation_not_alone as rule
import rego.v2

# SGM-SF 2017 (12/20) 7.9: sealed isolation is no lasting fix by itself.
profile := {"special": {"isolation_not_alone": {"closed": {"any_of": ["closed-and-gasketed", "glued-shut"]}}}}

area(part) := {"house": {"foundations": [object.union({"id": "f", "kind": "crawlspace"}, part)]}}

verdict(job) := v if v := lib.verdict(rule, "f") with input as job with data.profile as profile

test_met if verdict(area({"link_to_basement": "closed-and-gasketed", "treated": true})) == "met"

test_deficient if verdict(area({"link_to_basement": "closed-and-gasketed", "treated": false})) == "deficient"

test_unrecorded if verdict(area({"link_to_basement": "glued-shut"})) == "unrecorded"

test_unrecorded_link if verdict(area({"treated": true})) == "unrecorded"

test_unrecorded_kind if {
	verdict({"house": {"foundations": [{"id": "f", "link_to_basement": "glued-shut", "treated": true}]}}) == "unrecorded"
}

test_not_applicable_where_nothing_was_closed if verdict(area({"link_to_basement": "open"})) == "not-applicable"

test_not_applicable_to_a_basement if verdict({"house": {"foundations": [{"id": "f", "kind": "basement"}]}}) == "not-applicable"

test_unrecorded_areas if {
	"unrecorded" == lib.verdict(rule, "house") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"house": {"foundations": [{"id": "f"}]}}
	got == {
		["f", ["house", "foundations", 0, "kind"]],
		["f", ["house", "foundations", 0, "link_to_basement"]],
		["f", ["house", "foundations", 0, "treated"]],
	}
}

test_says_that_areas_are_missing if {
	got := rule.missing with input as {}
	got == {["house", ["house", "foundations"]]}
}
