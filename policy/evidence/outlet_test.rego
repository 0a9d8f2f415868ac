package policy.evidence.outlet_test

import data.policy.evidence.outlet as rule
import data.policy.lib
import rego.v2

# common practice: a reviewer who was not there sees it on a photo or document.
profile := {"evidence": {"outlet": {"kinds": {"any_of": ["image/jpeg", "application/pdf"]}}}}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

part := {"outdoors": true}

system(changes) := object.union({"id": "s", "kind": "sub-slab", "powered_by": "fan", "discharge": object.union(part, {"photo": "p"})}, changes)

record(files) := {"systems": [system({})], "evidence": files}

test_met if verdict(record([{"id": "p", "media_type": "image/jpeg"}])) == "met"

test_deficient_with_a_file_that_shows_nothing if verdict(record([{"id": "p", "media_type": "text/plain"}])) == "deficient"

test_deficient_without_such_a_file if verdict(record([{"id": "q", "media_type": "image/jpeg"}])) == "deficient"

test_unrecorded if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "discharge": part}], "evidence": []}) == "unrecorded"

test_unrecorded_without_evidence if verdict({"systems": [system({})]}) == "unrecorded"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_not_applicable_to_rough_in if verdict({"systems": [system({"powered_by": "rough-in"})]}) == "not-applicable"

test_not_applicable_to_ventilation if verdict({"systems": [system({"kind": "heat-recovery-ventilation"})]}) == "not-applicable"

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["systems", 0, "discharge", "photo"]],
		["s", ["evidence"]],
	}
}

test_says_that_the_type_is_missing if {
	got := rule.missing with input as record([{"id": "p"}]) with data.profile as profile
	got == {["s", ["evidence", 0, "media_type"]]}
}
