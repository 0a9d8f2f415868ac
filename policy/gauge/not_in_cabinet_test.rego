package policy.gauge.not_in_cabinet_test

import data.policy.gauge.not_in_cabinet as rule
import data.policy.lib
import rego.v2

# common practice
profile := {"gauge": {"not_in_cabinet": {"hidden": {"any_of": ["closed-cabinet"]}}}}

hung(gauge) := {"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "gauge": gauge}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met if verdict(hung({"kind": "u-tube", "place": "basement"})) == "met"

test_deficient if verdict(hung({"kind": "u-tube", "place": "closed-cabinet"})) == "deficient"

test_unrecorded if verdict(hung({"kind": "u-tube"})) == "unrecorded"

test_not_applicable_without_a_gauge if verdict(hung({"kind": "none"})) == "not-applicable"

test_not_applicable_without_a_fan if {
	verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive"}]}) == "not-applicable"
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as hung({}) with data.profile as profile
	got == {["s", ["systems", 0, "gauge", "kind"]], ["s", ["systems", 0, "gauge", "place"]]}
}
