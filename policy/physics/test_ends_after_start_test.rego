package policy.physics.test_ends_after_start_test

import data.policy.lib
import data.policy.physics.test_ends_after_start as rule
import rego.v2

# common practice
profile := {"physics": {"test_ends_after_start": {"above": {"si": 0}}}}

verdict(job) := v if v := lib.verdict(rule, "t") with input as job with data.profile as profile

record(duration) := {
	"measurements": {"tests": [{"id": "t"}]},
	"derived": {"tests": [{"id": "t", "at": "/measurements/tests/0", "duration": duration}]},
}

test_met if verdict(record({"si": 1})) == "met"

test_deficient_at_zero if verdict(record({"si": 0})) == "deficient"

test_deficient_backwards if verdict(record({"si": -3600})) == "deficient"

test_unrecorded if verdict(record({"undetermined": ["/measurements/tests/0/end"]})) == "unrecorded"

test_unrecorded_without_tests if {
	"unrecorded" == lib.verdict(rule, "measurements") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as record({}) with data.profile as profile
	got == {["t", ["derived", "tests", 0, "duration"]]}
}
