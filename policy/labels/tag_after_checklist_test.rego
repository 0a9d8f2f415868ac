package policy.labels.tag_after_checklist_test

import data.policy.labels.tag_after_checklist as rule
import data.policy.lib
import rego.v2

# Minnesota Rules 4620.7600 subp. 2: the checklist is finished before the tag goes on.
tagged(tag) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"labels": [object.union({"id": "a", "kind": "state-tag"}, tag)],
	"commissioning": {"checklist_done_on": {"si": 1773705600}},
}]}

verdict(job) := v if v := lib.verdict(rule, "a") with input as job

test_met_on_the_same_day if verdict(tagged({"fixed_on": {"si": 1773705600}})) == "met"

test_deficient_a_day_early if verdict(tagged({"fixed_on": {"si": 1773619200}})) == "deficient"

test_unrecorded if verdict(tagged({})) == "unrecorded"

test_unrecorded_other_day if {
	verdict({"systems": [{
		"id": "s", "kind": "sub-slab", "powered_by": "fan",
		"labels": [{"id": "a", "kind": "state-tag", "fixed_on": {"si": 1773705600}}],
	}]}) == "unrecorded"
}

test_unrecorded_labels if {
	"unrecorded" == lib.verdict(rule, "s") with input as {"systems": [{"id": "s"}]}
}

test_not_applicable_without_a_fan if {
	verdict({"systems": [{
		"id": "s", "kind": "sub-slab", "powered_by": "passive",
		"labels": [{"id": "a", "kind": "state-tag"}],
	}]}) == "not-applicable"
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {}
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s", "kind": "sub-slab", "labels": [{"id": "a", "kind": "state-tag"}, {"id": "b"}]}]}
	got == {
		["a", ["systems", 0, "powered_by"]],
		["b", ["systems", 0, "powered_by"]],
		["b", ["systems", 0, "labels", 1, "kind"]],
		["a", ["systems", 0, "labels", 0, "fixed_on"]],
		["a", ["systems", 0, "commissioning", "checklist_done_on"]],
	}
}
