package policy.combustion.depressurization_test

import data.policy.combustion.depressurization as rule
import data.policy.lib
import rego.v2

# Appliance-zone table of the building-performance trade, as reproduced in a public
# weatherization form; common practice for radon jobs. Orphaned water heater: -2 Pa.
appliance := {"id": "a", "kind": "water-heater", "fuel": "gas", "venting": "natural-draft", "commonly_vented": false}

job(appliance, values) := {
	"house": {"combustion": [appliance]},
	"derived": {"appliances": [object.union({"id": "a/t", "at": "", "appliance": "a", "test": "t"}, values)]},
}

verdict(job) := v if v := lib.verdict(rule, "a/t") with input as job

zone(pressure) := {"depressurization": {"si": pressure}, "limit": {"si": -2}}

test_met_at_exactly_the_limit if verdict(job(appliance, zone(-2))) == "met"

test_deficient_below if verdict(job(appliance, zone(-2.1))) == "deficient"

# Worked example of a public specification: -4.5 Pa against -2 Pa fails by 2.5 Pa.
test_deficient_in_the_published_example if verdict(job(appliance, zone(-4.5))) == "deficient"

test_not_applicable_to_what_the_table_does_not_list if {
	fireplace := object.union(appliance, {"kind": "fireplace", "fuel": "wood"})
	verdict(job(fireplace, {"depressurization": {"si": -9}, "limit": {"undetermined": ["/house/combustion/0/kind"]}})) == "not-applicable"
}

test_unrecorded if verdict(job(appliance, {"limit": {"si": -2}})) == "unrecorded"

test_unrecorded_without_the_fuel if verdict(job(object.remove(appliance, ["fuel"]), zone(-1))) == "unrecorded"

test_a_later_test_that_passed_makes_it_good if {
	verdict(object.union(job(appliance, zone(-5)), {"diagnostics": {"backdraft_tests": [
		{"id": "t", "appliance": "a", "passed": false, "at": {"si": 1}},
		{"id": "u", "appliance": "a", "passed": true, "system_on": true, "at": {"si": 2}},
	]}})) == "met"
}

test_unrecorded_without_a_list if "unrecorded" == lib.verdict(rule, "diagnostics") with input as {}

test_no_list_needed_where_nothing_burns if {
	got := rule.subjects with input as {"house": {"combustion": []}}
	count(got) == 0
}

test_says_what_is_missing if {
	got := rule.missing with input as job({"id": "a"}, {})
	got == {
		["a/t", ["derived", "appliances", 0, "depressurization"]],
		["a/t", ["derived", "appliances", 0, "limit"]],
		["a/t", ["house", "combustion", 0, "kind"]],
		["a/t", ["house", "combustion", 0, "fuel"]],
		["a/t", ["house", "combustion", 0, "venting"]],
		["a/t", ["house", "combustion", 0, "commonly_vented"]],
	}
}
