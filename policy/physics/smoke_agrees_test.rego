package policy.physics.smoke_agrees_test

import data.policy.lib
import data.policy.physics.smoke_agrees as rule
import rego.v2

# common practice: beyond the noise of a meter, 0.25 Pa, smoke goes where the
# pressure pushes it.
profile := {"physics": {"smoke_agrees": {"below": {"si": -0.25}, "above": {"si": 0.25}}}}

verdict(job) := v if v := lib.verdict(rule, "t") with input as job with data.profile as profile

record(hole) := holes([hole])

holes(list) := {"diagnostics": {"communication_tests": [{
	"id": "t",
	"holes": [object.union({"id": format_int(i, 10)}, hole) | some i, hole in list],
}]}}

both := {"smoke": "down", "pressure": {"si": -4}}

test_met_under_suction if verdict(record({"smoke": "down", "pressure": {"si": -4}})) == "met"

test_met_within_the_noise if verdict(record({"smoke": "up", "pressure": {"si": -0.25}})) == "met"

test_deficient_smoke_up_under_suction if verdict(record({"smoke": "up", "pressure": {"si": -4}})) == "deficient"

test_deficient_smoke_down_under_pressure if verdict(record({"smoke": "down", "pressure": {"si": 1}})) == "deficient"

# Neither need be tried where the other was; the comparison just cannot be made.
test_undetermined_with_one_of_the_two if {
	verdict(record({"smoke": "down"})) == "undetermined"
	verdict(record({"pressure": {"si": -4}})) == "undetermined"
	verdict(holes([both, {"smoke": "down"}])) == "undetermined"
}

test_unrecorded_with_neither if {
	verdict(record({})) == "unrecorded"
	verdict(holes([both, {"smoke": "down"}, {}])) == "unrecorded"
}

test_unrecorded_without_holes if {
	verdict(holes([])) == "unrecorded"
	verdict({"diagnostics": {"communication_tests": [{"id": "t"}]}}) == "unrecorded"
}

test_unrecorded_without_a_list if {
	"unrecorded" == lib.verdict(rule, "diagnostics") with input as {} with data.profile as profile
}

test_one_that_disagrees_is_enough if verdict(holes([{}, {"smoke": "up", "pressure": {"si": -4}}])) == "deficient"

test_says_what_is_missing if {
	got := rule.missing with input as holes([both, {}])
	got == {
		["t", ["diagnostics", "communication_tests", 0, "holes", 1, "smoke"]],
		["t", ["diagnostics", "communication_tests", 0, "holes", 1, "pressure"]],
	}
}

# The judge then says that the limits are unknown.
test_no_limits_decide_nothing if {
	unknown := {"physics": {"smoke_agrees": {"below": {}, "above": {}}}}
	"unrecorded" == lib.verdict(rule, "t") with input as record({"smoke": "up", "pressure": {"si": -4}}) with data.profile as unknown
}
