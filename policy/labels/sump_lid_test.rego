package policy.labels.sump_lid_test

import data.policy.labels.sump_lid as rule
import data.policy.lib
import rego.v2

# RMS-LB 2018 (12/20) 6.1.2.3 and 7.5.1.2: sump lids are labelled (point to 8.4.6(a)).
lid := {"id": "a", "kind": "sump", "treatment": "covered-and-sealed"}

other := {"id": "b", "kind": "sump", "treatment": "covered-and-sealed"}

house(routes, labels) := {"entry_routes": routes, "systems": [{"id": "s", "labels": labels}]}

verdict(job) := v if v := lib.verdict(rule, "a") with input as job

test_met_for_the_only_sump if verdict(house([lid], [{"id": "l", "kind": "sump-lid"}])) == "met"

test_met_for_one_of_two if verdict(house([lid, other], [{"id": "l", "kind": "sump-lid", "marks": "a"}])) == "met"

test_deficient if verdict(house([lid], [{"id": "l", "kind": "system"}])) == "deficient"

test_deficient_when_the_label_is_on_another if {
	verdict(house([lid, other], [{"id": "l", "kind": "sump-lid", "marks": "b"}])) == "deficient"
}

test_unrecorded_which_of_two if verdict(house([lid, other], [{"id": "l", "kind": "sump-lid"}])) == "unrecorded"

test_unrecorded_when_another_route_may_be_a_sump if {
	verdict(house([lid, {"id": "c"}], [{"id": "l", "kind": "sump-lid"}])) == "unrecorded"
}

test_unrecorded_kind_of_label if verdict(house([lid], [{"id": "l"}])) == "unrecorded"

test_unrecorded_labels if verdict({"entry_routes": [lid], "systems": [{"id": "s"}]}) == "unrecorded"

test_unrecorded_systems if verdict({"entry_routes": [lid]}) == "unrecorded"

test_unrecorded_treatment if verdict(house([{"id": "a", "kind": "sump"}], [{"id": "l", "kind": "sump-lid"}])) == "unrecorded"

test_unrecorded_kind_of_route if verdict(house([{"id": "a"}], [])) == "unrecorded"

test_unrecorded_routes if {
	"unrecorded" == lib.verdict(rule, "entry_routes") with input as {"systems": []}
}

test_not_applicable_without_a_lid if {
	verdict(house([{"id": "a", "kind": "sump", "treatment": "left-open"}], [])) == "not-applicable"
}

test_says_what_is_missing if {
	got := rule.missing with input as house([{"id": "a", "kind": "sump"}, {"id": "c"}], [{"id": "l", "kind": "sump-lid"}, {"id": "m"}])
	got == {
		["c", ["entry_routes", 1, "kind"]],
		["a", ["entry_routes", 0, "treatment"]],
		["a", ["systems", 0, "labels", 1, "kind"]],
		["c", ["systems", 0, "labels", 1, "kind"]],
		["a", ["systems", 0, "labels", 0, "marks"]],
	}
}
