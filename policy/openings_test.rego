package policy.openings_test

import data.policy.openings
import rego.v2

listed := {
	"house": {"openings": [{"id": "win"}]},
	"systems": [{"id": "s", "discharge": {"clearances": [{"id": "door"}]}}],
	"derived": {"clearances": [
		{"id": "s/win", "at": "/house/openings/0", "system": "s", "opening": "win"},
		{"id": "s/door", "at": "/systems/0/discharge/clearances/0", "system": "s", "opening": "door"},
	]},
}

test_untold_of_an_opening if {
	got := openings.untold with input as listed
	{[trait, path] | some ["s/win", trait, path] in got} == {
		["building", ["house", "openings", 0, "building"]],
		["kind", ["house", "openings", 0, "kind"]],
		["conditioned", ["house", "openings", 0, "into_conditioned_space"]],
		["operable", ["house", "openings", 0, "operable"]],
	}
}

test_untold_of_a_recorded_distance if {
	got := openings.untold with input as listed
	{[trait, path] | some ["s/door", trait, path] in got} == {
		["building", ["systems", 0, "discharge", "clearances", 0, "building"]],
		["kind", ["systems", 0, "discharge", "clearances", 0, "kind"]],
		["conditioned", ["systems", 0, "discharge", "clearances", 0, "into_conditioned_space"]],
		["operable", ["systems", 0, "discharge", "clearances", 0, "operable"]],
	}
}

test_nothing_unlisted if {
	got := openings.unlisted with input as listed
	count(got) == 0
}

test_no_list_and_no_outlet if {
	got := openings.unlisted with input as {"systems": [{"id": "s"}]}
	got == {["s", ["house", "openings"]], ["s", ["systems", 0, "discharge"]]}
}

test_a_gap_is_told_once if {
	got := openings.gaps with input as {
		"systems": [{"id": "s", "discharge": {}}, {"id": "t"}, {"id": "u"}],
		"derived": {"clearances": [
			{"id": "s/openings", "at": "/house/openings", "system": "s", "opening": "openings"},
			{"id": "t/win", "at": "/house/openings/0", "system": "t", "opening": "win"},
		]},
	}
	got == {["u", ["house", "openings"]], ["u", ["systems", 2, "discharge"]]}
}

test_distances_alone_are_enough if {
	got := openings.unlisted with input as {"systems": [{"id": "s", "discharge": {"clearances": [{"id": "door"}]}}]}
	count(got) == 0
}

test_no_distances_are_not if {
	got := openings.unlisted with input as {"systems": [{"id": "s", "discharge": {"clearances": []}}]}
	got == {["s", ["house", "openings"]]}
}

test_an_empty_list_says_that_there_are_none if {
	got := openings.unlisted with input as {"house": {"openings": []}, "systems": [{"id": "s", "discharge": {}}]}
	count(got) == 0
}

test_distances_that_refer_to_a_list_are_not if {
	got := openings.unlisted with input as {"systems": [{
		"id": "s",
		"discharge": {"clearances": [{"id": "c", "opening": "win"}]},
	}]}
	got == {["s", ["house", "openings"]]}
}
