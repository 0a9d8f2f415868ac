package policy.special.temporary_replaced_test

import data.policy.lib
import data.policy.special.temporary_replaced as rule
import rego.v2

# Pennsylvania radon mitigation standards (from memory, excerpt): 30 days, longer only
# for renovation or change of use. EPA RMS 1994 section 10 (from memory): the same.
profile := {"special": {"temporary_replaced": {"maximum": {"si": 2592000}, "excuses": {"any_of": ["renovation", "change-of-use"]}}}}

stood(days, system) := {
	"systems": [object.union({"id": "s", "permanence": "temporary"}, system)],
	"derived": {"systems": [{"id": "s", "at": "/systems/0", "temporary_days": days}]},
}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met_at_exactly_thirty_days if verdict(stood({"si": 2592000}, {})) == "met"

test_deficient_a_day_later if verdict(stood({"si": 2678400}, {"replacement_delay_reason": "none"})) == "deficient"

test_not_applicable_with_a_reason if {
	verdict(stood({"si": 2678400}, {"replacement_delay_reason": "renovation"})) == "not-applicable"
}

test_unrecorded_reason if verdict(stood({"si": 2678400}, {})) == "unrecorded"

test_unrecorded_while_it_stands if verdict(stood({"undetermined": ["/systems/0/replaced_on"]}, {})) == "unrecorded"

test_unrecorded_permanence if {
	verdict({"systems": [{"id": "s"}], "derived": {"systems": [{"id": "s", "at": "/systems/0", "temporary_days": {"si": 1}}]}}) == "unrecorded"
}

test_not_applicable_to_a_permanent_system if verdict({"systems": [{"id": "s", "permanence": "permanent"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with data.profile as profile with input as {
		"systems": [{"id": "s"}],
		"derived": {"systems": [{"id": "s", "at": "/systems/0", "temporary_days": {"si": 2678400}}]},
	}
	got == {
		["s", ["systems", 0, "permanence"]],
		["s", ["systems", 0, "temporary_since"]],
		["s", ["systems", 0, "replaced_on"]],
		["s", ["systems", 0, "replacement_delay_reason"]],
	}
}
