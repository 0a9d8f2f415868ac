package policy.physics.gauge_above_natural_draft_test

import data.policy.lib
import data.policy.physics.gauge_above_natural_draft as rule
import rego.v2

# common practice: less than 0.03 inH2O (7.47 Pa) with the fan on means that the
# fan or the tube is off or the gauge is dry. The draft of a warm stack alone is
# about 7.2 Pa (8 m, 15 and -5 degrees).
profile := {"physics": {"gauge_above_natural_draft": {"least": {"si": 7.4726727}}}}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

# One reading with the fan on, fan and altitude recorded.
record(values) := {
	"house": {"altitude": {"si": 300}},
	"systems": [{
		"id": "s", "kind": "sub-slab", "powered_by": "fan",
		"gauge": {"kind": "u-tube", "readings": [{"id": "r", "fan_on": true, "value": {"si": 200}}]},
	}],
	"derived": {"systems": [object.union({"id": "s", "at": "/systems/0", "gauge_reading": {"si": 200}}, values)]},
}

test_met if verdict(record({})) == "met"

test_met_at_the_limit if verdict(record({"gauge_reading": {"si": 7.4726727}})) == "met"

# 0.01 inH2O with the fan on.
test_deficient if verdict(record({"gauge_reading": {"si": 2.49}})) == "deficient"

test_not_applicable_below_zero if verdict(record({"gauge_reading": {"si": -1}})) == "not-applicable"

test_unrecorded_without_a_reading if verdict(record({"gauge_reading": {"si": null}})) == "unrecorded"

test_says_that_the_gauge_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	["s", ["systems", 0, "gauge", "kind"]] in got
}

test_not_applicable_without_a_gauge if {
	verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "gauge": {"kind": "none"}}]}) == "not-applicable"
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}
