package policy.special.rough_in_capped_test

import data.policy.lib
import data.policy.special.rough_in_capped as rule
import rego.v2

# common practice
profile := {"special": {"rough_in_capped": {"driven": {"any_of": ["rough-in"]}}}}

made(parts) := {"systems": [object.union({"id": "s", "kind": "sub-slab", "powered_by": "rough-in"}, parts)]}

full := {"rough_in": {"capped": true}}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met if verdict(made(full)) == "met"

test_deficient_capped if verdict(made(object.union(full, {"rough_in": {"capped": false}}))) == "deficient"

test_unrecorded_capped if verdict(made(json.remove(full, ["rough_in/capped"]))) == "unrecorded"

test_unrecorded_kind if verdict({"systems": [object.union({"id": "s", "powered_by": "rough-in"}, full)]}) == "unrecorded"

test_not_applicable_to_other_systems if verdict({"systems": [{"id": "s", "kind": "crawlspace-ventilation", "powered_by": "rough-in"}]}) == "not-applicable"

test_unrecorded_drive if verdict({"systems": [object.union({"id": "s", "kind": "sub-slab"}, full)]}) == "unrecorded"

test_not_applicable_driven_otherwise if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["systems", 0, "rough_in", "capped"]],
	}
}
