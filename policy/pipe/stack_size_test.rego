package policy.pipe.stack_size_test

import data.policy.lib
import data.policy.pipe.stack_size as rule
import rego.v2

# A training text on the older consensus practice (no source: common practice):
# the stack is no smaller than the largest pipe that suction points share.
profile := {"pipe": {"stack_size": {"points": {"si": 2}}}}

sized(stack, manifold) := {
	"systems": [{"id": "s", "kind": "sub-slab", "suction_points": [{"id": "a"}, {"id": "b"}]}],
	"derived": {"systems": [{"id": "s", "at": "/systems/0", "smallest_main_bore": stack, "largest_manifold_bore": manifold}]},
}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met_at_the_same_size if verdict(sized({"si": 0.1016}, {"si": 0.1016})) == "met"

test_deficient if verdict(sized({"si": 0.0762}, {"si": 0.1016})) == "deficient"

test_unrecorded if verdict(sized({"undetermined": ["/systems/0/pipe/0/nominal_size"]}, {"si": 0.1016})) == "unrecorded"

test_unrecorded_without_suction_points if verdict({"systems": [{"id": "s", "kind": "sub-slab"}]}) == "unrecorded"

test_not_applicable_with_one_suction_point if {
	verdict({"systems": [{"id": "s", "kind": "sub-slab", "suction_points": [{"id": "a"}]}]}) == "not-applicable"
}

test_not_applicable_to_ventilation if verdict({"systems": [{"id": "s", "kind": "crawlspace-ventilation"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}], "derived": {"systems": [{"id": "s", "at": "/systems/0"}]}} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "suction_points"]],
		["s", ["derived", "systems", 0, "smallest_main_bore"]],
		["s", ["derived", "systems", 0, "largest_manifold_bore"]],
	}
}
