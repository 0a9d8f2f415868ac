package policy.electrical.cord_length_test

import data.policy.electrical.cord_length as rule
import data.policy.lib
import rego.v2

# EPA RMS 1994 14.6.3 (from memory; Illinois and an inspection list agree): 6 ft.
profile := {"electrical": {"cord_length": {"maximum": {"si": 1.8288}}}}

wired(fields) := {"systems": [object.union({"id": "s", "powered_by": "fan"}, fields)]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

cord(length) := wired({"electrical": {"connection": "plug-in", "cord_length": {"si": length}}})

# Worked case 25: a cord of 6.0 ft.
test_met_at_exactly_six_feet if verdict(cord(1.8288)) == "met"

test_deficient_longer if verdict(cord(1.83)) == "deficient"

test_unrecorded_length if verdict(wired({"electrical": {"connection": "plug-in"}})) == "unrecorded"

test_not_applicable_to_fixed_wiring if verdict(wired({"electrical": {"connection": "hard-wired"}})) == "not-applicable"

test_unrecorded if verdict(wired({})) == "unrecorded"

test_not_applicable_without_a_fan if verdict({"systems": [{"id": "s", "powered_by": "passive"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	got == {
		["s", ["systems", 0, "powered_by"]],
		["s", ["systems", 0, "electrical", "connection"]],
		["s", ["systems", 0, "electrical", "cord_length"]],
	}
}
