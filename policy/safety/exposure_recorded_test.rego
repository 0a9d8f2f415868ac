package policy.safety.exposure_recorded_test

import data.policy.lib
import data.policy.safety.exposure_recorded as rule
import rego.v2

# SGM-SF 2017 (12/20) 11.3: for each installer at each site. EPA RMS 1994 section 12
# (from memory): for workers.
profile := {"safety": {"exposure_recorded": {"not_for": {"any_of": ["reviewer"]}}}}

worker(fields) := {"job": {"crew": [object.union({"id": "w", "role": "installer"}, fields)]}}

verdict(job) := v if v := lib.verdict(rule, "w") with input as job with data.profile as profile

test_met if verdict(worker({"exposure_recorded": true})) == "met"

test_deficient if verdict(worker({"exposure_recorded": false})) == "deficient"

test_unrecorded if verdict(worker({})) == "unrecorded"

test_unrecorded_role if verdict({"job": {"crew": [{"id": "w", "exposure_recorded": true}]}}) == "unrecorded"

test_not_applicable_to_a_reviewer if verdict(worker({"role": "reviewer"})) == "not-applicable"

test_unrecorded_without_a_crew if {
	"unrecorded" == lib.verdict(rule, "crew") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"job": {"crew": [{"id": "w"}]}}
	got == {
		["w", ["job", "crew", 0, "role"]],
		["w", ["job", "crew", 0, "exposure_recorded"]],
	}
}
