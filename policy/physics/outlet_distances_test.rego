package policy.physics.outlet_distances_test

import data.policy.lib
import data.policy.physics.outlet_distances as rule
import rego.v2

# common practice: two ways to one distance agree within a foot (0.3048 m).
profile := {"physics": {"outlet_distances": {"apart": {"si": 0.3048}}}}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

record(disagreements) := {
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan"}],
	"derived": {"clearances": [object.union({"id": id, "at": "/house/openings", "system": "s"}, {"disagreement": d}) | some id, d in disagreements]},
}

test_met_at_the_limit if verdict(record({"s/win": {"si": 0.3048}, "s/door": {"si": 0}})) == "met"

test_deficient if verdict(record({"s/win": {"si": 0.31}, "s/door": {"si": 0}})) == "deficient"

test_undetermined_when_not_all_can_be_compared if verdict(record({"s/win": {"si": 0.1}, "s/door": {}})) == "undetermined"

test_undetermined_without_openings if verdict(record({})) == "undetermined"

test_not_applicable_when_nothing_was_measured if {
	verdict({"systems": [{"id": "s", "kind": "sub-slab", "discharge": {"clearances": []}}]}) == "not-applicable"
}

test_not_applicable_to_ventilation if verdict({"systems": [{"id": "s", "kind": "pressurization"}]}) == "not-applicable"

test_unrecorded if verdict({"systems": [{"id": "s"}]}) == "unrecorded"

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	got == {["s", ["systems", 0, "kind"]]}
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}
