package policy.papers.state_report_test

import data.policy.lib
import data.policy.papers.state_report as rule
import rego.v2

# Minn. R. 4620.7800 subp. 2-3: owner, address, dates, kind of system, kind of
# building, values before and after, tag number.
verdict(job) := v if v := lib.verdict(rule, "closeout") with input as job

record(filed, complete) := {"closeout": {"state_report": {"filed": filed, "complete": complete}}}

test_met if verdict(record(true, true)) == "met"

test_deficient_when_not_filed if verdict(record(false, true)) == "deficient"

test_deficient_when_not_complete if verdict(record(true, false)) == "deficient"

test_unrecorded if verdict({"closeout": {"state_report": {"filed": true}}}) == "unrecorded"

test_says_what_is_missing if {
	got := rule.missing with input as {}
	got == {["closeout", ["closeout", "state_report", "filed"]], ["closeout", ["closeout", "state_report", "complete"]]}
}
