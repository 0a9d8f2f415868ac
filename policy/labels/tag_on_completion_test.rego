package policy.labels.tag_on_completion_test

import data.policy.labels.tag_on_completion as rule
import data.policy.lib
import rego.v2

# Minnesota Rules 4620.7600 subp. 3: fixed on the date of completion.
tagged(tag) := {
	"job": {"dates": {"completed": {"si": 1773705600}}},
	"systems": [{
		"id": "s", "kind": "sub-slab", "powered_by": "fan",
		"labels": [object.union({"id": "a", "kind": "state-tag"}, tag)],
	}],
}

verdict(job) := v if v := lib.verdict(rule, "a") with input as job

test_met_on_the_day if verdict(tagged({"fixed_on": {"si": 1773705600}})) == "met"

test_deficient_a_day_later if verdict(tagged({"fixed_on": {"si": 1773792000}})) == "deficient"

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
		["a", ["job", "dates", "completed"]],
	}
}
