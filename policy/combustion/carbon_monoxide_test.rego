package policy.combustion.carbon_monoxide_test

import data.policy.combustion.carbon_monoxide as rule
import data.policy.lib
import rego.v2

# Common appendix text on draft tests (from memory, figure unsure): the test stops at
# 35 ppm in the room.
profile := {"combustion": {"carbon_monoxide": {"stop_at": {"si": 35}}}}

job(about) := {"diagnostics": {"backdraft_tests": [object.union({"id": "t", "appliance": "a"}, about)]}}

verdict(job) := v if v := lib.verdict(rule, "t") with input as job with data.profile as profile

test_met if verdict(job({"carbon_monoxide_ppm": 0})) == "met"

test_met_just_below if verdict(job({"carbon_monoxide_ppm": 34.9})) == "met"

test_deficient_at_the_level if verdict(job({"carbon_monoxide_ppm": 35})) == "deficient"

test_unrecorded if verdict(job({})) == "unrecorded"

test_a_later_test_that_passed_makes_it_good if {
	again := {"diagnostics": {"backdraft_tests": [
		object.union({"id": "t", "appliance": "a", "passed": false, "at": {"si": 1}}, {"carbon_monoxide_ppm": 60}),
		{"id": "u", "appliance": "a", "passed": true, "system_on": true, "at": {"si": 2}},
	]}}
	verdict(again) == "met"
}

test_unrecorded_without_a_list if "unrecorded" == lib.verdict(rule, "diagnostics") with input as {}

test_no_list_needed_where_nothing_burns if {
	got := rule.subjects with input as {"house": {"combustion": []}}
	count(got) == 0
}
