package policy.evidence.sealed_openings_test

import data.policy.evidence.sealed_openings as rule
import data.policy.lib
import rego.v2

# common practice: a reviewer who was not there sees it on a photo or document.
profile := {"evidence": {"sealed_openings": {
	"kinds": {"any_of": ["image/jpeg"]},
	"untouched": {"any_of": ["not-reachable", "left-open"]},
}}}

verdict(job, id) := v if v := lib.verdict(rule, id) with input as job with data.profile as profile

record(route, files) := {"entry_routes": [object.union({"id": "r"}, route)], "evidence": files}

photo := {"id": "p", "media_type": "image/jpeg"}

test_met_by_the_photo_it_names if verdict(record({"treatment": "sealed", "photo": "p"}, [photo]), "r") == "met"

test_met_by_a_photo_that_names_it if verdict(record({"treatment": "sealed"}, [object.union(photo, {"shows": ["r"]})]), "r") == "met"

test_deficient_with_a_file_that_shows_nothing if {
	verdict(record({"treatment": "sealed", "photo": "p"}, [{"id": "p", "media_type": "text/plain"}]), "r") == "deficient"
}

test_deficient_without_such_a_file if verdict(record({"treatment": "sealed", "photo": "p"}, []), "r") == "deficient"

test_not_applicable_out_of_reach if verdict(record({"treatment": "not-reachable"}, []), "r") == "not-applicable"

test_unrecorded if verdict(record({"treatment": "sealed"}, []), "r") == "unrecorded"

test_unrecorded_when_it_is_not_said_what_was_done if verdict(record({"photo": "p"}, [photo]), "r") == "unrecorded"

test_unrecorded_without_a_list if verdict({}, "entry_routes") == "unrecorded"

test_says_what_is_missing if {
	got := rule.missing with input as record({}, []) with data.profile as profile
	got == {["r", ["entry_routes", 0, "treatment"]], ["r", ["entry_routes", 0, "photo"]]}
}
