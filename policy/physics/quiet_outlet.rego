# METADATA
# title: Air leaves the outlet slowly enough to be quiet
# description: People who cannot sleep beside a roaring pipe switch the fan off.
# custom:
#   subject: system
#   grade: recommended
#   stage: running
#   remedy: Use wider pipe at the outlet, or a smaller fan if the suction allows it.
#   limits:
#     below: {dimension: velocity, sense: less-than}
package policy.physics.quiet_outlet

import data.policy.airways
import data.policy.systems
import rego.v2

limits := data.profile.physics.quiet_outlet

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "discharge"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

met contains d.id if {
	some d in input.derived.discharges
	d.id in systems.with_fan
	d.id in airways.measured
	d.exit_velocity.si < limits.below.si
}

deficient contains [d.id, ["derived", "discharges", i, "exit_velocity"], "below"] if {
	some i, d in input.derived.discharges
	d.id in systems.with_fan
	d.exit_velocity.si >= limits.below.si
}

undetermined contains [d.id, ["derived", "discharges", i, "exit_velocity"], airways.only_computed] if {
	some i, d in input.derived.discharges
	d.id in systems.with_fan
	not d.id in airways.measured
	d.exit_velocity.si < limits.below.si
}

missing contains gap if some gap in systems.unsaid

missing contains [d.id, ["derived", "discharges", i, "exit_velocity"]] if {
	some i, d in input.derived.discharges
	not is_number(d.exit_velocity.si)
}
