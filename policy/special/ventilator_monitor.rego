# METADATA
# title: Where ventilation is the method, radon is watched all the time
# description: A ventilator thins radon out only as long as it runs balanced, and no gauge shows that.
# custom:
#   subject: ventilator
#   grade: recommended
#   stage: closeout
#   remedy: Leave a continuous radon monitor in the house and show how to read it.
#   limits:
#     kinds: {dimension: choice, sense: one-of}
package policy.special.ventilator_monitor

import rego.v2

limits := data.profile.special.ventilator_monitor

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "ventilation", "continuous_monitor"]] if some i, s in input.systems

exempt contains [s.id, "it is no heat-recovery ventilator"] if {
	some s in input.systems
	is_string(s.kind)
	not s.kind in limits.kinds.any_of
}

judged contains s.id if {
	some s in input.systems
	s.kind in limits.kinds.any_of
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	s.ventilation.continuous_monitor == true
}

deficient contains [s.id, ["systems", i, "ventilation", "continuous_monitor"]] if {
	some i, s in input.systems
	s.id in judged
	s.ventilation.continuous_monitor == false
}

missing contains [s.id, ["systems", i, "kind"]] if {
	some i, s in input.systems
	not is_string(s.kind)
}

missing contains [s.id, ["systems", i, "ventilation", "continuous_monitor"]] if {
	some i, s in input.systems
	not is_boolean(s.ventilation.continuous_monitor)
}
