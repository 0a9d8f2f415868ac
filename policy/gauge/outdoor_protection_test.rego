package policy.gauge.outdoor_protection_test

import data.policy.gauge.outdoor_protection as rule
import data.policy.lib
import rego.v2

# common practice
profile := {"gauge": {"outdoor_protection": {
	"outdoors": {"any_of": ["exterior"]},
	"protections": {"any_of": ["heated-box", "antifreeze-and-cover", "outdoor-rated"]},
}}}

hung(gauge) := {"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "gauge": gauge}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met_made_for_outdoors if verdict(hung({"kind": "dial", "place": "exterior", "outdoor_protection": "outdoor-rated"})) == "met"

test_met_in_a_heated_box if verdict(hung({"kind": "u-tube", "place": "exterior", "outdoor_protection": "heated-box"})) == "met"

test_deficient if verdict(hung({"kind": "u-tube", "place": "exterior", "outdoor_protection": "none"})) == "deficient"

test_unrecorded if verdict(hung({"kind": "u-tube", "place": "exterior"})) == "unrecorded"

test_unrecorded_place if verdict(hung({"kind": "u-tube", "outdoor_protection": "outdoor-rated"})) == "unrecorded"

test_not_applicable_indoors if verdict(hung({"kind": "u-tube", "place": "basement"})) == "not-applicable"

test_not_applicable_without_a_gauge if verdict(hung({"kind": "none"})) == "not-applicable"

test_not_applicable_without_a_fan if {
	verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive"}]}) == "not-applicable"
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as hung({}) with data.profile as profile
	got == {
		["s", ["systems", 0, "gauge", "kind"]],
		["s", ["systems", 0, "gauge", "place"]],
		["s", ["systems", 0, "gauge", "outdoor_protection"]],
	}
}
