package policy.special.activation_openings_test

import data.policy.lib
import data.policy.special.activation_openings as rule
import rego.v2

# CCAH 2020 901.1: before a fan goes onto a passive pipe, openings are
# looked for and closed.
job(fields) := {"job": {"purpose": "activation-of-rough-in", "existing_system": fields}}

verdict(job) := v if v := lib.verdict(rule, "job") with input as job

test_met if verdict(job({"openings_checked": true})) == "met"

test_deficient if verdict(job({"openings_checked": false})) == "deficient"

test_unrecorded if verdict(job({})) == "unrecorded"

test_unrecorded_purpose if verdict({"job": {"existing_system": {"openings_checked": true}}}) == "unrecorded"

test_not_applicable_to_other_jobs if verdict({"job": {"purpose": "new-installation"}}) == "not-applicable"

test_says_what_is_missing if {
	got := rule.missing with input as {}
	got == {["job", ["job", "purpose"]], ["job", ["job", "existing_system", "openings_checked"]]}
}
