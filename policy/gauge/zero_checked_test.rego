package policy.gauge.zero_checked_test

import data.policy.gauge.zero_checked as rule
import data.policy.lib
import rego.v2

# Common practice: a pressure gauge is looked at with its tube open before it is
# read; a zero that is off is a known cause of readings no fan can make.
hung(gauge) := {"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "gauge": gauge}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job

test_met if verdict(hung({"kind": "u-tube", "zero_checked": true})) == "met"

test_deficient if verdict(hung({"kind": "u-tube", "zero_checked": false})) == "deficient"

test_unrecorded if verdict(hung({"kind": "u-tube"})) == "unrecorded"

test_unrecorded_without_a_kind if verdict(hung({"zero_checked": true})) == "unrecorded"

test_not_applicable_without_a_gauge if verdict(hung({"kind": "none"})) == "not-applicable"

test_not_applicable_without_a_fan if {
	verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive"}]}) == "not-applicable"
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {}
}

test_says_what_is_missing if {
	got := rule.missing with input as hung({})
	got == {["s", ["systems", 0, "gauge", "kind"]], ["s", ["systems", 0, "gauge", "zero_checked"]]}
}
