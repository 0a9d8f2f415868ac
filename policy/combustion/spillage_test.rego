package policy.combustion.spillage_test

import data.policy.combustion.spillage as rule
import data.policy.lib
import rego.v2

# Common appendix text on draft tests (from memory, figure unsure): spillage stops
# within five minutes.
profile := {"combustion": {"spillage": {"within": {"si": 300}}}}

job(about) := {"diagnostics": {"backdraft_tests": [object.union({"id": "t", "appliance": "a"}, about)]}}

verdict(job) := v if v := lib.verdict(rule, "t") with input as job with data.profile as profile

test_met_without_spillage if verdict(job({"spillage": "none"})) == "met"

test_met_when_it_stops_in_time if verdict(job({"spillage": "stopped", "spillage_time": {"si": 300}})) == "met"

test_deficient_when_it_takes_longer if verdict(job({"spillage": "stopped", "spillage_time": {"si": 301}})) == "deficient"

test_deficient_when_it_goes_on if verdict(job({"spillage": "continued"})) == "deficient"

test_unrecorded if verdict(job({})) == "unrecorded"

test_unrecorded_without_the_time if verdict(job({"spillage": "stopped"})) == "unrecorded"

test_a_later_test_that_passed_makes_it_good if {
	again := {"diagnostics": {"backdraft_tests": [
		object.union({"id": "t", "appliance": "a", "passed": false, "at": {"si": 1}}, {"spillage": "continued"}),
		{"id": "u", "appliance": "a", "passed": true, "system_on": true, "at": {"si": 2}},
	]}}
	verdict(again) == "met"
}

test_unrecorded_without_a_list if "unrecorded" == lib.verdict(rule, "diagnostics") with input as {}

test_no_list_needed_where_nothing_burns if {
	got := rule.subjects with input as {"house": {"combustion": []}}
	count(got) == 0
}

test_says_what_is_missing if {
	empty := rule.missing with input as job({})
	empty == {["t", ["diagnostics", "backdraft_tests", 0, "spillage"]]}
	stopped := rule.missing with input as job({"spillage": "stopped"})
	stopped == {["t", ["diagnostics", "backdraft_tests", 0, "spillage_time"]]}
}
