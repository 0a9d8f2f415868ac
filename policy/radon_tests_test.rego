package policy.radon_tests_test

import data.policy.radon_tests
import rego.v2

job(contaminant, tests) := {"job": {"contaminant": contaminant}, "measurements": {"tests": tests}}

tests := [
	{"id": "pre", "phase": "before", "device": "charcoal", "blank": false, "kind": "short-term"},
	{"id": "post", "phase": "after", "device": "continuous-monitor", "kind": "short-term"},
	{"id": "year", "phase": "after", "device": "alpha-track", "blank": false, "kind": "long-term"},
	{"id": "blank", "phase": "after", "device": "charcoal", "blank": true},
	{"id": "vague", "phase": "after", "device": "charcoal"},
	{"id": "empty"},
]

test_after if {
	got := radon_tests.after with input as job("radon", tests)
	got == {"post", "year"}
}

test_after_short if {
	got := radon_tests.after_short with input as job("both", tests)
	got == {"post"}
}

test_aside if {
	got := radon_tests.aside with input as job("radon", tests)
	{id | some [id, _] in got} == {"pre", "blank"}
}

test_nothing_is_concluded_without_a_contaminant if {
	got := radon_tests.after with input as {"measurements": {"tests": tests}}
	count(got) == 0
}

test_all_are_aside_for_chemical_vapor if {
	got := radon_tests.aside with input as job("chemical-vapor", tests)
	{id | some [id, _] in got} == {"pre", "post", "year", "blank", "vague", "empty"}
}

test_aside_without_a_list if {
	got := radon_tests.aside with input as {"job": {"contaminant": "chemical-vapor"}}
	{id | some [id, _] in got} == {"measurements"}
}

test_long_term if {
	got := radon_tests.long_term with input as job("radon", tests)
	{id | some [id, _] in got} == {"year"}
}

test_open_are_those_that_prove_or_might if {
	got := radon_tests.open with input as job("radon", tests)
	got == {"post", "year", "vague", "empty"}
}

test_none_after if radon_tests.none_after with input as job("radon", [tests[0], tests[3]])

test_none_after_in_an_empty_list if radon_tests.none_after with input as job("radon", [])

test_one_that_might_is_enough if not radon_tests.none_after with input as job("radon", [tests[0], tests[5]])

test_no_list if not radon_tests.none_after with input as {}

powered(kinds) := {"systems": [{"id": "s", "powered_by": kind} | some kind in kinds], "measurements": {"tests": [{"id": "t"}]}}

test_no_fan if {
	radon_tests.no_fan with input as powered(["passive"])
	got := radon_tests.unfanned with input as powered(["rough-in"])
	{id | some [id, _] in got} == {"t"}
}

test_a_fan if {
	radon_tests.fan_drives with input as powered(["fan"])
	not radon_tests.no_fan with input as powered(["fan"])
}

test_an_unknown_drive_is_no_absence_of_a_fan if not radon_tests.no_fan with input as {"systems": [{"id": "s"}]}

test_only_roughed_in if {
	radon_tests.only_roughed_in with input as powered(["rough-in"])
	not radon_tests.only_roughed_in with input as powered([])
	not radon_tests.only_roughed_in with input as {"systems": [{"id": "s"}]}
}

test_built if {
	radon_tests.built with input as powered(["passive"])
	not radon_tests.built with input as powered(["rough-in"])
}

test_unsaid if {
	got := radon_tests.unsaid with input as {"measurements": {"tests": tests}}
	got == {[t.id, ["job", "contaminant"]] | some t in tests} | {
		["vague", ["measurements", "tests", 4, "blank"]],
		["empty", ["measurements", "tests", 5, "phase"]],
		["empty", ["measurements", "tests", 5, "blank"]],
	}
}

test_unsaid_kind if {
	got := radon_tests.unsaid_kind with input as job("radon", tests)
	{id | some [id, _] in got} == {"vague", "empty"}
}

test_unsaid_power if {
	radon_tests.unsaid_power == {["systems"]} with input as {}
	got := radon_tests.unsaid_power with input as {"systems": [{"id": "s"}]}
	got == {["systems", 0, "powered_by"]}
}

test_unsaid_of_all if {
	got := radon_tests.unsaid_of_all with input as job("radon", [tests[1], {"id": "t", "blank": false}])
	got == {["measurements", "tests", 1, "phase"]}
	radon_tests.unsaid_of_all == {["measurements", "tests"]} with input as {}
}
