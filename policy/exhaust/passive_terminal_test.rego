package policy.exhaust.passive_terminal_test

import data.policy.exhaust.passive_terminal as rule
import data.policy.lib
import rego.v2

# BC Building Code 9.13.4 (from memory, figures unsure, sub-clause not
# verified): 1 m above or 3.5 m in any other direction from an intake, a door or
# a window that opens; passive vents of new houses.
profile := {"exhaust": {"passive_terminal": {
	"above": {"si": 1}, "away": {"si": 3.5},
	"kinds": {"any_of": ["intake", "door", "window"]},
	"not_for": {"any_of": ["fan", "rough-in"]},
	"regions": {"any_of": ["BC"]},
}}}

vent(opening) := {
	"job": {"jurisdiction": {"state": "BC"}},
	"house": {"new_construction": true, "openings": [{"id": "win"}]},
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive", "discharge": {}}],
	"derived": {"clearances": [object.union(
		{"id": "s/win", "at": "/house/openings/0", "system": "s", "opening": "win"},
		opening,
	)]},
}

window(distance, drop) := {"kind": "window", "operable": true, "distance": {"si": distance}, "drop": {"si": drop}}

verdict(job) := v if v := lib.verdict(rule, "s/win") with input as job with data.profile as profile

test_met_at_exactly_one_metre_above if verdict(vent(window(1.2, 1))) == "met"

test_met_at_exactly_three_and_a_half_metres if verdict(vent(window(3.5, -2))) == "met"

test_deficient_beside if verdict(vent(window(3.4, 0.9))) == "deficient"

# An air intake stands open whatever the record says of it.
test_deficient_beside_an_intake if {
	verdict(vent({"kind": "intake", "operable": false, "distance": {"si": 3}, "drop": {"si": 0}})) == "deficient"
}

test_unrecorded if verdict(vent({"kind": "window", "operable": true})) == "unrecorded"

test_unrecorded_without_the_province if {
	verdict(object.remove(vent(window(1, 0)), ["job"])) == "unrecorded"
}

test_not_applicable_to_a_fixed_pane if {
	verdict(vent({"kind": "window", "operable": false, "distance": {"si": 1}})) == "not-applicable"
}

test_not_applicable_to_a_chimney if verdict(vent({"kind": "chimney", "distance": {"si": 1}})) == "not-applicable"

test_not_applicable_elsewhere if {
	verdict(object.union(vent(window(1, 0)), {"job": {"jurisdiction": {"state": "ON"}}})) == "not-applicable"
}

test_not_applicable_to_an_old_house if {
	verdict(object.union(vent(window(1, 0)), {"house": {"new_construction": false}})) == "not-applicable"
}

test_not_applicable_with_a_fan if {
	job := object.union(vent(window(1, 0)), {"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "discharge": {}}]})
	verdict(job) == "not-applicable"
}

test_not_applicable_to_ventilation if {
	job := object.union(vent(window(1, 0)), {"systems": [{"id": "s", "kind": "heat-recovery-ventilation", "powered_by": "passive", "discharge": {}}]})
	verdict(job) == "not-applicable"
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_unrecorded_without_openings if {
	job := object.union(object.remove(vent({}), ["house", "derived"]), {"house": {"new_construction": true}})
	"unrecorded" == lib.verdict(rule, "s") with input as job with data.profile as profile
}

test_no_openings_needed_with_a_fan if {
	"not-applicable" == lib.verdict(rule, "s") with data.profile as profile
		with input as {"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "discharge": {}}]}
}

test_says_what_is_missing if {
	blank := {
		"house": {"openings": [{"id": "win"}]},
		"systems": [{"id": "s"}, {"id": "u"}],
		"derived": {"clearances": [{"id": "s/win", "at": "", "system": "s", "opening": "win"}]},
	}
	got := rule.missing with input as blank with data.profile as profile
	got == {
		["u", ["job", "jurisdiction", "state"]],
		["u", ["house", "new_construction"]],
		["u", ["systems", 1, "discharge"]],
		["s/win", ["job", "jurisdiction", "state"]],
		["s/win", ["house", "new_construction"]],
		["s/win", ["systems", 0, "kind"]],
		["s/win", ["systems", 0, "powered_by"]],
		["s/win", ["house", "openings", 0, "kind"]],
		["s/win", ["house", "openings", 0, "operable"]],
		["s/win", ["derived", "clearances", 0, "distance"]],
		["s/win", ["derived", "clearances", 0, "drop"]],
	}
}
