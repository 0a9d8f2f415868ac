package policy.combustion.backdraft_tested_test

import data.policy.combustion.backdraft_tested as rule
import data.policy.lib
import rego.v2

# EPA RMS 1994 17.3 and 13.2 (from memory): houses with natural-draft appliances are
# tested right after the system is switched on.
profile := {"combustion": {"backdraft_tested": {"venting": {"any_of": ["natural-draft", "natural-draft-with-damper"]}}}}

job(venting, tests) := {
	"house": {"combustion": [{"id": "a", "venting": venting}]},
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan"}],
	"diagnostics": {"backdraft_tests": tests},
}

verdict(job) := v if v := lib.verdict(rule, "a") with input as job with data.profile as profile

test_met if verdict(job("natural-draft", [{"id": "t", "appliance": "a", "system_on": true}])) == "met"

test_deficient_without_a_test if verdict(job("natural-draft", [])) == "deficient"

test_deficient_with_the_system_off if {
	verdict(job("natural-draft-with-damper", [{"id": "t", "appliance": "a", "system_on": false}])) == "deficient"
}

test_deficient_when_only_another_appliance_was_tested if {
	verdict(job("natural-draft", [{"id": "t", "appliance": "b", "system_on": true}])) == "deficient"
}

test_not_applicable_to_sealed_combustion if verdict(job("direct-vent", [])) == "not-applicable"

test_not_applicable_without_a_fan if {
	verdict(object.union(job("natural-draft", []), {"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive"}]})) == "not-applicable"
}

test_a_fan_that_draws_nothing_from_the_ground_does_not_count if {
	verdict(object.union(job("natural-draft", []), {"systems": [{"id": "s", "kind": "pressurization", "powered_by": "fan"}]})) == "not-applicable"
}

test_unrecorded if verdict(object.remove(job("natural-draft", []), ["diagnostics"])) == "unrecorded"

test_unrecorded_when_a_test_does_not_say_which_appliance if verdict(job("natural-draft", [{"id": "t", "system_on": true}])) == "unrecorded"

test_unrecorded_when_a_test_does_not_say_if_the_system_ran if {
	verdict(job("natural-draft", [{"id": "t", "appliance": "a"}])) == "unrecorded"
}

test_unrecorded_without_a_list_of_appliances if {
	"unrecorded" == lib.verdict(rule, "house") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	vague := rule.missing with input as {
		"house": {"combustion": [{"id": "a"}]},
		"systems": [{"id": "s"}],
		"diagnostics": {"backdraft_tests": [{"id": "t"}]},
	}
		with data.profile as profile
	vague == {
		["a", ["house", "combustion", 0, "venting"]],
		["a", ["systems", 0, "kind"]],
		["a", ["systems", 0, "powered_by"]],
		["a", ["diagnostics", "backdraft_tests", 0, "appliance"]],
		["a", ["diagnostics", "backdraft_tests", 0, "system_on"]],
	}
	empty := rule.missing with input as {"house": {"combustion": [{"id": "a", "venting": "natural-draft"}]}} with data.profile as profile
	empty == {
		["a", ["systems"]],
		["a", ["diagnostics", "backdraft_tests"]],
	}
}
