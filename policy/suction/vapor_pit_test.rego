package policy.suction.vapor_pit_test

import data.policy.lib
import data.policy.suction.vapor_pit as rule
import rego.v2

# 35 Ill. Adm. Code 742.1210(c)(1)(A): 2 cu ft or more and 6 in or more below the
# slab, sub-slab systems against chemical vapor. 2 cu ft are 0.056633693184 m3.
profile := {"suction": {"vapor_pit": {
	"volume": {"si": 0.056633693184}, "depth": {"si": 0.1524}, "through": {"any_of": ["slab"]},
	"kinds": {"any_of": ["sub-slab"]}, "contaminants": {"any_of": ["chemical-vapor", "both"]},
}}}

point(fields) := {
	"job": {"contaminant": "chemical-vapor"},
	"systems": [{"id": "s", "kind": "sub-slab", "suction_points": [object.union({"id": "p"}, fields)]}],
}

verdict(job) := v if v := lib.verdict(rule, "p") with input as job with data.profile as profile

pit(volume, depth) := point({"through": "slab", "pit_volume": {"si": volume}, "pit_depth": {"si": depth}})

test_met_at_exactly_both if verdict(pit(0.056633693184, 0.1524)) == "met"

test_deficient_small if verdict(pit(0.05, 0.1524)) == "deficient"

test_deficient_shallow if verdict(pit(0.06, 0.15)) == "deficient"

test_unrecorded_depth if verdict(point({"through": "slab", "pit_volume": {"si": 0.06}})) == "unrecorded"

test_not_applicable_in_a_sump if verdict(point({"through": "sump-lid"})) == "not-applicable"

test_not_applicable_to_radon if {
	verdict({"job": {"contaminant": "radon"}, "systems": [{"id": "s", "kind": "sub-slab", "suction_points": [{"id": "p"}]}]}) == "not-applicable"
}

test_not_applicable_to_other_kinds if {
	verdict({"job": {"contaminant": "both"}, "systems": [{"id": "s", "kind": "drain-tile", "suction_points": [{"id": "p"}]}]}) == "not-applicable"
}

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
		["p", ["systems", 0, "suction_points", 0, "pit_depth"]],
		["p", ["job", "contaminant"]],
	}
}
