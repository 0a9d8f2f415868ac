package policy.survey.brought_up_to_date_test

import data.policy.lib
import data.policy.survey.brought_up_to_date as rule
import rego.v2

# 32 Ill. Adm. Code 422.150(c)(3) (from memory): altering calls for the current rule;
# replacing a worn part alone is no altering.
profile := {"survey": {"brought_up_to_date": {"worn_parts": {"any_of": ["none", "fan", "gauge", "labels"]}}}}

job(purpose, parts, done, estimate) := {"job": {"purpose": purpose, "existing_system": {
	"parts_altered": parts, "brought_up_to_date": done, "upgrade_estimate_given": estimate,
}}}

verdict(job) := v if v := lib.verdict(rule, "job") with input as job with data.profile as profile

test_met if verdict(job("repair", ["pipe"], true, true)) == "met"

test_deficient_when_left_old if verdict(job("repair", ["pipe"], false, true)) == "deficient"

test_deficient_without_an_estimate if verdict(job("activation-of-rough-in", ["discharge"], true, false)) == "deficient"

test_a_worn_fan_is_no_alteration if verdict(job("fan-replacement", ["fan"], false, false)) == "not-applicable"

test_not_applicable_to_a_new_system if verdict({"job": {"purpose": "new-installation"}}) == "not-applicable"

test_unrecorded if verdict({"job": {"purpose": "repair"}}) == "unrecorded"

test_says_what_is_missing if {
	got := rule.missing with input as {} with data.profile as profile
	got == {
		["job", ["job", "purpose"]],
		["job", ["job", "existing_system", "parts_altered"]],
		["job", ["job", "existing_system", "brought_up_to_date"]],
		["job", ["job", "existing_system", "upgrade_estimate_given"]],
	}
}
