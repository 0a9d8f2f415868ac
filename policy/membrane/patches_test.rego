package policy.membrane.patches_test

import data.policy.lib
import data.policy.membrane.patches as rule
import rego.v2

# CC-1000 2018 6.4.4: patches overlap 12 in on each side, or are taped.
profile := {"membrane": {"patches": {"minimum": {"si": 0.3048}}}}

sheet(fields) := {"systems": [{"id": "s", "kind": "sub-membrane", "membrane": fields}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met_at_exactly_twelve_inches if verdict(sheet({"patched": true, "patch_overlap": {"si": 0.3048}})) == "met"

test_met_with_tape if verdict(sheet({"patched": true, "patches_taped": true})) == "met"

test_deficient if {
	verdict(sheet({"patched": true, "patch_overlap": {"si": 0.3}, "patches_taped": false})) == "deficient"
}

test_unrecorded if verdict(sheet({"patched": true, "patch_overlap": {"si": 0.3}})) == "unrecorded"

test_unrecorded_whether_patched if verdict(sheet({"patches_taped": true})) == "unrecorded"

test_not_applicable_when_whole if verdict(sheet({"patched": false})) == "not-applicable"

test_not_applicable_without_a_membrane if verdict({"systems": [{"id": "s", "kind": "sub-slab"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]}
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "membrane", "patched"]],
		["s", ["systems", 0, "membrane", "patch_overlap"]],
		["s", ["systems", 0, "membrane", "patches_taped"]],
	}
}
