package policy.diagnostics.vapor_suction_test

import data.policy.diagnostics.vapor_suction as rule
import data.policy.lib
import rego.v2

# 35 Ill. Adm. Code 742.1210(c)(1)(B): -0.003 in wc (-0.747267 Pa) or visible downward
# smoke in the worst case, cold and with all exhausts on.
profile := {"diagnostics": {"vapor_suction": {"most": {"si": -0.747267}, "contaminants": {"any_of": ["chemical-vapor", "both"]}}}}

job(test, hole, values) := {
	"job": {"contaminant": "chemical-vapor"},
	"house": {"winter_design_temperature": {"si": 258.15}},
	"diagnostics": {"neutral_level": {"si": 3}, "communication_tests": [object.union({"id": "t", "exhausts_running": true, "holes": [object.union({"id": "h"}, hole)]}, test)]},
	"derived": {"holes": [object.union({"id": "h", "at": ""}, values)]},
}

verdict(job) := v if v := lib.verdict(rule, "h") with input as job with data.profile as profile

in_winter(pressure) := {"design_pressure": {"si": pressure}}

test_met_at_exactly_the_limit if verdict(job({}, {}, in_winter(-0.747267))) == "met"

test_deficient_when_weaker if verdict(job({}, {}, in_winter(-0.7))) == "deficient"

test_a_neutral_level_that_was_assumed_counts_against_it_only if {
	without := json.remove(job({}, {}, in_winter(-2)), ["diagnostics/neutral_level"])
	verdict(without) == "unrecorded"
	verdict(object.union(without, {"derived": {"holes": [{"id": "h", "at": "", "design_pressure": {"si": 1}}]}})) == "deficient"
}

test_met_by_smoke_in_the_cold if {
	verdict(job({"outdoor_temperature": {"si": 258.15}}, {"smoke": "down"}, in_winter(-0.5))) == "met"
}

test_smoke_in_mild_weather_does_not_count if {
	verdict(job({"outdoor_temperature": {"si": 285}}, {"smoke": "down"}, in_winter(-0.5))) == "deficient"
}

test_undetermined_with_the_exhausts_off if verdict(job({"exhausts_running": false}, {}, in_winter(-2))) == "undetermined"

test_deficient_even_with_the_exhausts_off if verdict(job({"exhausts_running": false}, {}, in_winter(1))) == "deficient"

test_unrecorded if verdict(job({}, {}, {})) == "unrecorded"

test_not_applicable_to_radon if {
	verdict(object.union(job({}, {}, in_winter(1)), {"job": {"contaminant": "radon"}})) == "not-applicable"
}

test_unrecorded_without_holes if {
	"unrecorded" == lib.verdict(rule, "t") with data.profile as profile
		with input as {"job": {"contaminant": "both"}, "diagnostics": {"communication_tests": [{"id": "t"}]}}
}

test_unrecorded_without_a_list if {
	"unrecorded" == lib.verdict(rule, "diagnostics") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with data.profile as profile with input as {
		"diagnostics": {"communication_tests": [{"id": "t", "holes": [{"id": "h"}]}]},
		"derived": {"holes": [{"id": "h", "at": ""}]},
	}
	got == {
		["h", ["job", "contaminant"]],
		["h", ["diagnostics", "communication_tests", 0, "exhausts_running"]],
		["h", ["diagnostics", "neutral_level"]],
		["h", ["derived", "holes", 0, "design_pressure"]],
	}
}
