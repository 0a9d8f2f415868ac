package policy.survey.before_work_test

import data.policy.lib
import data.policy.survey.before_work as rule
import rego.v2

# 25 Pa. Code 240.308(a); EPA RMS 1994 11.1 (from memory): before any work. The
# record holds days, so that the same day counts as before.
profile := {"survey": {"before_work": {"least": {"si": 0}}}}

verdict(value) := v if {
	job := {"derived": {"order": {"survey_before_work": value}}}
	v := lib.verdict(rule, "job") with input as job with data.profile as profile
}

test_met_two_weeks_earlier if verdict({"si": 1209600}) == "met"

test_met_on_the_same_day if verdict({"si": 0}) == "met"

test_deficient_a_day_later if verdict({"si": -86400}) == "deficient"

test_unrecorded if verdict({"undetermined": ["/job/dates/surveyed"]}) == "unrecorded"
