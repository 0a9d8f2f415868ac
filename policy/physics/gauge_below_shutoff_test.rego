package policy.physics.gauge_below_shutoff_test

import data.policy.lib
import data.policy.physics.gauge_below_shutoff as rule
import rego.v2

# common practice: above 1.05 of the shut-off pressure at the density of the site a
# reading is impossible for that fan.
profile := {"physics": {"gauge_below_shutoff": {"maximum": {"si": 1.05}}}}

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

test_met_at_the_limit if verdict(record({"gauge_share": {"si": 1.05}})) == "met"

# 1.75 inH2O on a fan that shuts off at 1.6 inH2O.
test_deficient if verdict(record({"gauge_share": {"si": 1.09375}})) == "deficient"

test_undetermined_without_a_curve if verdict(record({"gauge_share": {"undetermined": ["/systems/0/fan/curve"]}})) == "undetermined"

test_undetermined_without_the_altitude if {
	verdict(object.remove(record({"gauge_share": {"si": 0.5}}), ["house"])) == "undetermined"
}

# At sea level the fan gives most.
test_deficient_without_the_altitude if {
	verdict(object.remove(record({"gauge_share": {"si": 1.2}}), ["house"])) == "deficient"
}

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
