package policy.sealing.not_the_only_fix_test

import data.policy.lib
import data.policy.sealing.not_the_only_fix as rule
import rego.v2

# RMS-LB 2018 (12/20) 7.1, whose section 7 the publisher calls identical for
# houses: sealing by itself is no permanent fix.
profile := {"sealing": {"not_the_only_fix": {}}}

only(fields) := {"systems": [object.union({"id": "s", "kind": "sealing-only"}, fields)]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met_with_suction if verdict({"systems": [{"id": "s", "kind": "sub-slab"}]}) == "met"

test_met_beside_suction if {
	verdict({"systems": [{"id": "s", "kind": "sealing-only"}, {"id": "t", "kind": "sub-slab"}]}) == "met"
}

test_deficient_alone if verdict(only({"permanence": "permanent"})) == "deficient"

test_not_applicable_when_temporary if verdict(only({"permanence": "temporary"})) == "not-applicable"

test_unrecorded_permanence if verdict(only({})) == "unrecorded"

test_unrecorded_other_system if {
	verdict({"systems": [{"id": "s", "kind": "sealing-only", "permanence": "permanent"}, {"id": "t"}]}) == "unrecorded"
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s", "kind": "sealing-only"}, {"id": "t"}]}
	got == {
		["s", ["systems", 0, "permanence"]],
		["s", ["systems", 1, "kind"]],
		["t", ["systems", 1, "kind"]],
	}
}
