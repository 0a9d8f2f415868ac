# METADATA
# title: Pipe narrower than 3 inches serves only systems that move little air
# description: A thin pipe on a leaky slab starves the far corners of suction.
# custom:
#   subject: system
#   grade: required
#   stage: running
#   remedy: Replace the narrow pipe by 3-inch pipe.
#   limits:
#     size: {dimension: length, sense: at-least}
#     maximum: {dimension: flow, sense: at-most}
package policy.physics.two_inch_flow

import data.policy.airways
import data.policy.systems
import rego.v2

limits := data.profile.physics.two_inch_flow

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["derived", "systems", i, "smallest_bore"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

met contains d.id if {
	some d in input.derived.systems
	d.id in systems.with_fan
	d.smallest_bore.si >= limits.size.si
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
	d.smallest_bore.si < limits.size.si
	d.flow_used.si > limits.maximum.si
}

undetermined contains [d.id, ["derived", "systems", i, "flow_used"], airways.only_computed] if {
	some i, d in input.derived.systems
	d.id in systems.with_fan
	d.smallest_bore.si < limits.size.si
	not d.id in airways.measured
	d.flow_used.si <= limits.maximum.si
}

undetermined contains [d.id, ["derived", "systems", i, "flow_used"], "the flow is neither measured nor can be worked out"] if {
	some i, d in input.derived.systems
	d.id in systems.with_fan
	d.smallest_bore.si < limits.size.si
	not is_number(d.flow_used.si)
}

missing contains gap if some gap in systems.unsaid

missing contains [d.id, ["derived", "systems", i, "smallest_bore"]] if {
	some i, d in input.derived.systems
	not is_number(d.smallest_bore.si)
}

missing contains [d.id, ["derived", "systems", i, "flow_used"]] if {
	some i, d in input.derived.systems
	not is_number(d.flow_used.si)
}
