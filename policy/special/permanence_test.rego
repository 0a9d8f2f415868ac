package policy.special.permanence_test

import data.policy.lib
import data.policy.special.permanence as rule
import rego.v2

# EPA RMS 1994 13.1 (from memory): permanent, unless declared temporary.
job(purpose, system) := {"job": {"purpose": purpose}, "systems": [object.union({"id": "s"}, system)]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job

test_met_permanent if verdict(job("new-installation", {"permanence": "permanent"})) == "met"

test_met_declared_temporary if {
	verdict(job("temporary-system", {"permanence": "temporary", "temporary_since": {"si": 1773705600}})) == "met"
}

test_deficient_when_the_job_says_otherwise if verdict(job("temporary-system", {"permanence": "permanent"})) == "deficient"

test_unrecorded if verdict(job("new-installation", {})) == "unrecorded"

test_unrecorded_purpose if verdict({"systems": [{"id": "s", "permanence": "permanent"}]}) == "unrecorded"

test_unrecorded_start if verdict(job("temporary-system", {"permanence": "temporary"})) == "unrecorded"

test_unrecorded_without_systems if "unrecorded" == lib.verdict(rule, "systems") with input as {}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [
		{"id": "s"},
		{"id": "t", "permanence": "permanent"},
		{"id": "u", "permanence": "temporary"},
	]}
	got == {
		["s", ["systems", 0, "permanence"]],
		["t", ["job", "purpose"]],
		["u", ["systems", 2, "temporary_since"]],
	}
}
