package policy.physics.proof_after_fan_start_test

import data.policy.lib
import data.policy.physics.proof_after_fan_start as rule
import rego.v2

# common practice
profile := {"physics": {"proof_after_fan_start": {"least": {"si": 0}}}}

verdict(job) := v if v := lib.verdict(rule, "t") with input as job with data.profile as profile

record(phase, after) := {
	"systems": [{"id": "s", "powered_by": "fan"}],
	"measurements": {"tests": [{"id": "t", "phase": phase}]},
	"derived": {"tests": [{"id": "t", "at": "/measurements/tests/0", "after_fan_start": after}]},
}

test_met_at_the_start if verdict(record("after", {"si": 0})) == "met"

test_deficient_before if verdict(record("after", {"si": -1})) == "deficient"

test_not_applicable_before_the_work if verdict(record("before", {"si": -864000})) == "not-applicable"

test_undetermined_without_times if verdict(record("after", {})) == "undetermined"

test_not_applicable_without_a_fan if {
	verdict({"systems": [{"id": "s", "powered_by": "passive"}], "measurements": {"tests": [{"id": "t", "phase": "after"}]}}) == "not-applicable"
}

test_unrecorded if verdict({"measurements": {"tests": [{"id": "t"}]}}) == "unrecorded"

test_unrecorded_without_tests if {
	"unrecorded" == lib.verdict(rule, "measurements") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}], "measurements": {"tests": [{"id": "t"}]}} with data.profile as profile
	got == {["t", ["measurements", "tests", 0, "phase"]], ["t", ["systems", 0, "powered_by"]]}
}
