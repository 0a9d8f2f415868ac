package policy.testing.same_place_as_before_test

import data.policy.lib
import data.policy.testing.same_place_as_before as rule
import rego.v2

# common practice, from a training text on national standards: the test after the
# work stands where the test before it stood.
profile := {}

pre := {"id": "pre", "phase": "before", "device": "charcoal", "blank": false, "room": "family-room", "level": "basement"}

post := {"id": "post", "phase": "after", "device": "continuous-monitor", "room": "family-room", "level": "Basement"}

job(tests) := {"job": {"contaminant": "radon"}, "measurements": {"tests": tests}}

verdict(job) := v if v := lib.verdict(rule, "pre") with input as job with data.profile as profile

same := {"same_place_as": "pre"}

test_met if verdict(job([pre, object.union(post, same)])) == "met"

test_deficient_in_another_room if {
	verdict(job([pre, object.union(object.union(post, same), {"room": "bedroom"})])) == "deficient"
}

test_deficient_on_another_level if {
	verdict(job([pre, object.union(object.union(post, same), {"level": "first floor"})])) == "deficient"
}

test_unrecorded if verdict(job([pre, post])) == "unrecorded"

test_unrecorded_without_the_room if {
	verdict(job([object.remove(pre, ["room"]), object.union(post, same)])) == "unrecorded"
}

test_nothing_to_judge_without_a_test_after if verdict(job([pre])) == "not-applicable"

test_only_tests_before_the_work_are_subjects if {
	"not-applicable" == lib.verdict(rule, "post") with input as job([pre, post])
}

test_a_blank_stands_for_no_room if {
	verdict(job([object.union(pre, {"blank": true}), post])) == "not-applicable"
}

test_not_applicable_to_chemical_vapor if {
	verdict(object.union(job([pre, post]), {"job": {"contaminant": "chemical-vapor"}})) == "not-applicable"
}

test_unrecorded_without_a_list if "unrecorded" == lib.verdict(rule, "measurements") with input as {}

test_says_what_is_missing if {
	got := rule.missing with input as job([{"id": "pre", "phase": "before", "blank": false}, {"id": "post", "phase": "after"}])
	got == {
		["post", ["measurements", "tests", 1, "blank"]],
		["pre", ["measurements", "tests", 0, "room"]],
		["pre", ["measurements", "tests", 0, "level"]],
		["pre", ["measurements", "tests", 1, "same_place_as"]],
	}
}

test_deficient_when_every_test_after_repeats_another_place if {
	verdict(job([pre, object.union(post, {"same_place_as": "pre-2"})])) == "deficient"
}
