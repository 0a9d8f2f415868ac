package policy.labels.airspace_test

import data.policy.labels.airspace as rule
import data.policy.lib
import rego.v2

# SGM-SF 2017 (12/20) 8.4, end: access to a depressurized or pressurized airspace labelled keep closed, with hazards.
profile := {"labels": {"airspace": {"kinds": {"any_of": ["crawlspace-depressurization"]}}}}

carrying(labels) := {"systems": [{"id": "s", "kind": "crawlspace-depressurization", "powered_by": "fan", "labels": labels}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met if verdict(carrying([{"id": "a", "kind": "airspace-access", "says_keep_closed": true}])) == "met"

test_deficient if verdict(carrying([{"id": "a", "kind": "system"}])) == "deficient"

test_deficient_without_any_label if verdict(carrying([])) == "deficient"

test_unrecorded_kind_of_label if verdict(carrying([{"id": "a"}])) == "unrecorded"

test_unrecorded_labels if verdict({"systems": [{"id": "s", "kind": "crawlspace-depressurization", "powered_by": "fan"}]}) == "unrecorded"

test_not_applicable_without_a_fan if {
	verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive", "labels": []}]}) == "not-applicable"
}

test_not_applicable_to_other_systems if {
	verdict({"systems": [{"id": "s", "kind": "drain-tile", "powered_by": "fan", "labels": []}]}) == "not-applicable"
}

test_deficient_wording if verdict(carrying([{"id": "a", "kind": "airspace-access", "says_keep_closed": false}])) == "deficient"

test_unrecorded_wording if verdict(carrying([{"id": "a", "kind": "airspace-access"}])) == "unrecorded"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s", "labels": [{"id": "a"}, {"id": "b", "kind": "airspace-access"}]}]} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["systems", 0, "labels", 0, "kind"]],
		["s", ["systems", 0, "labels", 1, "says_keep_closed"]],
	}
}
