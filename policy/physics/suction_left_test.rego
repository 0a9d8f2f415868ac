package policy.physics.suction_left_test

import data.policy.lib
import data.policy.physics.suction_left as rule
import rego.v2

# common practice: what the gauge shows less what the pipe takes is above zero.
profile := {"physics": {"suction_left": {"above": {"si": 0}}}}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

record(changes, values) := {
	"house": {"altitude": {"si": 300}},
	"systems": [object.union(
		{
			"id": "s", "kind": "sub-slab", "powered_by": "fan", "discharge": {"rain_cap": false},
			"commissioning": {"measured_flow": {"si": 0.03}},
			"gauge": {"kind": "u-tube", "range": {"si": 1000}, "after_segment": "riser", "readings": [{"id": "r", "fan_on": true}]},
		},
		changes,
	)],
	"derived": {"systems": [object.union({"id": "s", "at": "/systems/0", "gauge_reading": {"si": 200}}, values)]},
}

# 1.2 inH2O at 60 cfm through 8 ft of 3-in pipe leaves 1.01 inH2O.
test_met if verdict(record({}, {"suction_available": {"si": 251.6}})) == "met"

test_deficient_at_zero if verdict(record({}, {"suction_available": {"si": 0}})) == "deficient"

test_deficient_below if verdict(record({}, {"suction_available": {"si": -20}})) == "deficient"

test_undetermined_without_losses if verdict(record({}, {})) == "undetermined"

test_undetermined_without_a_measured_flow if {
	verdict(record({"commissioning": {"measured_flow": {"si": null}}}, {"suction_available": {"si": 200}})) == "undetermined"
}

test_unrecorded if verdict({"systems": [{"id": "s"}]}) == "unrecorded"

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	["s", ["systems", 0, "gauge", "kind"]] in got
}

test_not_applicable_without_a_gauge if {
	verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "gauge": {"kind": "none"}}]}) == "not-applicable"
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}
