package policy.pipe.horizontal_supports_test

import data.policy.lib
import data.policy.pipe.horizontal_supports as rule
import rego.v2

# EPA RMS 1994 14.2.4 (from memory; inspection lists agree): 6 ft. IRC 2018
# Table P2605.1 (from memory): 4 ft.
profile := {"pipe": {"horizontal_supports": {"maximum": {"si": 1.8288}}}}

segment(fields) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"pipe": [object.union({"id": "p", "above_ground": true}, fields)],
}]}

verdict(job) := v if v := lib.verdict(rule, "p") with input as job with data.profile as profile

level(spacing) := segment({"run": "horizontal", "support_spacing": {"si": spacing}})

# Worked case 15: a level run with hangers 6.0 ft apart.
test_met_at_exactly_six_feet if verdict(level(1.8288)) == "met"

# Worked case 15 by the plumbing table.
test_deficient_at_six_feet_by_the_plumbing_table if {
	plumbing := {"pipe": {"horizontal_supports": {"maximum": {"si": 1.2192}}}}
	"deficient" == lib.verdict(rule, "p") with input as level(1.8288) with data.profile as plumbing
}

test_deficient_farther_apart if verdict(level(1.83)) == "deficient"

test_not_applicable_to_upright_pipe if verdict(segment({"run": "vertical"})) == "not-applicable"

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
		["p", ["systems", 0, "pipe", 0, "run"]],
		["p", ["systems", 0, "pipe", 0, "support_spacing"]],
	}
}
