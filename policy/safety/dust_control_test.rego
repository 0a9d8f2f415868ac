package policy.safety.dust_control_test

import data.policy.lib
import data.policy.safety.dust_control as rule
import rego.v2

# 29 CFR 1926.1153 Table 1 (from memory): hand-held and stand-mounted drills with
# shroud and dust collector; rig-mounted core drills with water.
profile := {"safety": {"dust_control": {"methods": {"any_of": ["shroud-and-collector", "wet"]}}}}

drilled(fields) := {"safety": object.union({"concrete_drilled": true}, fields)}

verdict(job) := v if v := lib.verdict(rule, "safety") with input as job with data.profile as profile

test_met if verdict(drilled({"dust_control": "shroud-and-collector"})) == "met"

test_deficient_with_a_vacuum_afterwards if verdict(drilled({"dust_control": "hepa-vacuum-only"})) == "deficient"

test_deficient_without if verdict(drilled({"dust_control": "none"})) == "deficient"

test_unrecorded if verdict(drilled({})) == "unrecorded"

test_unrecorded_drilling if verdict({"safety": {"dust_control": "none"}}) == "unrecorded"

test_not_applicable_without_drilling if verdict({"safety": {"concrete_drilled": false}}) == "not-applicable"

test_says_what_is_missing if {
	got := rule.missing with input as {}
	got == {["safety", ["safety", "concrete_drilled"]], ["safety", ["safety", "dust_control"]]}
}
