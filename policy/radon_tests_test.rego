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

test_unfanned if {
	got := radon_tests.unfanned with input as {"systems": [{"id": "s", "powered_by": "rough-in"}], "measurements": {"tests": [{"id": "t"}]}}
	{id | some [id, _] in got} == {"t"}
}

new_house(list) := {"house": {"new_construction": true}, "measurements": {"tests": list}}

test_new_and_untested if {
	radon_tests.new_and_untested with input as new_house([])
	radon_tests.new_and_untested with input as new_house([tests[1]])
}

test_new_but_tested if {
	not radon_tests.new_and_untested with input as new_house(tests)
	not radon_tests.new_and_untested with input as new_house([tests[5]])
	not radon_tests.new_and_untested with input as {"house": {"new_construction": true}}
	not radon_tests.new_and_untested with input as {"measurements": {"tests": []}}
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

test_unsaid_of_all if {
	got := radon_tests.unsaid_of_all with input as job("radon", [tests[1], {"id": "t", "blank": false}])
	got == {["measurements", "tests", 1, "phase"]}
	radon_tests.unsaid_of_all == {["measurements", "tests"]} with input as {}
}
