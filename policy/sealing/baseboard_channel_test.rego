package policy.sealing.baseboard_channel_test

import data.policy.lib
import data.policy.sealing.baseboard_channel as rule
import rego.v2

# EPA RMS 1994 14.5.5 (from memory): all seams, as the maker says.
profile := {"sealing": {"baseboard_channel": {}}}

channel(fields) := {"systems": [object.union({"id": "s", "kind": "baseboard-channel"}, fields)]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met if verdict(channel({"baseboard_seams_sealed": true})) == "met"

test_deficient if verdict(channel({"baseboard_seams_sealed": false})) == "deficient"

test_unrecorded if verdict(channel({})) == "unrecorded"

test_not_applicable_to_a_slab_system if verdict({"systems": [{"id": "s", "kind": "sub-slab"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]}
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "baseboard_seams_sealed"]],
	}
}
