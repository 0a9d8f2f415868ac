package policy.special.expected_reduction_test

import data.policy.lib
import data.policy.special.expected_reduction as rule
import rego.v2

# CAN/CGSB-149.12, scope of the coming edition (from memory): soil depressurization cuts
# radon by 50 to 99 %, balanced ventilation by 20 to 50 %.
profile := {"special": {"expected_reduction": {"suction": {"si": 50}, "ventilation": {"si": 20}}}}

fan := {"id": "s", "kind": "sub-slab", "powered_by": "fan"}

air := {"id": "v", "kind": "heat-recovery-ventilation", "powered_by": "fan"}

fell(percent, systems) := {"systems": systems, "derived": {"radon": {"reduction": {"si": percent}}}}

verdict(job) := v if v := lib.verdict(rule, "measurements") with input as job with data.profile as profile

test_met_at_exactly_half if verdict(fell(50, [fan])) == "met"

test_deficient_below_half if verdict(fell(49, [fan])) == "deficient"

test_deficient_below_half_with_both if verdict(fell(30, [fan, air])) == "deficient"

test_met_at_exactly_a_fifth if verdict(fell(20, [air])) == "met"

test_deficient_below_a_fifth if verdict(fell(19, [air])) == "deficient"

test_unrecorded if verdict({"systems": [fan]}) == "unrecorded"

test_unrecorded_kind if verdict(fell(90, [air, {"id": "b", "powered_by": "fan"}])) == "unrecorded"

test_unrecorded_systems if verdict({"derived": {"radon": {"reduction": {"si": 90}}}}) == "unrecorded"

test_not_applicable_without_either if {
	verdict(fell(10, [{"id": "s", "kind": "sub-slab", "powered_by": "passive"}])) == "not-applicable"
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s", "kind": "sub-slab"}]}
	got == {
		["measurements", ["systems", 0, "powered_by"]],
		["measurements", ["derived", "radon", "reduction"]],
	}
}

test_says_that_systems_are_missing if {
	got := rule.missing with input as {"derived": {"radon": {"reduction": {"si": 90}}}}
	got == {["measurements", ["systems"]]}
}

test_unrecorded_where_the_result_before_may_be_a_bound if {
	tests := {"measurements": {"tests": [{"id": "b", "phase": "before"}]}}
	verdict(object.union(fell(90, [fan]), tests)) == "unrecorded"
	verdict(object.union(fell(90, [fan]), {"measurements": {"tests": [{"id": "b", "phase": "before", "below_detection": false}]}})) == "met"
	got := rule.missing with input as object.union(fell(90, [fan]), tests)
	got == {["measurements", ["measurements", "tests", 0, "below_detection"]]}
}
