package policy.physics.pipe_shape_test

import data.policy.lib
import data.policy.physics.pipe_shape as rule
import rego.v2

# common practice: two ways to one slope agree within 1/8 in per ft (1/96).
profile := {"physics": {"pipe_shape": {"apart": {"si": 0.0104166666667}}}}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

record(segment, values) := {
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "pipe": [object.union({"id": "p", "length": {"si": 3}}, segment)]}],
	"derived": {"segments": [object.union({"id": "p", "at": "/systems/0/pipe/0", "system": "s"}, values)]},
}

test_met_upright if verdict(record({"run": "vertical", "rise": {"si": 3}}, {})) == "met"

test_met_level_at_the_limit if {
	verdict(record({"run": "horizontal", "rise": {"si": 0.06}}, {"slope_disagreement": {"si": 0.0104166666667}})) == "met"
}

test_deficient_when_slopes_differ if {
	verdict(record({"run": "horizontal", "rise": {"si": 0.06}}, {"slope_disagreement": {"si": 0.011}})) == "deficient"
}

test_deficient_when_it_rises_by_more_than_its_length if verdict(record({"run": "vertical", "rise": {"si": 3.01}}, {})) == "deficient"

test_undetermined_when_not_all_is_recorded if verdict(record({"run": "horizontal", "rise": {"si": 0.06}}, {})) == "undetermined"

test_not_applicable_to_ventilation if verdict({"systems": [{"id": "s", "kind": "pressurization"}]}) == "not-applicable"

test_unrecorded if verdict({"systems": [{"id": "s"}]}) == "unrecorded"

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	got == {["s", ["systems", 0, "kind"]]}
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}
