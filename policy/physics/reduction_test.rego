package policy.physics.reduction_test

import data.policy.lib
import data.policy.physics.reduction as rule
import rego.v2

# common practice
profile := {"physics": {"reduction": {"least": {"si": 0}, "below": {"si": 100}}}}

verdict(job) := v if v := lib.verdict(rule, "measurements") with input as job with data.profile as profile

driven(drive) := {"systems": [{"id": "s", "powered_by": drive}]}

record(reduction) := object.union(driven("fan"), {"measurements": {"tests": []}, "derived": {"radon": {"reduction": reduction}}})

test_met if verdict(record({"si": 92.7})) == "met"

test_met_when_nothing_changed if verdict(record({"si": 0})) == "met"

test_deficient_when_it_rose if verdict(record({"si": -3})) == "deficient"

test_deficient_when_nothing_is_left if verdict(record({"si": 100})) == "deficient"

test_undetermined_without_both if verdict(record({})) == "undetermined"

test_unrecorded if verdict({}) == "unrecorded"

test_unrecorded_where_the_result_before_may_be_a_bound if {
	job := object.union(record({"si": 90}), {"measurements": {"tests": [{"id": "b", "phase": "before"}]}})
	verdict(job) == "unrecorded"
	got := rule.missing with input as job
	got == {["measurements", ["measurements", "tests", 0, "below_detection"]]}
}

# Pipe that waits for its fan lowers nothing.
test_not_applicable_where_nothing_runs_yet if {
	verdict(object.union(record({"si": -3}), driven("rough-in"))) == "not-applicable"
	verdict(driven("rough-in")) == "not-applicable"
}

test_an_unknown_drive_exempts_nothing if {
	job := object.union(record({"si": 90}), {"systems": [{"id": "s"}]})
	verdict(job) == "unrecorded"
	got := rule.missing with input as job
	got == {["measurements", ["systems", 0, "powered_by"]]}
}

test_deficient_however_driven if verdict(object.remove(record({"si": -3}), ["systems"])) == "deficient"
