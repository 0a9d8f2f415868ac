package policy.papers.neighbor_notice_test

import data.policy.lib
import data.policy.papers.neighbor_notice as rule
import rego.v2

# RMS-MF 2018 (12/20) 10.4, family text: in a shared building of which not all
# units are treated, a notice to neighbors is among the papers.
profile := {"papers": {"neighbor_notice": {"shared": {"any_of": ["attached", "two-family"]}}}}

verdict(job) := v if v := lib.verdict(rule, "closeout") with input as job with data.profile as profile

record(kind, treated, told) := {
	"house": {"kind": kind},
	"systems": [{"id": "s", "commissioning": {"neighbor_units_treated": treated}}],
	"closeout": {"package": {"neighbor_notice": told}},
}

test_met if verdict(record("attached", false, true)) == "met"

test_deficient if verdict(record("attached", false, false)) == "deficient"

test_not_applicable_to_detached_houses if verdict(record("detached", false, false)) == "not-applicable"

test_not_applicable_when_all_are_treated if verdict(record("attached", true, false)) == "not-applicable"

test_unrecorded_when_it_is_not_said_which_are_treated if {
	verdict({"house": {"kind": "attached"}, "systems": [{"id": "s"}], "closeout": {"package": {"neighbor_notice": true}}}) == "unrecorded"
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	got == {
		["closeout", ["systems", 0, "commissioning", "neighbor_units_treated"]],
		["closeout", ["house", "kind"]],
		["closeout", ["closeout", "package", "neighbor_notice"]],
	}
}

test_says_that_systems_are_missing if {
	got := rule.missing with input as {} with data.profile as profile
	["closeout", ["systems"]] in got
}
