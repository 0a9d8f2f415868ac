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
