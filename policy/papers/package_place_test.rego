package policy.papers.package_place_test

import data.policy.lib
import data.policy.papers.package_place as rule
import rego.v2

# RMS-MF 2018 (12/20) 10.2.1, family text: fixed to the system in view, or in the
# mechanical room.
profile := {"papers": {"package_place": {"places": {"any_of": ["on-system", "mechanical-room"]}}}}

verdict(job) := v if v := lib.verdict(rule, "closeout") with input as job with data.profile as profile

record(occupancy, place) := {"house": {"occupancy": occupancy}, "closeout": {"package": {"kept_at": place}}}

test_met_on_the_system if verdict(record("owner", "on-system")) == "met"

test_met_in_the_mechanical_room if verdict(record("owner", "mechanical-room")) == "met"

test_deficient if verdict(record("owner", "with-owner")) == "deficient"

test_not_applicable_to_rented_houses if verdict(record("tenant", "with-owner")) == "not-applicable"

test_unrecorded if verdict({"closeout": {"package": {"kept_at": "on-system"}}}) == "unrecorded"

test_says_what_is_missing if {
	got := rule.missing with input as {} with data.profile as profile
	got == {["closeout", ["house", "occupancy"]], ["closeout", ["closeout", "package", "kept_at"]]}
}
