package policy.gauge.easy_to_see_test

import data.policy.gauge.easy_to_see as rule
import data.policy.lib
import rego.v2

# EPA RMS 1994 16.2 (from memory): easily seen or heard by occupants. RMS-LB 2018
# (12/20) 8.2.1(a): the value shown is readily seen.
hung(gauge) := {"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "gauge": gauge}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job

test_met if verdict(hung({"kind": "u-tube", "easy_to_see": true})) == "met"

test_deficient if verdict(hung({"kind": "u-tube", "easy_to_see": false})) == "deficient"

test_unrecorded if verdict(hung({"kind": "u-tube"})) == "unrecorded"

test_unrecorded_without_a_kind if verdict(hung({"easy_to_see": true})) == "unrecorded"

test_not_applicable_without_a_gauge if verdict(hung({"kind": "none"})) == "not-applicable"

test_not_applicable_without_a_fan if {
	verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive"}]}) == "not-applicable"
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {}
}

test_says_what_is_missing if {
	got := rule.missing with input as hung({})
	got == {["s", ["systems", 0, "gauge", "kind"]], ["s", ["systems", 0, "gauge", "easy_to_see"]]}
}
