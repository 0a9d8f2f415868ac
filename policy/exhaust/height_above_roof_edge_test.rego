package policy.exhaust.height_above_roof_edge_test

import data.policy.exhaust.height_above_roof_edge as rule
import data.policy.lib
import rego.v2

# RMS-MF 2018 (12/20) 6.4.10(b): 6 in above the edge of the roof.
profile := {"exhaust": {"height_above_roof_edge": {"above": {"si": 0}, "minimum": {"si": 0.1524}, "not_for": {"any_of": ["passive", "rough-in"]}}}}

wall(height) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"discharge": {"mounting": "exterior-wall", "height_above_roof_edge": height},
}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met_at_exactly_six_inches if verdict(wall({"si": 0.1524})) == "met"

test_deficient_at_five_inches if verdict(wall({"si": 0.127})) == "deficient"

test_unrecorded if verdict(wall({})) == "unrecorded"

test_not_applicable_through_the_roof if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "discharge": {"mounting": "through-roof"}}]}) == "not-applicable"

test_not_applicable_when_only_roughed_in if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "rough-in"}]}) == "not-applicable"

test_not_applicable_to_ventilation if verdict({"systems": [{"id": "s", "kind": "heat-recovery-ventilation", "powered_by": "fan"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["systems", 0, "discharge", "mounting"]],
		["s", ["systems", 0, "discharge", "height_above_roof_edge"]],
	}
}

# 25 Pa. Code 240.308(b)(1): above the roof edge, no figure.
pennsylvania := {"exhaust": {"height_above_roof_edge": {
	"above": {"si": 0}, "minimum": {"si": 0},
	"not_for": {"any_of": ["rough-in"]},
}}}

test_met_just_above_where_no_figure_is_given if {
	"met" == lib.verdict(rule, "s") with input as wall({"si": 0.01}) with data.profile as pennsylvania
}

test_level_with_the_edge_is_not_above_it if {
	"deficient" == lib.verdict(rule, "s") with input as wall({"si": 0}) with data.profile as pennsylvania
}
