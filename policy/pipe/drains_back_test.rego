package policy.pipe.drains_back_test

import data.policy.lib
import data.policy.pipe.drains_back as rule
import rego.v2

# EPA RMS 1994 14.2.6 (from memory): water drains down to the soil below slab or
# membrane, no figure. IRC 2018 AF103.7 (from memory): the same for new houses.
profile := {"pipe": {"drains_back": {"allowed": {"any_of": ["slopes-to-suction", "condensate-bypass"]}}}}

segment(fields) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"pipe": [object.union({"id": "p", "above_ground": true}, fields)],
}]}

verdict(job) := v if v := lib.verdict(rule, "p") with input as job with data.profile as profile

test_met if verdict(segment({"drainage": "slopes-to-suction"})) == "met"

test_met_round_the_fan if verdict(segment({"drainage": "condensate-bypass"})) == "met"

test_deficient if verdict(segment({"drainage": "holds-water"})) == "deficient"

test_unrecorded if verdict(segment({})) == "unrecorded"

test_not_applicable_below_the_slab if verdict(segment({"above_ground": false})) == "not-applicable"

roughed_in(fields) := {"systems": [object.union(segment({"drainage": "slopes-to-suction"}).systems[0], {"powered_by": "rough-in", "rough_in": fields})]}

test_pipe_that_is_roughed_in if {
	verdict(roughed_in({"drains_to_soil": true})) == "met"
	verdict(roughed_in({"drains_to_soil": false})) == "deficient"
	verdict(roughed_in({})) == "unrecorded"
	got := rule.missing with input as roughed_in({}) with data.profile as profile
	got == {["p", ["systems", 0, "rough_in", "drains_to_soil"]]}
}

test_unrecorded_drive if {
	verdict({"systems": [object.remove(segment({"drainage": "slopes-to-suction"}).systems[0], ["powered_by"])]}) == "unrecorded"
}

test_unrecorded_without_a_list_of_pipe if {
	"unrecorded" == lib.verdict(rule, "s") with input as {"systems": [{"id": "s", "kind": "sub-slab"}]} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s", "pipe": [{"id": "p"}]}]} with data.profile as profile
	got == {
		["p", ["systems", 0, "kind"]],
		["p", ["systems", 0, "powered_by"]],
		["p", ["systems", 0, "pipe", 0, "above_ground"]],
		["p", ["systems", 0, "pipe", 0, "drainage"]],
	}
}
