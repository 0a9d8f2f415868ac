package policy.evidence.taken_after_start_test

import data.policy.evidence.taken_after_start as rule
import data.policy.lib
import rego.v2

# common practice
verdict(job, id) := v if v := lib.verdict(rule, id) with input as job

record(found) := {
	"systems": [{
		"id": "s",
		"gauge": {"photo": "p"},
		"discharge": {"photo": "out"},
		"electrical": {"photo": "switch"},
		"labels": [{"id": "l", "photo": "label"}],
	}],
	"entry_routes": [{"id": "r", "photo": "joint"}],
	"evidence": [{"id": "p", "media_type": "image/jpeg"}],
	"derived": {"evidence": [object.union({"id": "p", "at": "/evidence/0"}, found)]},
}

test_met if verdict(record({"present": true, "taken": {"si": 86400}, "before_work": false}), "p") == "met"

test_deficient if verdict(record({"present": true, "taken": {"si": 0}, "before_work": true}), "p") == "deficient"

test_deficient_by_the_record_alone if verdict(record({"taken": {"si": 0}, "before_work": true}), "p") == "deficient"

# The time inside the file may be another than the one recorded.
test_undetermined_by_the_record_alone if verdict(record({"taken": {"si": 86400}, "before_work": false}), "p") == "undetermined"

test_unrecorded if verdict(record({"present": true}), "p") == "unrecorded"

test_unrecorded_without_a_list if verdict({}, "evidence") == "unrecorded"

test_not_applicable_to_papers if {
	verdict(
		{
			"entry_routes": [{"id": "r", "photo": "p"}], "evidence": [{"id": "p", "media_type": "application/pdf"}],
			"derived": {"evidence": [{"id": "p", "at": "/evidence/0"}]},
		},
		"p",
	) == "not-applicable"
}

test_all_that_is_installed_counts if {
	got := rule.installed with input as record({})
	got == {"p", "out", "switch", "label", "joint"}
}

# A photo of the survey is older than the work, as it should be.
test_other_photos_are_no_subject if {
	got := rule.subjects with input as {"evidence": [{"id": "q"}], "derived": {"evidence": [{"id": "q", "at": "/evidence/0", "before_work": true}]}}
	count(got) == 0
}

test_says_what_is_missing if {
	got := rule.missing with input as {
		"entry_routes": [{"id": "r", "photo": "p"}], "evidence": [{"id": "p"}],
		"derived": {"evidence": [{"id": "p", "at": "/evidence/0"}]},
	}
	got == {
		["p", ["derived", "evidence", 0, "taken"]],
		["p", ["job", "dates", "work_started"]],
		["p", ["evidence", 0, "media_type"]],
	}
}
