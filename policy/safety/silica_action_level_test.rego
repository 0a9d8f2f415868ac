package policy.safety.silica_action_level_test

import data.policy.lib
import data.policy.safety.silica_action_level as rule
import rego.v2

# 29 CFR 1926.1153(b): the action level is 25 ug/m3 over 8 hours.
profile := {"safety": {"silica_action_level": {"level": {"si": 25}}}}

drilled(fields) := {"safety": object.union({"concrete_drilled": true}, fields)}

verdict(job) := v if v := lib.verdict(rule, "safety") with input as job with data.profile as profile

test_met_below if verdict(drilled({"silica_level_ugm3": 24.9})) == "met"

test_deficient_at_exactly_twenty_five if verdict(drilled({"silica_level_ugm3": 25})) == "deficient"

test_unrecorded if verdict(drilled({})) == "unrecorded"

test_unrecorded_drilling if verdict({"safety": {"silica_level_ugm3": 24}}) == "unrecorded"

test_not_applicable_without_drilling if verdict(drilled({"concrete_drilled": false})) == "not-applicable"

test_says_what_is_missing if {
	got := rule.missing with input as {}
	got == {["safety", ["safety", "concrete_drilled"]], ["safety", ["safety", "silica_level_ugm3"]]}
}
