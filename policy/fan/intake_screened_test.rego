package policy.fan.intake_screened_test

import data.policy.fan.intake_screened as rule
import data.policy.lib
import rego.v2

# EPA RMS 1994 14.3.7 (from memory): screened or filtered, cleanable, owner told.
profile := {"fan": {"intake_screened": {"kinds": {"any_of": ["pressurization", "crawlspace-ventilation"]}}}}

mounted(fan) := {"systems": [{
	"id": "s", "kind": "pressurization", "powered_by": "fan",
	"fan": fan,
}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met if verdict(mounted({"intake_screened": true, "intake_care_told": true})) == "met"

test_deficient_open if verdict(mounted({"intake_screened": false, "intake_care_told": true})) == "deficient"

test_deficient_untold if verdict(mounted({"intake_screened": true, "intake_care_told": false})) == "deficient"

test_unrecorded if verdict(mounted({"intake_screened": true})) == "unrecorded"

test_not_applicable_to_suction if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan"}]}) == "not-applicable"

test_not_applicable_without_a_fan if verdict({"systems": [{"id": "s", "kind": "crawlspace-ventilation", "powered_by": "passive"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["systems", 0, "fan", "intake_screened"]],
		["s", ["systems", 0, "fan", "intake_care_told"]],
	}
}
