package policy.physics.outlet_height_test

import data.policy.lib
import data.policy.physics.outlet_height as rule
import rego.v2

# common practice: two ways to one height agree within a foot (0.3048 m).
profile := {"physics": {"outlet_height": {"apart": {"si": 0.3048}, "above": {"si": 0}}}}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

record(discharge, values) := {
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "discharge": discharge}],
	"derived": {"discharges": [object.union({"id": "s", "at": "/systems/0/discharge"}, values)]},
}

high := {"height_above_grade": {"si": 5.8}}

test_met_at_the_limit if verdict(record(high, {"height_disagreement": {"si": 0.3048}})) == "met"

test_deficient_when_apart if verdict(record(high, {"height_disagreement": {"si": 0.31}})) == "deficient"

test_met_with_the_eave_at_the_limit if {
	verdict(record(high, {"height_disagreement": {"si": 0}, "eave_disagreement": {"si": 0.3048}})) == "met"
}

test_deficient_when_the_eave_says_otherwise if {
	verdict(record(high, {"height_disagreement": {"si": 0}, "eave_disagreement": {"si": 0.31}})) == "deficient"
}

test_deficient_in_the_ground if verdict(record({"height_above_grade": {"si": 0}}, {"height_disagreement": {"si": 0}})) == "deficient"

test_deficient_by_its_position_in_the_ground if {
	low := {"position": {"x": {"si": 0}, "y": {"si": 0}, "z": {"si": 0}}, "grade_level": {"si": 0.5}}
	verdict(record(low, {})) == "deficient"
}

test_undetermined_with_one_of_the_two if verdict(record(high, {})) == "undetermined"

test_not_applicable_to_rough_in if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "rough-in"}]}) == "not-applicable"

test_not_applicable_to_ventilation if verdict({"systems": [{"id": "s", "kind": "pressurization", "powered_by": "fan"}]}) == "not-applicable"

test_unrecorded if verdict({"systems": [{"id": "s"}]}) == "unrecorded"

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	got == {["s", ["systems", 0, "kind"]], ["s", ["systems", 0, "powered_by"]]}
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}
