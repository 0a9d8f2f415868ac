package policy.pipe.joints_test

import data.policy.lib
import data.policy.pipe.joints as rule
import rego.v2

# EPA RMS 1994 14.2.1 (from memory but for its first words): plastic vent pipe is
# joined with its maker's adhesive, except at sumps, drains and couplings.
profile := {"pipe": {"joints": {"allowed": {"any_of": ["solvent-cemented", "flexible-coupling"]}, "at_sumps": {"any_of": ["caulked"]}}}}

segment(fields) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"pipe": [object.union({"id": "p", "above_ground": true}, fields)],
}]}

verdict(job) := v if v := lib.verdict(rule, "p") with input as job with data.profile as profile

pvc(joints) := segment({"material": "pvc", "joints": joints})

starting(through, joints) := {"systems": [{
	"id": "s", "kind": "drain-tile",
	"suction_points": [object.union({"id": "sp"}, through)],
	"pipe": [{"id": "p", "above_ground": true, "material": "pvc", "joints": joints, "starts_at": "sp"}],
}]}

test_met_cemented if verdict(pvc("solvent-cemented")) == "met"

test_met_with_couplings if verdict(pvc("flexible-coupling")) == "met"

test_deficient_pushed_together if verdict(pvc("dry-fit")) == "deficient"

test_deficient_taped if verdict(pvc("tape")) == "deficient"

test_met_caulked_in_a_sump_lid if verdict(starting({"through": "sump-lid"}, "caulked")) == "met"

test_deficient_caulked_in_the_slab if verdict(starting({"through": "slab"}, "caulked")) == "deficient"

test_unrecorded_caulked_in_nobody_knows_what if verdict(starting({}, "caulked")) == "unrecorded"

test_unrecorded_caulked_at_an_unnamed_start if verdict(pvc("caulked")) == "unrecorded"

test_deficient_caulked_further_on if {
	"deficient" == lib.verdict(rule, "q") with data.profile as profile with input as {"systems": [{"id": "s", "kind": "drain-tile", "pipe": [
		{"id": "p", "above_ground": true, "material": "pvc", "joints": "solvent-cemented"},
		{"id": "q", "above_ground": true, "material": "pvc", "joints": "caulked"},
	]}]}
}

test_not_applicable_to_metal if verdict(segment({"material": "metal-downspout", "joints": "other"})) == "not-applicable"

test_unrecorded_without_material if verdict(segment({"joints": "tape"})) == "unrecorded"

test_unrecorded if verdict(segment({})) == "unrecorded"

test_not_applicable_below_the_slab if verdict(segment({"above_ground": false})) == "not-applicable"

test_unrecorded_without_a_list_of_pipe if {
	"unrecorded" == lib.verdict(rule, "s") with input as {"systems": [{"id": "s", "kind": "sub-slab"}]} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s", "pipe": [{"id": "p"}]}]} with data.profile as profile
	got == {
		["p", ["systems", 0, "kind"]],
		["p", ["systems", 0, "pipe", 0, "above_ground"]],
		["p", ["systems", 0, "pipe", 0, "material"]],
		["p", ["systems", 0, "pipe", 0, "joints"]],
	}
}

test_says_that_the_start_is_missing if {
	some gap in rule.missing with input as pvc("caulked") with data.profile as profile
	gap == ["p", ["systems", 0, "pipe", 0, "starts_at"]]
}

test_says_that_what_it_passes_is_missing if {
	some gap in rule.missing with input as starting({}, "caulked") with data.profile as profile
	gap == ["p", ["systems", 0, "suction_points", 0, "through"]]
}
