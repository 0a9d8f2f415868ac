package policy.evidence.system_label_test

import data.policy.evidence.system_label as rule
import data.policy.lib
import rego.v2

# common practice: a reviewer who was not there sees it on a photo or document.
profile := {"evidence": {"system_label": {"kinds": {"any_of": ["image/jpeg"]}}}}

verdict(job, id) := v if v := lib.verdict(rule, id) with input as job with data.profile as profile

record(label, files) := {"systems": [{"id": "s", "labels": [object.union({"id": "l", "kind": "system"}, label)]}], "evidence": files}

test_met_by_the_photo_it_names if verdict(record({"photo": "p"}, [{"id": "p", "media_type": "image/jpeg"}]), "l") == "met"

test_met_by_a_photo_that_names_it if verdict(record({}, [{"id": "p", "media_type": "image/jpeg", "shows": ["l"]}]), "l") == "met"

test_deficient_with_a_file_that_shows_nothing if verdict(record({"photo": "p"}, [{"id": "p", "media_type": "text/plain"}]), "l") == "deficient"

test_deficient_without_such_a_file if verdict(record({"photo": "p"}, []), "l") == "deficient"

test_unrecorded if verdict(record({}, []), "l") == "unrecorded"

test_unrecorded_when_it_may_be_the_system_label if {
	verdict({"systems": [{"id": "s", "labels": [{"id": "l", "photo": "p"}]}], "evidence": [{"id": "p", "media_type": "image/jpeg"}]}, "l") == "unrecorded"
}

test_unrecorded_without_labels if verdict({"systems": [{"id": "s"}]}, "s") == "unrecorded"

test_unrecorded_without_systems if verdict({}, "systems") == "unrecorded"

test_other_labels_are_no_subject if {
	got := rule.subjects with input as record({"kind": "pipe"}, []) with data.profile as profile
	count(got) == 0
}
