package policy.sealing.floor_drains_test

import data.policy.lib
import data.policy.sealing.floor_drains as rule
import rego.v2

# CCAH 2020 404.1.3: floor and condensate drains in new houses do not admit soil
# gas. In other houses: common practice.
limits(not_for) := {"sealing": {"floor_drains": {
	"kinds": {"any_of": ["floor-drain", "condensate-drain"]},
	"not_for": {"any_of": not_for},
}}}

drain(fields) := {"entry_routes": [object.union({"id": "r", "kind": "floor-drain"}, fields)]}

verdict(job) := v if v := lib.verdict(rule, "r") with input as job with data.profile as limits([])

test_met if verdict(drain({"admits_soil_gas": false})) == "met"

test_deficient if verdict(drain({"admits_soil_gas": true})) == "deficient"

test_unrecorded if verdict(drain({"treatment": "trapped"})) == "unrecorded"

test_a_source_for_new_houses if {
	job := drain({"admits_soil_gas": true})
	"not-applicable" == lib.verdict(rule, "r") with data.profile as limits(["existing"]) with input as object.union(job, {"house": {"new_construction": false}})
	"unrecorded" == lib.verdict(rule, "r") with data.profile as limits(["existing"]) with input as job
}

test_unrecorded_kind if verdict({"entry_routes": [{"id": "r"}]}) == "unrecorded"

test_says_what_is_missing if {
	got := rule.missing with data.profile as limits(["existing"]) with input as {"entry_routes": [{"id": "r", "kind": "floor-drain"}, {"id": "x"}]}
	got == {
		["r", ["house", "new_construction"]],
		["r", ["entry_routes", 0, "admits_soil_gas"]],
		["x", ["house", "new_construction"]],
		["x", ["entry_routes", 1, "kind"]],
	}
}
