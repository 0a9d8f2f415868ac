package policy.safety.dust_filter_test

import data.policy.lib
import data.policy.safety.dust_filter as rule
import rego.v2

# 29 CFR 1926.1153 Table 1 (from memory): a filter of 99 % or more.
profile := {"safety": {"dust_filter": {"minimum": {"si": 0.99}, "without": {"any_of": ["wet", "none"]}}}}

drilled(fields) := {"safety": object.union({"concrete_drilled": true, "dust_control": "shroud-and-collector"}, fields)}

verdict(job) := v if v := lib.verdict(rule, "safety") with input as job with data.profile as profile

test_met_at_exactly_99_percent if verdict(drilled({"dust_filter_efficiency": {"si": 0.99}})) == "met"

test_deficient if verdict(drilled({"dust_filter_efficiency": {"si": 0.985}})) == "deficient"

test_unrecorded if verdict(drilled({})) == "unrecorded"

test_unrecorded_method if {
	verdict({"safety": {"concrete_drilled": true, "dust_filter_efficiency": {"si": 0.99}}}) == "unrecorded"
}

test_not_applicable_with_water if verdict(drilled({"dust_control": "wet"})) == "not-applicable"

test_not_applicable_without_drilling if verdict(drilled({"concrete_drilled": false})) == "not-applicable"

test_says_what_is_missing if {
	got := rule.missing with input as {}
	got == {
		["safety", ["safety", "concrete_drilled"]],
		["safety", ["safety", "dust_control"]],
		["safety", ["safety", "dust_filter_efficiency"]],
	}
}
