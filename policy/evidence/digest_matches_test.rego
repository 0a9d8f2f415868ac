package policy.evidence.digest_matches_test

import data.policy.evidence.digest_matches as rule
import data.policy.lib
import rego.v2

# common practice
verdict(job, id) := v if v := lib.verdict(rule, id) with input as job

record(found) := {
	"evidence": [{"id": "p", "path": "photos/label.jpg", "sha256": "64433b7c"}],
	"derived": {"evidence": [object.union({"id": "p", "at": "/evidence/0"}, found)]},
}

test_met if verdict(record({"present": true, "digest_matches": true}), "p") == "met"

test_deficient if verdict(record({"present": true, "digest_matches": false}), "p") == "deficient"

test_not_applicable_without_the_file if verdict(record({"present": false}), "p") == "not-applicable"

test_undetermined_without_the_folder if verdict(record({}), "p") == "undetermined"

test_unrecorded if {
	verdict({"evidence": [{"id": "p", "path": "photos/label.jpg"}], "derived": {"evidence": [{"id": "p", "at": "/evidence/0", "present": true}]}}, "p") == "unrecorded"
}

test_unrecorded_without_a_list if verdict({}, "evidence") == "unrecorded"

test_says_what_is_missing if {
	got := rule.missing with input as {"evidence": [{"id": "p"}]}
	got == {["p", ["evidence", 0, "sha256"]], ["p", ["evidence", 0, "path"]]}
}
