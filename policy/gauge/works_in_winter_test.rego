package policy.gauge.works_in_winter_test

import data.policy.gauge.works_in_winter as rule
import data.policy.lib
import rego.v2

# common practice
profile := {"gauge": {"works_in_winter": {"cold": {"any_of": ["exterior", "attic"]}}}}

hung(gauge) := {
	"house": {"winter_design_temperature": {"si": 258.15}},
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "gauge": gauge}],
}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met_at_exactly_the_design_temperature if {
	verdict(hung({"kind": "dial", "place": "exterior", "rated_low_temperature": {"si": 258.15}})) == "met"
}

test_deficient_in_an_attic if {
	verdict(hung({"kind": "u-tube", "place": "attic", "rated_low_temperature": {"si": 273.15}})) == "deficient"
}

test_unrecorded if verdict(hung({"kind": "dial", "place": "exterior"})) == "unrecorded"

test_unrecorded_place if verdict(hung({"kind": "dial", "rated_low_temperature": {"si": 240}})) == "unrecorded"

test_unrecorded_without_a_design_temperature if {
	verdict({"systems": [{
		"id": "s", "kind": "sub-slab", "powered_by": "fan",
		"gauge": {"kind": "dial", "place": "exterior", "rated_low_temperature": {"si": 240}},
	}]}) == "unrecorded"
}

test_not_applicable_in_a_room if verdict(hung({"kind": "u-tube", "place": "utility-room"})) == "not-applicable"

test_not_applicable_without_a_gauge if verdict(hung({"kind": "none"})) == "not-applicable"

test_not_applicable_without_a_fan if {
	verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive"}]}) == "not-applicable"
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan"}]} with data.profile as profile
	got == {
		["s", ["systems", 0, "gauge", "kind"]],
		["s", ["systems", 0, "gauge", "place"]],
		["s", ["systems", 0, "gauge", "rated_low_temperature"]],
		["s", ["house", "winter_design_temperature"]],
	}
}
