package policy.combustion.draft_test

import data.policy.combustion.draft as rule
import data.policy.lib
import rego.v2

# Least draft by outdoor temperature, table of a public weatherization form; common
# practice for radon jobs: -1.75 Pa at 40 F.
profile := {"combustion": {"draft": {
	"venting": {"any_of": ["natural-draft", "natural-draft-with-damper"]},
	"fuels": {"any_of": ["gas", "propane"]},
}}}

job(appliance, draft) := {
	"house": {"combustion": [object.union({"id": "a", "fuel": "gas", "venting": "natural-draft"}, appliance)]},
	"diagnostics": {"backdraft_tests": [object.union({"id": "t", "appliance": "a"}, draft)]},
	"derived": {"appliances": [{"id": "a/t", "at": "", "appliance": "a", "test": "t", "draft_minimum": {"si": -1.75}}]},
}

verdict(job) := v if v := lib.verdict(rule, "a/t") with input as job with data.profile as profile

test_met_at_exactly_the_minimum if verdict(job({}, {"draft": {"si": -1.75}})) == "met"

test_met_when_stronger if verdict(job({}, {"draft": {"si": -3}})) == "met"

test_deficient_when_weaker if verdict(job({}, {"draft": {"si": -1.7}})) == "deficient"

test_deficient_when_it_blows_down if verdict(job({}, {"draft": {"si": 1}})) == "deficient"

test_not_applicable_to_sealed_combustion if verdict(job({"venting": "direct-vent"}, {})) == "not-applicable"

test_not_applicable_to_oil if verdict(job({"fuel": "oil"}, {})) == "not-applicable"

test_unrecorded if verdict(job({}, {})) == "unrecorded"

test_a_later_test_that_passed_makes_it_good if {
	again := object.union(job({}, {}), {"diagnostics": {"backdraft_tests": [
		{"id": "t", "appliance": "a", "passed": false, "at": {"si": 1}, "draft": {"si": 0}},
		{"id": "u", "appliance": "a", "passed": true, "system_on": true, "at": {"si": 2}},
	]}})
	verdict(again) == "met"
}

test_unrecorded_without_a_list if {
	"unrecorded" == lib.verdict(rule, "diagnostics") with input as {} with data.profile as profile
}

test_no_list_needed_where_nothing_burns if {
	got := rule.subjects with input as {"house": {"combustion": []}}
	count(got) == 0
}

test_says_what_is_missing if {
	got := rule.missing with input as {
		"diagnostics": {"backdraft_tests": [{"id": "t"}]},
		"derived": {"appliances": [{"id": "a/t", "at": "", "test": "t"}]},
	}
		with data.profile as profile
	got == {
		["a/t", ["derived", "appliances", 0, "draft_minimum"]],
		["a/t", ["diagnostics", "backdraft_tests", 0, "draft"]],
	}
}
