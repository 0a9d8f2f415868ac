# METADATA
# title: A pipe that gets its fan later has a live outlet close to the place of the fan
# description: Where power is far or behind a switch, the fan ends on a long cord or goes off with the light.
# custom:
#   subject: system
#   grade: required
#   stage: running
#   remedy: Have an outlet that no switch cuts put near the place of the fan.
#   caution: Wiring is work for licensed people; cut the power and prove it dead first.
#   limits:
#     maximum: {dimension: length, sense: at-most}
package policy.electrical.live_outlet

import data.policy.systems
import rego.v2

limits := data.profile.electrical.live_outlet

subjects contains ["systems", ["systems"]] if not is_array(input.systems)
subjects contains [s.id, ["systems", i, "electrical", "outlet_distance"]] if some i, s in input.systems
exempt contains outcome if some outcome in systems.without_outlet

exempt contains [s.id, "the job does not put a fan on a pipe that was roughed in"] if {
	some s in input.systems
	is_string(input.job.purpose)
	input.job.purpose != "activation-of-rough-in"
}

judged contains s.id if {
	some s in input.systems
	s.kind in systems.soil_kinds
	input.job.purpose == "activation-of-rough-in"
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	s.electrical.outlet_distance.si <= limits.maximum.si
	s.electrical.outlet_always_live == true
}

deficient contains [s.id, ["systems", i, "electrical", "outlet_distance"], "maximum"] if {
	some i, s in input.systems
	s.id in judged
	s.electrical.outlet_distance.si > limits.maximum.si
}

deficient contains [s.id, ["systems", i, "electrical", "outlet_always_live"]] if {
	some i, s in input.systems
	s.id in judged
	s.electrical.outlet_always_live == false
}

missing contains [s.id, ["job", "purpose"]] if {
	some s in input.systems
	not is_string(input.job.purpose)
}

missing contains [s.id, ["systems", i, "kind"]] if {
	some i, s in input.systems
	not is_string(s.kind)
}

missing contains [s.id, ["systems", i, "electrical", "outlet_distance"]] if {
	some i, s in input.systems
	not is_number(s.electrical.outlet_distance.si)
}

missing contains [s.id, ["systems", i, "electrical", "outlet_always_live"]] if {
	some i, s in input.systems
	not is_boolean(s.electrical.outlet_always_live)
}
