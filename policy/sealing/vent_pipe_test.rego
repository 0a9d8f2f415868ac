package policy.sealing.vent_pipe_test

import data.policy.lib
import data.policy.sealing.vent_pipe as rule
import rego.v2

# EPA RMS 1994 14.5.2 (from memory): where vent pipe passes slab, wall or membrane
# the opening is cleaned and sealed airtight. Public inspection lists: the caulk
# at the slab is intact.
profile := {"sealing": {"vent_pipe": {"places": {"any_of": ["slab", "foundation-wall", "membrane"]}}}}

piped(sealed) := {"systems": [{
	"id": "s", "kind": "sub-slab",
	"suction_points": [{"id": "sp", "sealed": sealed}],
	"pipe": [{"id": "p", "penetrations": [
		{"id": "wall", "through": "foundation-wall", "sealed": sealed},
		{"id": "roof", "through": "roof", "sealed": false},
		{"id": "hole"},
	]}],
}]}

verdict(id, job) := v if v := lib.verdict(rule, id) with input as job with data.profile as profile

test_met if {
	verdict("sp", piped(true)) == "met"
	verdict("wall", piped(true)) == "met"
}

test_deficient if {
	verdict("sp", piped(false)) == "deficient"
	verdict("wall", piped(false)) == "deficient"
}

test_unrecorded_place if verdict("hole", piped(true)) == "unrecorded"

test_other_places_are_no_subject if {
	got := rule.subjects with input as piped(true) with data.profile as profile
	{id | some [id, _] in got} == {"sp", "wall", "hole"}
}

test_unrecorded if {
	verdict("sp", {"systems": [{"id": "s", "kind": "sub-slab", "suction_points": [{"id": "sp"}]}]}) == "unrecorded"
	verdict("p", {"systems": [{"id": "s", "kind": "sub-slab", "pipe": [{"id": "p"}]}]}) == "unrecorded"
	verdict("s", {"systems": [{"id": "s", "kind": "sub-slab"}]}) == "unrecorded"
	verdict("systems", {}) == "unrecorded"
}

test_a_ventilator_is_no_subject if {
	got := rule.subjects with input as {"systems": [{"id": "s", "kind": "heat-recovery-ventilation"}]} with data.profile as profile
	count(got) == 0
}

test_unrecorded_kind if {
	job := {"systems": [object.union({"id": "s"}, object.remove(piped(true).systems[0], ["kind"]))]}
	verdict("sp", job) == "unrecorded"
	got := rule.missing with input as job with data.profile as profile
	got == {
		["sp", ["systems", 0, "kind"]],
		["wall", ["systems", 0, "kind"]],
	}
}
