package policy.physics.gauge_not_blocked_test

import data.policy.lib
import data.policy.physics.gauge_not_blocked as rule
import rego.v2

# common practice: from 0.95 of the shut-off pressure there is little or no flow.
profile := {"physics": {"gauge_not_blocked": {"maximum": {"si": 0.95}}}}

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

test_met if verdict(record({"gauge_share": {"si": 0.5}})) == "met"

test_deficient_at_the_limit if verdict(record({"gauge_share": {"si": 0.95}})) == "deficient"

test_unrecorded_without_a_curve if verdict(record({"gauge_share": {"undetermined": ["/systems/0/fan/curve"]}})) == "unrecorded"

test_unrecorded_without_the_altitude if {
	verdict(object.remove(record({"gauge_share": {"si": 0.5}}), ["house"])) == "unrecorded"
}

test_says_what_is_missing if {
	got := rule.missing with input as object.remove(record({}), ["house"]) with data.profile as profile
	got == {["s", ["house", "altitude"]], ["s", ["derived", "systems", 0, "gauge_share"]]}
}

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
