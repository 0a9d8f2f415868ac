# METADATA
# title: Air in the pipe is slow enough for water to fall back
# description: Water that is carried up gathers in the fan and the bends, and one winter the fan drowns or freezes.
# custom:
#   subject: system
#   grade: recommended
#   stage: running
#   remedy: Use wider pipe where the air is fastest, or a smaller fan if the suction allows it.
#   limits:
#     below: {dimension: velocity, sense: less-than}
package policy.physics.condensate_falls

import data.policy.airways
import data.policy.systems
import rego.v2

limits := data.profile.physics.condensate_falls

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["derived", "systems", i, "highest_velocity"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

met contains d.id if {
	some d in input.derived.systems
	d.id in systems.with_fan
	d.id in airways.measured
	d.highest_velocity.si < limits.below.si
}

deficient contains [d.id, ["derived", "systems", i, "highest_velocity"], "below"] if {
	some i, d in input.derived.systems
	d.id in systems.with_fan
	d.highest_velocity.si >= limits.below.si
}

undetermined contains [d.id, ["derived", "systems", i, "highest_velocity"], airways.only_computed] if {
	some i, d in input.derived.systems
	d.id in systems.with_fan
	not d.id in airways.measured
	d.highest_velocity.si < limits.below.si
}

missing contains gap if some gap in systems.unsaid

missing contains [d.id, ["derived", "systems", i, "highest_velocity"]] if {
	some i, d in input.derived.systems
	not is_number(d.highest_velocity.si)
}
