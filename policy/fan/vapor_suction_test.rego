package policy.fan.vapor_suction_test

import data.policy.fan.vapor_suction as rule
import data.policy.lib
import rego.v2

# 35 Ill. Adm. Code 742.1210(c)(1)(B): 0.25 in wc at the suction point of a
# sub-slab system.
profile := {"fan": {"vapor_suction": {
	"minimum": {"si": 62.2722275},
	"kinds": {"any_of": ["sub-slab"]},
	"contaminants": {"any_of": ["chemical-vapor", "both"]},
}}}

job(contaminant, kind, power, suction) := {
	"job": {"contaminant": contaminant},
	"systems": [{"id": "s", "kind": kind, "powered_by": power, "suction_points": [{"id": "p", "suction": suction}]}],
}

verdict(job) := v if v := lib.verdict(rule, "p") with input as job with data.profile as profile

test_met_at_exactly_a_quarter_inch if verdict(job("both", "sub-slab", "fan", {"si": 62.2722275})) == "met"

test_deficient if verdict(job("chemical-vapor", "sub-slab", "fan", {"si": 60})) == "deficient"

test_unrecorded if verdict(job("both", "sub-slab", "fan", {})) == "unrecorded"

test_unrecorded_without_the_contaminant if {
	verdict(object.remove(job("both", "sub-slab", "fan", {"si": 80}), ["job"])) == "unrecorded"
}

test_not_applicable_to_radon if verdict(job("radon", "sub-slab", "fan", {"si": 60})) == "not-applicable"

test_not_applicable_to_a_membrane if verdict(job("both", "sub-membrane", "fan", {"si": 60})) == "not-applicable"

test_not_applicable_without_a_fan if verdict(job("both", "sub-slab", "passive", {"si": 60})) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {"job": {"contaminant": "both"}} with data.profile as profile
}

test_unrecorded_without_suction_points if {
	"unrecorded" == lib.verdict(rule, "s") with data.profile as profile
		with input as {"job": {"contaminant": "both"}, "systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan"}]}
}

test_no_suction_points_needed_without_a_fan if {
	"not-applicable" == lib.verdict(rule, "s") with data.profile as profile
		with input as {"job": {"contaminant": "both"}, "systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive"}]}
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s", "suction_points": [{"id": "p"}]}]} with data.profile as profile
	got == {
		["p", ["job", "contaminant"]],
		["p", ["systems", 0, "kind"]],
		["p", ["systems", 0, "powered_by"]],
		["p", ["systems", 0, "suction_points", 0, "suction"]],
	}
}
