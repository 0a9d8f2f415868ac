package policy.electrical.permits_test

import data.policy.electrical.permits as rule
import data.policy.lib
import rego.v2

# SGM-SF 2017 (12/20) 4.4.4 and EPA RMS 1994 14.1.2 (from memory): licences and
# permits that the place asks for are obtained.
profile := {"electrical": {"permits": {"obtained": {"any_of": ["issued", "closed", "not-required"]}}}}

job(permits, checked) := {"job": {"permits": permits, "jurisdiction": {"permit_duties_checked": checked}}}

verdict(record, subject) := v if v := lib.verdict(rule, subject) with input as record with data.profile as profile

test_met if {
	record := job([{"id": "el", "status": "issued"}], true)
	verdict(record, "job") == "met"
	verdict(record, "el") == "met"
}

test_met_when_none_is_needed if verdict(job([], true), "job") == "met"

test_deficient_when_only_applied_for if verdict(job([{"id": "el", "status": "applied"}], true), "el") == "deficient"

test_deficient_when_nobody_asked if verdict(job([], false), "job") == "deficient"

test_unrecorded_status if verdict(job([{"id": "el"}], true), "el") == "unrecorded"

test_unrecorded_list if verdict({"job": {"jurisdiction": {"permit_duties_checked": true}}}, "job") == "unrecorded"

test_says_what_is_missing if {
	got := rule.missing with input as {"job": {}} with data.profile as profile
	got == {
		["job", ["job", "permits"]],
		["job", ["job", "jurisdiction", "permit_duties_checked"]],
	}
}
