package policy.fan.reserved_space_test

import data.policy.fan.reserved_space as rule
import data.policy.lib
import rego.v2

# CCAH 2020 701.1: a clear cylinder 21 in across and 36 in high.
profile := {"fan": {"reserved_space": {"diameter": {"si": 0.5334}, "height": {"si": 0.9144}}}}

reserved(diameter, height) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "rough-in",
	"fan": {"reserved_diameter": diameter, "reserved_height": height},
}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met_at_exactly_both if verdict(reserved({"si": 0.5334}, {"si": 0.9144})) == "met"

test_deficient_narrow if verdict(reserved({"si": 0.508}, {"si": 1})) == "deficient"

test_deficient_low if verdict(reserved({"si": 0.6}, {"si": 0.9})) == "deficient"

test_unrecorded if verdict(reserved({"si": 0.6}, {})) == "unrecorded"

test_not_applicable_with_a_fan if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	got == {
		["s", ["systems", 0, "powered_by"]],
		["s", ["systems", 0, "fan", "reserved_diameter"]],
		["s", ["systems", 0, "fan", "reserved_height"]],
	}
}
