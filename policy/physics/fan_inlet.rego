# METADATA
# title: A high-flow fan stands on pipe as wide as its inlet
# description: A strong fan on a narrow pipe is loud, wears out and moves no more air than a small one.
# custom:
#   subject: fan
#   grade: recommended
#   stage: roughed-in
#   remedy: Use pipe as wide as the inlet of the fan, or a fan made for less air.
#   limits:
#     classes: {dimension: choice, sense: applies-to}
package policy.physics.fan_inlet

import data.policy.systems
import rego.v2

limits := data.profile.physics.fan_inlet

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["derived", "systems", i, "smallest_main_bore"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

exempt contains [s.id, "the fan is not made for much air"] if {
	some s in input.systems
	is_string(s.fan.class)
	is_array(limits.classes.any_of)
	not s.fan.class in limits.classes.any_of
}

judged contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	s.fan.class in limits.classes.any_of
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	some d in input.derived.systems
	d.id == s.id
	d.smallest_main_bore.si >= s.fan.inlet_size.si
}

deficient contains [d.id, ["derived", "systems", k, "smallest_main_bore"]] if {
	some s in input.systems
	s.id in judged
	some k, d in input.derived.systems
	d.id == s.id
	d.smallest_main_bore.si < s.fan.inlet_size.si
}

missing contains gap if some gap in systems.unsaid

missing contains [s.id, ["systems", i, "fan", "class"]] if {
	some i, s in input.systems
	not is_string(s.fan.class)
}

missing contains [s.id, ["systems", i, "fan", "inlet_size"]] if {
	some i, s in input.systems
	not is_number(s.fan.inlet_size.si)
}

missing contains [d.id, ["derived", "systems", i, "smallest_main_bore"]] if {
	some i, d in input.derived.systems
	not is_number(d.smallest_main_bore.si)
}
