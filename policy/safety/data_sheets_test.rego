package policy.safety.data_sheets_test

import data.policy.lib
import data.policy.safety.data_sheets as rule
import rego.v2

# EPA RMS 1994 section 12 and 29 CFR 1910.1200, in construction 1926.59 (all from
# memory): sheets at hand and workers trained.
profile := {"safety": {"data_sheets": {}}}

crew(fields) := {"safety": fields}

verdict(job) := v if v := lib.verdict(rule, "safety") with input as job with data.profile as profile

test_met if verdict(crew({"solvents_used": true, "sds_on_site": true})) == "met"

test_deficient if verdict(crew({"solvents_used": true, "sds_on_site": false})) == "deficient"

test_unrecorded if verdict({}) == "unrecorded"

test_unrecorded_condition if verdict(crew({"sds_on_site": false})) == "unrecorded"

test_not_applicable if verdict(crew({"solvents_used": false, "sds_on_site": false})) == "not-applicable"

test_says_what_is_missing if {
	got := rule.missing with input as {}
	got == {["safety", ["safety", "solvents_used"]], ["safety", ["safety", "sds_on_site"]]}
}
