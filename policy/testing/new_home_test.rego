package policy.testing.new_home_test

import data.policy.lib
import data.policy.testing.new_home as rule
import rego.v2

# ANSI/AARST CCAH 2020 801.1: a short-term test started after occupancy, within 60
# days of it.
profile := {"testing": {"new_home": {"earliest": {"si": 0}, "latest": {"si": 5184000}}}}

job(about, values) := {
	"job": {"contaminant": "radon"},
	"house": {"new_construction": true},
	"measurements": {"tests": [object.union({"id": "t", "phase": "after", "device": "continuous-monitor", "kind": "short-term"}, about)]},
	"derived": {"tests": [object.union({"id": "t", "at": ""}, values)]},
}

verdict(job) := v if v := lib.verdict(rule, "measurements") with input as job with data.profile as profile

days(seconds) := {"days_after_occupancy": {"si": seconds}}

test_met_at_both_ends if {
	verdict(job({}, days(0))) == "met"
	verdict(job({}, days(5184000))) == "met"
}

test_deficient_too_late if verdict(job({}, days(5270400))) == "deficient"

test_deficient_before_anybody_moved_in if verdict(job({}, days(-86400))) == "deficient"

test_deficient_with_only_a_long_test if verdict(job({"kind": "long-term"}, days(86400))) == "deficient"

test_unrecorded if verdict(job({}, {})) == "unrecorded"

test_not_applicable_to_older_houses if {
	verdict(object.union(job({}, {}), {"house": {"new_construction": false}})) == "not-applicable"
}

test_nothing_to_judge_without_a_test_after if verdict(job({"phase": "before"}, {})) == "not-applicable"

test_not_applicable_to_chemical_vapor if {
	verdict(object.union(job({}, {}), {"job": {"contaminant": "chemical-vapor"}})) == "not-applicable"
}

test_says_what_is_missing if {
	got := rule.missing with input as {"derived": {"tests": [{"id": "t", "at": ""}]}, "systems": [], "measurements": {"tests": [{"id": "t"}]}} with data.profile as profile
	got == {
		["measurements", ["house", "new_construction"]],
		["measurements", ["measurements", "tests", 0, "phase"]],
		["measurements", ["measurements", "tests", 0, "blank"]],
		["measurements", ["job", "contaminant"]],
		["measurements", ["measurements", "tests", 0, "kind"]],
		["measurements", ["derived", "tests", 0, "days_after_occupancy"]],
	}
}
