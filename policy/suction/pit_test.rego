package policy.suction.pit_test

import data.policy.lib
import data.policy.suction.pit as rule
import rego.v2

# EPA RMS 1994 14.4.1 (from memory): enough is removed below the slab; no figure.
profile := {"suction": {"pit": {"above": {"si": 0}, "through": {"any_of": ["slab"]}}}}

point(fields) := {"systems": [{
	"id": "s", "kind": "sub-slab",
	"suction_points": [object.union({"id": "p"}, fields)],
}]}

verdict(job) := v if v := lib.verdict(rule, "p") with input as job with data.profile as profile

test_met if verdict(point({"through": "slab", "pit_volume": {"si": 0.02}})) == "met"

test_deficient if verdict(point({"through": "slab", "pit_volume": {"si": 0}})) == "deficient"

test_unrecorded_in_a_slab if verdict(point({"through": "slab"})) == "unrecorded"

test_not_applicable_in_a_sump if verdict(point({"through": "sump-lid"})) == "not-applicable"

test_unrecorded if verdict(point({})) == "unrecorded"

test_unrecorded_without_a_list if {
	"unrecorded" == lib.verdict(rule, "s") with input as {"systems": [{"id": "s", "kind": "sub-slab"}]} with data.profile as profile
}

test_not_applicable_to_pressurization if {
	verdict({"systems": [{"id": "s", "kind": "pressurization", "suction_points": [{"id": "p"}]}]}) == "not-applicable"
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s", "suction_points": [{"id": "p"}]}]} with data.profile as profile
	got == {
		["p", ["systems", 0, "kind"]],
		["p", ["systems", 0, "suction_points", 0, "through"]],
		["p", ["systems", 0, "suction_points", 0, "pit_volume"]],
	}
}
