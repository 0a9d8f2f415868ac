package policy.physics.duplicates_same_period_test

import data.policy.lib
import data.policy.physics.duplicates_same_period as rule
import rego.v2

# common practice: within an hour of each other.
profile := {"physics": {"duplicates_same_period": {"apart": {"si": 3600}}}}

verdict(job) := v if v := lib.verdict(rule, "a/b") with input as job with data.profile as profile

record(start, end) := {
	"measurements": {"tests": []},
	"derived": {"duplicates": [{"id": "a/b", "at": "/measurements/tests/1", "start_difference": start, "end_difference": end}]},
}

test_met_at_the_limit if verdict(record({"si": 3600}, {"si": 0})) == "met"

test_deficient_when_starts_differ if verdict(record({"si": 3601}, {"si": 0})) == "deficient"

test_deficient_when_ends_differ if verdict(record({"si": 0}, {"si": 86400})) == "deficient"

test_undetermined_without_times if verdict(record({"si": 0}, {})) == "undetermined"

test_undetermined_without_a_start if verdict(record({}, {"si": 0})) == "undetermined"

# The judge then says that the limit is unknown.
test_no_limit_decides_nothing if {
	unknown := {"physics": {"duplicates_same_period": {"apart": {}}}}
	job := record({"si": 0}, {"si": 0})
	"unrecorded" == lib.verdict(rule, "a/b") with input as job with data.profile as unknown
	got := rule.undetermined with input as job with data.profile as unknown
	count(got) == 0
}

test_unrecorded_without_tests if {
	"unrecorded" == lib.verdict(rule, "measurements") with input as {} with data.profile as profile
}
