package policy.sealing.crawl_link_test

import data.policy.lib
import data.policy.sealing.crawl_link as rule
import rego.v2

# EPA RMS 1994 14.5.7 (from memory): openings between crawlspace and basement are
# closed; doors that a code asks for get gasket and latch and are not glued shut;
# not needed where both areas are under suction. IRC 2018 AF103.4.10: closed in
# new houses.
profile := {"sealing": {"crawl_link": {"closures": {"any_of": ["none", "closed-and-gasketed", "both-under-suction"]}}}}

combined(link) := {"house": {"foundations": [
	{"id": "crawl", "kind": "crawlspace", "link_to_basement": link},
	{"id": "base", "kind": "basement"},
]}}

verdict(job) := v if v := lib.verdict(rule, "crawl") with input as job with data.profile as profile

test_met if verdict(combined("closed-and-gasketed")) == "met"

test_met_where_both_are_under_suction if verdict(combined("both-under-suction")) == "met"

test_deficient_when_open if verdict(combined("open")) == "deficient"

test_deficient_when_glued_shut if verdict(combined("glued-shut")) == "deficient"

test_unrecorded if {
	verdict({"house": {"foundations": [{"id": "crawl", "kind": "crawlspace"}, {"id": "base", "kind": "basement"}]}}) == "unrecorded"
}

test_unrecorded_kind_of_the_other_area if {
	verdict({"house": {"foundations": [{"id": "crawl", "kind": "crawlspace", "link_to_basement": "open"}, {"id": "base"}]}}) == "unrecorded"
}

test_unrecorded_own_kind if verdict({"house": {"foundations": [{"id": "crawl"}]}}) == "unrecorded"

test_not_applicable_without_a_basement if {
	verdict({"house": {"foundations": [{"id": "crawl", "kind": "crawlspace"}]}}) == "not-applicable"
}

test_unrecorded_without_foundations if {
	"unrecorded" == lib.verdict(rule, "house") with input as {} with data.profile as profile
}
