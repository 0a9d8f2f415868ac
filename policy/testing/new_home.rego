# METADATA
# title: A new house was tested soon after people moved in
# description: Nobody has breathed in a new house before; whether its system works is known only by a test.
# custom:
#   subject: tests together
#   grade: required
#   stage: closeout
#   remedy: Start a short-term test now; if the level is too high, improve the system and test again.
#   limits:
#     earliest: {dimension: duration, sense: at-least}
#     latest: {dimension: duration, sense: at-most}
package policy.testing.new_home

import data.policy.radon_tests
import rego.v2

limits := data.profile.testing.new_home
subjects contains ["measurements", ["measurements", "tests"]]

exempt contains [id, reason] if {
	some [id, _] in subjects
	some reason in radon_tests.not_asked
}

exempt contains [id, "the house is not new"] if {
	some [id, _] in subjects
	input.house.new_construction == false
}

exempt contains [radon_tests.all, "there is no test after the work, which another requirement asks for"] if radon_tests.none_after

soon contains d.id if {
	some d in input.derived.tests
	d.id in radon_tests.after_short
	d.days_after_occupancy.si >= limits.earliest.si
	d.days_after_occupancy.si <= limits.latest.si
}

# Tests of which it is known that they are not the one that is asked for.
other contains [d.id, i, "latest"] if {
	some i, d in input.derived.tests
	d.id in radon_tests.after
	d.days_after_occupancy.si > limits.latest.si
}

other contains [d.id, i, "earliest"] if {
	some i, d in input.derived.tests
	d.id in radon_tests.after
	d.days_after_occupancy.si < limits.earliest.si
}

met contains radon_tests.all if {
	input.house.new_construction == true
	count(soon) > 0
}

other contains [t.id, i, "kind"] if {
	some i, t in input.measurements.tests
	t.id in radon_tests.after
	t.kind == "long-term"
}

none_soon if {
	input.house.new_construction == true
	count(radon_tests.open) == count({id | some [id, _, _] in other})
}

deficient contains [radon_tests.all, ["derived", "tests", i, "days_after_occupancy"], limit] if {
	none_soon
	some [_, i, limit] in other
	limit != "kind"
}

deficient contains [radon_tests.all, ["measurements", "tests", i, "kind"]] if {
	none_soon
	some [_, i, "kind"] in other
}

missing contains [radon_tests.all, ["house", "new_construction"]] if not is_boolean(input.house.new_construction)

missing contains [radon_tests.all, path] if some path in radon_tests.unsaid_of_all

missing contains [radon_tests.all, path] if some [_, path] in radon_tests.unsaid_kind

missing contains [radon_tests.all, ["derived", "tests", i, "days_after_occupancy"]] if {
	some i, d in input.derived.tests
	d.id in radon_tests.open
	not is_number(d.days_after_occupancy.si)
}
