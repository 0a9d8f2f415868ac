package policy.testing.second_season_test

import data.policy.lib
import data.policy.testing.second_season as rule
import rego.v2

# ANSI/AARST MAH 2019 8.5.9.3, advice: other methods than soil suction are tested in
# heating and cooling season of the first year.
profile := {}

job(kind, planned) := {"job": {"contaminant": "radon"}, "systems": [{"id": "s", "kind": kind}], "measurements": {"second_season_test_planned": planned}}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met if verdict(job("heat-recovery-ventilation", true)) == "met"

test_deficient if verdict(job("pressurization", false)) == "deficient"

test_not_applicable_to_soil_suction if verdict(job("sub-slab", false)) == "not-applicable"

test_not_applicable_to_chemical_vapor if {
	verdict(object.union(job("pressurization", false), {"job": {"contaminant": "chemical-vapor"}})) == "not-applicable"
}

test_unrecorded if verdict(object.remove(job("pressurization", true), ["measurements"])) == "unrecorded"

test_unrecorded_without_systems if "unrecorded" == lib.verdict(rule, "systems") with input as {}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]}
	got == {
		["s", ["job", "contaminant"]],
		["s", ["systems", 0, "kind"]],
		["s", ["measurements", "second_season_test_planned"]],
	}
}
