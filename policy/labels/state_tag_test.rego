package policy.labels.state_tag_test

import data.policy.labels.state_tag as rule
import data.policy.lib
import rego.v2

# 32 Ill. Adm. Code 422.150(h)(14)(D) (from memory): a numbered tag on systems since
# October 2009, its number kept. Minnesota Rules 4620.7600 subp. 3: a tag on each system.
profile := {"labels": {"state_tag": {"since": {"si": 1254355200}}}}

tagged(labels) := {
	"job": {"purpose": "new-installation"},
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "labels": labels}],
}

seen(installed) := {
	"job": {"purpose": "inspection", "existing_system": {"installed": installed}},
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "labels": []}],
}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met if verdict(tagged([{"id": "a", "kind": "state-tag", "tag_number": "T-1"}])) == "met"

test_deficient if verdict(tagged([{"id": "a", "kind": "system"}])) == "deficient"

test_deficient_from_the_first_day if verdict(seen({"si": 1254355200})) == "deficient"

test_not_applicable_to_an_older_system if verdict(seen({"si": 1254268800})) == "not-applicable"

test_unrecorded_age if verdict(seen({})) == "unrecorded"

test_unrecorded_purpose if {
	verdict(object.remove(tagged([{"id": "a", "kind": "state-tag", "tag_number": "T-1"}]), ["job"])) == "unrecorded"
}

test_unrecorded_number if verdict(tagged([{"id": "a", "kind": "state-tag"}])) == "unrecorded"

test_unrecorded_labels if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan"}]}) == "unrecorded"

test_not_applicable_without_a_fan if {
	verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive", "labels": []}]}) == "not-applicable"
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with data.profile as profile with input as {"systems": [{
		"id": "s",
		"labels": [{"id": "a"}, {"id": "b", "kind": "state-tag"}],
	}]}
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["systems", 0, "labels", 0, "kind"]],
		["s", ["job", "purpose"]],
		["s", ["systems", 0, "labels", 1, "tag_number"]],
	}
}

test_says_that_the_age_is_missing if {
	got := rule.missing with input as seen({}) with data.profile as profile
	got == {["s", ["job", "existing_system", "installed"]]}
}
