package policy.papers.records_outlast_warranty_test

import data.policy.lib
import data.policy.papers.records_outlast_warranty as rule
import rego.v2

# EPA RMS 1994 18.2: 3 years or the length of the warranty, whichever is longer.
# 32 Ill. Adm. Code 422.70(f): the same with 5 years.
verdict(job) := v if v := lib.verdict(rule, "closeout") with input as job

record(kept, warranty) := {"closeout": {"records": {"kept_for": {"si": kept}}, "warranty": {"length": {"si": warranty}}}}

test_met_when_equal if verdict(record(157680000, 157680000)) == "met"

test_met_when_longer if verdict(record(157680000, 31536000)) == "met"

test_deficient_when_the_warranty_is_longer if verdict(record(94608000, 157680000)) == "deficient"

test_unrecorded if verdict({}) == "unrecorded"

test_says_what_is_missing if {
	got := rule.missing with input as {}
	got == {["closeout", ["closeout", "records", "kept_for"]], ["closeout", ["closeout", "warranty", "length"]]}
}
