package policy.exhaust.height_above_grade_test

import data.policy.exhaust.height_above_grade as rule
import data.policy.lib
import rego.v2

# Limit: EPA RMS 1994 14.2.8(2), 10 ft or more.
profile := {"exhaust": {"height_above_grade": {"minimum": {"si": 3.048}}}}

outlet(height) := {
	"systems": [{"id": "s", "powered_by": "fan"}],
	"derived": {"discharges": [{"id": "s", "at": "/systems/0/discharge", "height_above_grade": height}]},
}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met_at_exactly_ten_feet if verdict(outlet({"si": 3.048})) == "met"

test_deficient_at_three_metres if verdict(outlet({"si": 3})) == "deficient"

test_unrecorded if verdict(outlet({"undetermined": ["/systems/0/discharge/height_above_grade"]})) == "unrecorded"

test_not_applicable_when_only_roughed_in if {
	verdict({
		"systems": [{"id": "s", "powered_by": "rough-in"}],
		"derived": {"discharges": [{"id": "s", "at": "/systems/0/discharge"}]},
	}) == "not-applicable"
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}
