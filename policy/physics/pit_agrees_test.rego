package policy.physics.pit_agrees_test

import data.policy.lib
import data.policy.physics.pit_agrees as rule
import rego.v2

# common practice: the sources give 50 % as beyond agreement for two ways to one
# flow; the same is used for suction.
profile := {"physics": {"pit_agrees": {"lowest": {"si": -0.5}, "highest": {"si": 0.5}}}}

verdict(job) := v if v := lib.verdict(rule, "p") with input as job with data.profile as profile

record(values) := {
	"house": {"altitude": {"si": 300}},
	"systems": [{
		"id": "s", "kind": "sub-slab", "powered_by": "fan", "discharge": {"rain_cap": false},
		"commissioning": {"measured_flow": {"si": 0.03}}, "suction_points": [{"id": "p", "suction": {"si": 200}}],
	}],
	"derived": {"suction_points": [object.union({"id": "p", "at": "/systems/0/suction_points/0"}, values)]},
}

test_not_applicable_without_a_fan if {
	verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive", "suction_points": [{"id": "p"}]}]}) == "not-applicable"
}

test_not_applicable_to_ventilation if {
	verdict({"systems": [{"id": "s", "kind": "pressurization", "powered_by": "fan", "suction_points": [{"id": "p"}]}]}) == "not-applicable"
}

test_unrecorded if verdict({"systems": [{"id": "s", "suction_points": [{"id": "p"}]}]}) == "unrecorded"

test_unrecorded_without_a_list if {
	"unrecorded" == lib.verdict(rule, "s") with input as {"systems": [{"id": "s"}]} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s", "suction_points": [{"id": "p"}]}]} with data.profile as profile
	got == {["p", ["systems", 0, "kind"]], ["p", ["systems", 0, "powered_by"]]}
}

test_met_at_the_limits if {
	verdict(record({"suction_difference": {"si": 0.5}})) == "met"
	verdict(record({"suction_difference": {"si": -0.5}})) == "met"
}

test_deficient_when_too_high if verdict(record({"suction_difference": {"si": 0.51}})) == "deficient"

test_deficient_when_too_low if verdict(record({"suction_difference": {"si": -0.51}})) == "deficient"

test_undetermined_without_a_comparison if verdict(record({})) == "undetermined"

test_undetermined_without_the_altitude if verdict(object.remove(record({"suction_difference": {"si": 0}}), ["house"])) == "undetermined"
