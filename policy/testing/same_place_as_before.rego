# METADATA
# title: The places tested before the work were tested again
# description: Two readings in two rooms cannot be compared; only at the same place does the owner see what the system changed.
# custom:
#   subject: test before the work
#   grade: recommended
#   stage: closeout
#   remedy: Test at the place of the earlier test, besides any new place.
package policy.testing.same_place_as_before

import data.policy.radon_tests
import rego.v2

subjects contains ["measurements", ["measurements", "tests"]] if not is_array(input.measurements.tests)

subjects contains [t.id, ["measurements", "tests", i]] if some i, t in input.measurements.tests

exempt contains [id, reason] if {
	some [id, _] in subjects
	some reason in radon_tests.not_asked
}

exempt contains [t.id, "the test was not made before the work"] if {
	some t in input.measurements.tests
	t.phase in {"after", "later"}
}

exempt contains [t.id, "a field blank stands for no room"] if {
	some t in input.measurements.tests
	t.blank == true
	is_string(t.device)
	t.device != "continuous-monitor"
}

exempt contains [t.id, "there is no test after the work, which another requirement asks for"] if {
	some t in input.measurements.tests
	radon_tests.none_after
}

before contains t.id if {
	some t in input.measurements.tests
	t.phase == "before"
	t.id in radon_tests.rooms
}

met contains b.id if {
	some b in input.measurements.tests
	b.id in before
	some t in input.measurements.tests
	t.id in radon_tests.after
	t.same_place_as == b.id
	t.room == b.room
	lower(t.level) == lower(b.level)
}

# Said to be the same place, yet in another room or on another level.
elsewhere contains [i, b.id] if {
	some b in input.measurements.tests
	b.id in before
	some i, t in input.measurements.tests
	t.id in radon_tests.after
	t.same_place_as == b.id
	t.room != b.room
}

elsewhere contains [i, b.id] if {
	some b in input.measurements.tests
	b.id in before
	some i, t in input.measurements.tests
	t.id in radon_tests.after
	t.same_place_as == b.id
	lower(t.level) != lower(b.level)
}

deficient contains [id, ["measurements", "tests", i, "same_place_as"]] if {
	some [i, id] in elsewhere
	not id in met
}

# Every test after the work says which place it repeats, and none says this one.
deficient contains [b.id, ["measurements", "tests", i, "room"]] if {
	some i, b in input.measurements.tests
	b.id in before
	count(radon_tests.open) == count({t.id |
		some t in input.measurements.tests
		t.id in radon_tests.after
		is_string(t.same_place_as)
		t.same_place_as != b.id
	})
}

missing contains gap if some gap in radon_tests.unsaid

missing contains [b.id, ["measurements", "tests", i, "room"]] if {
	some i, b in input.measurements.tests
	b.id in before
	not is_string(b.room)
}

missing contains [b.id, ["measurements", "tests", i, "level"]] if {
	some i, b in input.measurements.tests
	b.id in before
	not is_string(b.level)
}

missing contains [b.id, ["measurements", "tests", i, "same_place_as"]] if {
	some b in input.measurements.tests
	b.id in before
	some i, t in input.measurements.tests
	t.id in radon_tests.open
	not is_string(t.same_place_as)
}
