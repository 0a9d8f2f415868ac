# METADATA
# title: The device hung where people breathe and away from what falsifies it
# description: Drafts, sun, walls and the sump pit change the reading; a device on the floor or in the rafters tests air that nobody breathes.
# custom:
#   subject: test
#   grade: required
#   stage: closeout
#   remedy: Test again with the device in the breathing zone and at the distances called for.
#   limits:
#     lowest: {dimension: length, sense: at-least}
#     highest: {dimension: length, sense: at-most}
#     opening: {dimension: length, sense: at-least}
#     wall: {dimension: length, sense: at-least}
#     object: {dimension: length, sense: at-least}
#     heat: {dimension: length, sense: at-least}
#     sump: {dimension: length, sense: at-least}
package policy.testing.placement

import data.policy.radon_tests
import rego.v2

limits := data.profile.testing.placement
subjects contains ["measurements", ["measurements", "tests"]] if not is_array(input.measurements.tests)

subjects contains [t.id, ["measurements", "tests", i, "height_above_floor"]] if some i, t in input.measurements.tests

exempt contains outcome if some outcome in radon_tests.aside

# True when every way in of soil gas is known and none of them is a sump.
no_sump if {
	is_array(input.entry_routes)
	count(input.entry_routes) == count({r.id |
		some r in input.entry_routes
		is_string(r.kind)
		r.kind != "sump"
	})
}

off_the_sump contains t.id if {
	some t in input.measurements.tests
	t.to_sump.si >= limits.sump.si
}

off_the_sump contains t.id if {
	some t in input.measurements.tests
	no_sump
}

met contains t.id if {
	some t in input.measurements.tests
	t.id in radon_tests.after
	t.id in off_the_sump
	t.height_above_floor.si >= limits.lowest.si
	t.height_above_floor.si <= limits.highest.si
	t.to_exterior_opening.si >= limits.opening.si
	t.to_exterior_wall.si >= limits.wall.si
	t.to_objects.si >= limits.object.si
	t.to_heat.si >= limits.heat.si
}

deficient contains [t.id, ["measurements", "tests", i, "height_above_floor"], "lowest"] if {
	some i, t in input.measurements.tests
	t.id in radon_tests.after
	t.height_above_floor.si < limits.lowest.si
}

deficient contains [t.id, ["measurements", "tests", i, "height_above_floor"], "highest"] if {
	some i, t in input.measurements.tests
	t.id in radon_tests.after
	t.height_above_floor.si > limits.highest.si
}

deficient contains [t.id, ["measurements", "tests", i, "to_exterior_opening"], "opening"] if {
	some i, t in input.measurements.tests
	t.id in radon_tests.after
	t.to_exterior_opening.si < limits.opening.si
}

deficient contains [t.id, ["measurements", "tests", i, "to_exterior_wall"], "wall"] if {
	some i, t in input.measurements.tests
	t.id in radon_tests.after
	t.to_exterior_wall.si < limits.wall.si
}

deficient contains [t.id, ["measurements", "tests", i, "to_objects"], "object"] if {
	some i, t in input.measurements.tests
	t.id in radon_tests.after
	t.to_objects.si < limits.object.si
}

deficient contains [t.id, ["measurements", "tests", i, "to_heat"], "heat"] if {
	some i, t in input.measurements.tests
	t.id in radon_tests.after
	t.to_heat.si < limits.heat.si
}

deficient contains [t.id, ["measurements", "tests", i, "to_sump"], "sump"] if {
	some i, t in input.measurements.tests
	t.id in radon_tests.after
	not no_sump
	t.to_sump.si < limits.sump.si
}

missing contains gap if some gap in radon_tests.unsaid

missing contains [t.id, ["measurements", "tests", i, "height_above_floor"]] if {
	some i, t in input.measurements.tests
	not is_number(t.height_above_floor.si)
}

missing contains [t.id, ["measurements", "tests", i, "to_exterior_opening"]] if {
	some i, t in input.measurements.tests
	not is_number(t.to_exterior_opening.si)
}

missing contains [t.id, ["measurements", "tests", i, "to_exterior_wall"]] if {
	some i, t in input.measurements.tests
	not is_number(t.to_exterior_wall.si)
}

missing contains [t.id, ["measurements", "tests", i, "to_objects"]] if {
	some i, t in input.measurements.tests
	not is_number(t.to_objects.si)
}

missing contains [t.id, ["measurements", "tests", i, "to_heat"]] if {
	some i, t in input.measurements.tests
	not is_number(t.to_heat.si)
}

missing contains [t.id, ["measurements", "tests", i, "to_sump"]] if {
	some i, t in input.measurements.tests
	not no_sump
	not is_number(t.to_sump.si)
}
