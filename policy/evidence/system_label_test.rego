package policy.evidence.system_label_test

import data.policy.evidence.system_label as rule
import data.policy.lib
import rego.v2

# common practice: a reviewer who was not there sees it on a photo or document.
profile := {"evidence": {"system_label": {"kinds": {"any_of": ["image/jpeg"]}}}}

verdict(job, id) := v if v := lib.verdict(rule, id) with input as job with data.profile as profile

on(system, label, files) := {
	"systems": [object.union(system, {"id": "s", "labels": [object.union({"id": "l", "kind": "system"}, label)]})],
	"evidence": files,
}

active := {"kind": "sub-slab", "powered_by": "fan"}

passive := {"kind": "sub-slab", "powered_by": "passive"}

photo := [{"id": "p", "media_type": "image/jpeg"}]

record(label, files) := on(active, label, files)

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

# EPA RMS 1994 16.5 (from memory) asks for the label on active systems only.
test_not_applicable_without_a_fan if {
	verdict(on(passive, {}, []), "l") == "not-applicable"
	verdict({"systems": [object.union(passive, {"id": "s"})]}, "s") == "not-applicable"
}

test_an_unknown_drive_exempts_nothing if {
	verdict(on({}, {"photo": "p"}, photo), "l") == "unrecorded"
	got := rule.missing with input as on({"kind": "sub-slab"}, {"photo": "p"}, photo) with data.profile as profile
	got == {["l", ["systems", 0, "powered_by"]]}
}

test_says_what_is_missing if {
	none := rule.missing with input as object.remove(record({}, []), ["evidence"]) with data.profile as profile
	none == {["l", ["systems", 0, "labels", 0, "photo"]], ["l", ["evidence"]]}
	vague := rule.missing with input as record({"photo": "p"}, [{"id": "p"}]) with data.profile as profile
	vague == {["l", ["evidence", 0, "media_type"]]}
}
