package policy.evidence.file_present_test

import data.policy.evidence.file_present as rule
import data.policy.lib
import rego.v2

# common practice
verdict(job, id) := v if v := lib.verdict(rule, id) with input as job

record(found) := {
	"evidence": [{"id": "p", "path": "photos/label.jpg"}],
	"derived": {"evidence": [object.union({"id": "p", "at": "/evidence/0"}, found)]},
}

test_met if verdict(record({"present": true}), "p") == "met"

test_deficient if verdict(record({"present": false}), "p") == "deficient"

test_undetermined_without_the_folder if verdict(record({}), "p") == "undetermined"

test_unrecorded if {
	verdict({"evidence": [{"id": "p"}], "derived": {"evidence": [{"id": "p", "at": "/evidence/0"}]}}, "p") == "unrecorded"
}

test_unrecorded_without_a_list if verdict({}, "evidence") == "unrecorded"
