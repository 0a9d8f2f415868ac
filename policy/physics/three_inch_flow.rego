# METADATA
# title: A main pipe narrower than 4 inches carries no more air than it should
# description: Too much air in a narrow pipe uses up the fan's strength before it reaches the ground under the house.
# custom:
#   subject: system
#   grade: required
#   stage: running
#   remedy: Replace the main pipe by 4-inch pipe, or lay a second pipe beside it.
#   limits:
#     size: {dimension: length, sense: at-least}
#     maximum: {dimension: flow, sense: at-most}
package policy.physics.three_inch_flow

import data.policy.airways
import data.policy.systems
import rego.v2

limits := data.profile.physics.three_inch_flow

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["derived", "systems", i, "smallest_main_bore"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

met contains d.id if {
	some d in input.derived.systems
	d.id in systems.with_fan
	d.smallest_main_bore.si >= limits.size.si
}

met contains d.id if {
	some d in input.derived.systems
	d.id in systems.with_fan
	d.id in airways.measured
	d.flow_used.si <= limits.maximum.si
}

deficient contains [d.id, ["derived", "systems", i, "flow_used"], "maximum"] if {
	some i, d in input.derived.systems
	d.id in systems.with_fan
	d.smallest_main_bore.si < limits.size.si
	d.flow_used.si > limits.maximum.si
}

undetermined contains [d.id, ["derived", "systems", i, "flow_used"], airways.only_computed] if {
	some i, d in input.derived.systems
	d.id in systems.with_fan
	d.smallest_main_bore.si < limits.size.si
	not d.id in airways.measured
	d.flow_used.si <= limits.maximum.si
}

undetermined contains [d.id, ["derived", "systems", i, "flow_used"], "the flow is neither measured nor can be worked out"] if {
	some i, d in input.derived.systems
	d.id in systems.with_fan
	d.smallest_main_bore.si < limits.size.si
	not is_number(d.flow_used.si)
}

missing contains gap if some gap in systems.unsaid

missing contains [d.id, ["derived", "systems", i, "smallest_main_bore"]] if {
	some i, d in input.derived.systems
	not is_number(d.smallest_main_bore.si)
}

missing contains [d.id, ["derived", "systems", i, "flow_used"]] if {
	some i, d in input.derived.systems
	not is_number(d.flow_used.si)
}
