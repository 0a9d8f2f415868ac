package policy.physics.gauge_covers_shutoff_test

import data.policy.lib
import data.policy.physics.gauge_covers_shutoff as rule
import rego.v2

# common practice: the shut-off pressure lies inside the scale.
verdict(job) := v if v := lib.verdict(rule, "s") with input as job

record(range, shutoff) := {
	"house": {"altitude": {"si": 300}},
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "gauge": {"kind": "u-tube", "range": range}}],
	"derived": {"systems": [{"id": "s", "at": "/systems/0", "shutoff_pressure": shutoff}]},
}

test_met if verdict(record({"si": 1000}, {"si": 400})) == "met"

test_met_when_equal if verdict(record({"si": 400}, {"si": 400})) == "met"

test_deficient if verdict(record({"si": 300}, {"si": 400})) == "deficient"

test_unrecorded_without_a_curve if verdict(record({"si": 300}, {})) == "unrecorded"

test_unrecorded_without_the_altitude if verdict(object.remove(record({"si": 300}, {"si": 400}), ["house"])) == "unrecorded"

test_says_what_is_missing if {
	got := rule.missing with input as object.remove(record({}, {}), ["house"])
	got == {
		["s", ["systems", 0, "gauge", "range"]],
		["s", ["house", "altitude"]],
		["s", ["derived", "systems", 0, "shutoff_pressure"]],
	}
}

test_says_that_the_kind_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]}
	["s", ["systems", 0, "gauge", "kind"]] in got
}

test_not_applicable_without_a_gauge if {
	verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "gauge": {"kind": "none"}}]}) == "not-applicable"
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {}
}
