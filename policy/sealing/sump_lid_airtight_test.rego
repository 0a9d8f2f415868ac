package policy.sealing.sump_lid_airtight_test

import data.policy.lib
import data.policy.sealing.sump_lid_airtight as rule
import rego.v2

# EPA RMS 1994 15.7 (from memory): airtight, with silicone or a gasket. CCAH 2020
# 404.1.1: gasket or caulk that is not permanent, in new houses. IRC 2018
# AF103.4.4: gasketed or sealed.
all_houses := {"sealing": {"sump_lid_airtight": {"not_for": {"any_of": []}}}}

new_houses := {"sealing": {"sump_lid_airtight": {"not_for": {"any_of": ["existing"]}}}}

pit(fields) := {"entry_routes": [object.union({"id": "pit", "kind": "sump", "treatment": "covered-and-sealed"}, fields)]}

verdict(job) := v if v := lib.verdict(rule, "pit") with input as job with data.profile as all_houses

in_house(new, job) := v if {
	v := lib.verdict(rule, "pit") with input as object.union(job, {"house": {"new_construction": new}}) with data.profile as new_houses
}

test_met if verdict(pit({"sump": {"lid_airtight": true}})) == "met"

test_deficient if verdict(pit({"sump": {"lid_airtight": false}})) == "deficient"

test_unrecorded if verdict(pit({})) == "unrecorded"

test_not_applicable_without_a_lid if verdict(pit({"treatment": "left-open"})) == "not-applicable"

test_not_applicable_without_a_sump if {
	got := rule.subjects with input as {"entry_routes": [{"id": "crack", "kind": "crack"}]}
	count(got) == 0
}

test_unrecorded_without_entry_routes if {
	"unrecorded" == lib.verdict(rule, "entry_routes") with input as {} with data.profile as all_houses
}

test_a_source_for_new_houses if {
	in_house(true, pit({"sump": {"lid_airtight": false}})) == "deficient"
	in_house(false, pit({"sump": {"lid_airtight": false}})) == "not-applicable"
}

test_age_of_the_house_not_recorded if {
	"unrecorded" == lib.verdict(rule, "pit") with input as pit({"sump": {"lid_airtight": false}}) with data.profile as new_houses
}

test_says_what_is_missing if {
	got := rule.missing with data.profile as new_houses with input as {"entry_routes": [{"id": "pit", "kind": "sump"}, {"id": "blank"}]}
	got == {
		["pit", ["house", "new_construction"]],
		["pit", ["entry_routes", 0, "treatment"]],
		["pit", ["entry_routes", 0, "sump", "lid_airtight"]],
		["blank", ["house", "new_construction"]],
		["blank", ["entry_routes", 1, "kind"]],
	}
}
