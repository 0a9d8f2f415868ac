package policy.physics.pit_below_shutoff_test

import data.policy.lib
import data.policy.physics.pit_below_shutoff as rule
import rego.v2

# common practice: as for the gauge, 1.05 of the shut-off pressure.
profile := {"physics": {"pit_below_shutoff": {"maximum": {"si": 1.05}}}}

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

test_met_at_the_limit if verdict(record({"shutoff_share": {"si": 1.05}})) == "met"

test_deficient if verdict(record({"shutoff_share": {"si": 1.06}})) == "deficient"

test_undetermined_without_a_curve if verdict(record({})) == "undetermined"

test_undetermined_without_the_altitude if verdict(object.remove(record({"shutoff_share": {"si": 0.5}}), ["house"])) == "undetermined"
