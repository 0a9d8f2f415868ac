# METADATA
# title: Radon fell by at least as much as the method usually gives
# description: A small fall says that the method misses where the radon comes in.
# custom:
#   subject: house
#   grade: recommended
#   stage: closeout
#   remedy: Look for areas the system does not reach, for leaks and for openings, before adding another fan.
#   limits:
#     suction: {dimension: percent, sense: at-least}
#     ventilation: {dimension: percent, sense: at-least}
package policy.special.expected_reduction

import data.policy.radon_tests
import data.policy.systems
import rego.v2

limits := data.profile.special.expected_reduction

subjects contains ["measurements", ["derived", "radon", "reduction"]]

ventilated contains s.id if {
	some s in input.systems
	s.kind == "heat-recovery-ventilation"
}

said if {
	is_array(input.systems)
	count(systems.unsaid) == 0
}

exempt contains [id, "no soil suction by fan and no balanced ventilation is there"] if {
	some [id, _] in subjects
	said
	count(systems.with_fan) == 0
	count(ventilated) == 0
}

# The method that counts, with its limit: suction where there is both.
expected contains ["suction", limits.suction.si] if {
	said
	count(systems.with_fan) > 0
}

expected contains ["ventilation", limits.ventilation.si] if {
	said
	count(systems.with_fan) == 0
	count(ventilated) > 0
}

met contains "measurements" if {
	count(radon_tests.unsaid_detection) == 0
	some [_, least] in expected
	input.derived.radon.reduction.si >= least
}

deficient contains ["measurements", ["derived", "radon", "reduction"], method] if {
	some [method, least] in expected
	input.derived.radon.reduction.si < least
}

missing contains [id, path] if {
	some [id, _] in subjects
	some path in radon_tests.unsaid_detection
}

missing contains ["measurements", ["systems"]] if not is_array(input.systems)

missing contains [id, path] if {
	some [id, _] in subjects
	some [_, path] in systems.unsaid
}

missing contains ["measurements", ["derived", "radon", "reduction"]] if not is_number(input.derived.radon.reduction.si)
