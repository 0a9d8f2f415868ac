package policy.electrical.cord_not_in_wall_test

import data.policy.electrical.cord_not_in_wall as rule
import data.policy.lib
import rego.v2

# EPA RMS 1994 14.6.4 and National Electrical Code 2017 400.12 (both from memory):
# a cord does not pass through a wall nor hide in it.
wired(fields) := {"systems": [object.union({"id": "s", "powered_by": "fan"}, fields)]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job

cord(hidden) := wired({"electrical": {"connection": "plug-in", "cord_length": {"si": 1.8288}, "cord_through_wall": hidden}})

test_met if verdict(cord(false)) == "met"

# Worked case 25: the cord of 6.0 ft goes through drywall.
test_deficient_through_drywall if verdict(cord(true)) == "deficient"

test_unrecorded_in_the_open if verdict(wired({"electrical": {"connection": "plug-in"}})) == "unrecorded"

test_not_applicable_to_fixed_wiring if verdict(wired({"electrical": {"connection": "hard-wired"}})) == "not-applicable"

test_unrecorded if verdict(wired({})) == "unrecorded"

test_not_applicable_without_a_fan if verdict({"systems": [{"id": "s", "powered_by": "passive"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {}
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]}
	got == {
		["s", ["systems", 0, "powered_by"]],
		["s", ["systems", 0, "electrical", "connection"]],
		["s", ["systems", 0, "electrical", "cord_through_wall"]],
	}
}
