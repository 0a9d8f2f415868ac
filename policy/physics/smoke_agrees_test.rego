package policy.physics.smoke_agrees_test

import data.policy.lib
import data.policy.physics.smoke_agrees as rule
import rego.v2

# common practice: beyond the noise of a meter, 0.25 Pa, smoke goes where the
# pressure pushes it.
profile := {"physics": {"smoke_agrees": {"below": {"si": -0.25}, "above": {"si": 0.25}}}}

verdict(job) := v if v := lib.verdict(rule, "t") with input as job with data.profile as profile

record(hole) := {"diagnostics": {"communication_tests": [{"id": "t", "holes": [object.union({"id": "h"}, hole)]}]}}

test_met_under_suction if verdict(record({"smoke": "down", "pressure": {"si": -4}})) == "met"

test_met_within_the_noise if verdict(record({"smoke": "up", "pressure": {"si": -0.25}})) == "met"

test_deficient_smoke_up_under_suction if verdict(record({"smoke": "up", "pressure": {"si": -4}})) == "deficient"

test_deficient_smoke_down_under_pressure if verdict(record({"smoke": "down", "pressure": {"si": 1}})) == "deficient"

test_undetermined_with_one_of_the_two if verdict(record({"smoke": "down"})) == "undetermined"

test_undetermined_without_a_test if {
	"undetermined" == lib.verdict(rule, "diagnostics") with input as {} with data.profile as profile
}

test_no_limits_decide_nothing if {
	unknown := {"physics": {"smoke_agrees": {"below": {}, "above": {}}}}
	"undetermined" == lib.verdict(rule, "t") with input as record({"smoke": "up", "pressure": {"si": -4}}) with data.profile as unknown
}
