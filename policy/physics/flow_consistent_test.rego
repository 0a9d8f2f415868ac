package policy.physics.flow_consistent_test

import data.policy.lib
import data.policy.physics.flow_consistent as rule
import rego.v2

# common practice: within 25 % or 10 cfm, whichever is larger.
verdict(job) := v if v := lib.verdict(rule, "s") with input as job

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

test_met if verdict(record({}, {"flow_agreement": "consistent"})) == "met"

test_deficient if verdict(record({}, {"flow_agreement": "look-again"})) == "deficient"

test_undetermined_when_no_flow_follows if verdict(record({}, {})) == "undetermined"

test_not_applicable_when_inconsistent if verdict(record({}, {"flow_agreement": "inconsistent"})) == "not-applicable"

test_unrecorded_without_a_measured_flow if verdict(record({"commissioning": {"measured_flow": {"si": null}}}, {"flow_agreement": "consistent"})) == "unrecorded"

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}], "derived": {"systems": [{"id": "s", "at": "/systems/0"}]}}
	got & {
		["s", ["systems", 0, "gauge", "range"]],
		["s", ["house", "altitude"]],
		["s", ["systems", 0, "commissioning", "measured_flow"]],
		["s", ["derived", "systems", 0, "flow_difference"]],
	} == {
		["s", ["systems", 0, "gauge", "range"]],
		["s", ["house", "altitude"]],
		["s", ["systems", 0, "commissioning", "measured_flow"]],
		["s", ["derived", "systems", 0, "flow_difference"]],
	}
}

test_not_applicable_without_a_gauge if {
	verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "gauge": {"kind": "none"}}]}) == "not-applicable"
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {}
}
