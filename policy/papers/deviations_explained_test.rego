package policy.papers.deviations_explained_test

import data.policy.lib
import data.policy.papers.deviations_explained as rule
import rego.v2

# EPA RMS 1994 18.3(6), from memory: departures and code conflicts are written
# down. Which words give no reason is ours.
profile := {"papers": {"deviations_explained": {"no_reason": {"any_of": ["none", "unknown"]}}}}

verdict(job, id) := v if v := lib.verdict(rule, id) with input as job with data.profile as profile

record(reason) := {"closeout": {"deviations": [{"id": "d", "what": "Fan in the garage", "reason": reason}]}}

test_met if verdict(record("No attic to put it in"), "d") == "met"

test_deficient if verdict(record("Unknown"), "d") == "deficient"

test_unrecorded if verdict({"closeout": {"deviations": [{"id": "d"}]}}, "d") == "unrecorded"

test_unrecorded_without_a_list if verdict({}, "closeout") == "unrecorded"

test_no_departure_is_no_subject if {
	got := rule.subjects with input as {"closeout": {"deviations": []}} with data.profile as profile
	count(got) == 0
}

test_says_what_is_missing if {
	got := rule.missing with input as {"closeout": {"deviations": [{"id": "d"}]}} with data.profile as profile
	got == {["d", ["closeout", "deviations", 0, "what"]], ["d", ["closeout", "deviations", 0, "reason"]]}
}
