package policy.survey.covers_test

import data.policy.lib
import data.policy.survey.covers as rule
import rego.v2

# SGM-SF 2017 (12/20) 5.4.3: slab holes, crawlspaces, adjoining slabs, HVAC, fire-rated
# parts, safety.
profile := {"survey": {"covers": {"items": {"any_of": ["slab-holes", "hvac"]}}}}

verdict(shown, item) := v if {
	v := lib.verdict(rule, item) with input as {"diagnostics": {"survey_covers": shown}} with data.profile as profile
}

test_met if verdict(["slab-holes", "hvac"], "hvac") == "met"

test_deficient if verdict(["slab-holes"], "hvac") == "deficient"

test_deficient_with_an_empty_list if verdict([], "slab-holes") == "deficient"

test_unrecorded if {
	"unrecorded" == lib.verdict(rule, "diagnostics") with input as {} with data.profile as profile
}

listed := {"survey": {"covers": {"items": {"any_of": ["slab-holes", "crawlspaces"]}}}}

in_house(areas, shown, item) := v if {
	v := lib.verdict(rule, item) with data.profile as listed with input as {
		"house": {"foundations": [object.union({"id": format_int(i, 10)}, area) | some i, area in areas]},
		"diagnostics": {"survey_covers": shown},
	}
}

basement := {"kind": "basement"}

crawlspace := {"kind": "crawlspace"}

test_not_applicable_without_a_crawlspace if in_house([basement], ["slab-holes"], "crawlspaces") == "not-applicable"

test_not_applicable_without_a_slab if in_house([crawlspace, {"kind": "earth-floor"}], ["crawlspaces"], "slab-holes") == "not-applicable"

test_met_where_it_was_looked_for_all_the_same if in_house([basement], ["crawlspaces"], "crawlspaces") == "met"

test_deficient_with_one_of_each if {
	in_house([basement, crawlspace], [], "crawlspaces") == "deficient"
	in_house([basement, crawlspace], [], "slab-holes") == "deficient"
}

test_an_area_of_unknown_kind_exempts_nothing if {
	in_house([basement, {}], [], "crawlspaces") == "deficient"
	in_house([crawlspace, {}], [], "slab-holes") == "deficient"
	in_house([], [], "crawlspaces") == "deficient"
}

test_no_list_exempts_nothing if {
	got := rule.exempt with data.profile as listed with input as {"house": {"foundations": [{"id": "a", "kind": "basement"}]}}
	count(got) == 0
}
