package policy.papers.package_delivered_test

import data.policy.lib
import data.policy.papers.package_delivered as rule
import rego.v2

# EPA RMS 1994 18.3, from memory: the client gets the package when the work is
# done.
verdict(job) := v if v := lib.verdict(rule, "closeout") with input as job

record(delivered) := {"job": {"dates": {"completed": {"si": 86400}}}, "closeout": {"package": {"delivered": {"si": delivered}}}}

test_met_on_the_last_day if verdict(record(86400)) == "met"

test_met_later if verdict(record(864000)) == "met"

test_deficient_before_the_end if verdict(record(0)) == "deficient"

test_unrecorded if verdict({}) == "unrecorded"

test_says_what_is_missing if {
	got := rule.missing with input as {}
	got == {["closeout", ["closeout", "package", "delivered"]], ["closeout", ["job", "dates", "completed"]]}
}
