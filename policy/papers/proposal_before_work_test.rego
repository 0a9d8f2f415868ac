package policy.papers.proposal_before_work_test

import data.policy.lib
import data.policy.papers.proposal_before_work as rule
import rego.v2

# EPA RMS 1994 18.1: the client gets it in writing before the work starts. Dates
# are days; the same day passes.
profile := {"papers": {"proposal_before_work": {"least": {"si": 0}}}}

verdict(job) := v if v := lib.verdict(rule, "closeout") with input as job with data.profile as profile

after(days) := {"derived": {"order": {"proposal_before_work": {"si": days * 86400}}}}

test_met if verdict(after(11)) == "met"

test_met_on_the_same_day if verdict(after(0)) == "met"

test_deficient_a_day_late if verdict(after(-1)) == "deficient"

test_unrecorded if verdict({"derived": {"order": {"proposal_before_work": {"undetermined": ["/job/dates/proposal_given"]}}}}) == "unrecorded"
