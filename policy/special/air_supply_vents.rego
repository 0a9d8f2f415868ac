# METADATA
# title: Vents that supply air are open, guarded, and away from exhausts and bins
# description: A supply that is blocked stops the method; one beside a flue or bins brings worse air in than it drives out.
# custom:
#   subject: system
#   grade: required
#   stage: running
#   remedy: Clear and guard the vents, or move them away from exhausts and bins.
#   caution: Wherever fuel burns, test for backdrafting after a change of air flows.
#   limits:
#     kinds: {dimension: choice, sense: one-of}
package policy.special.air_supply_vents

import rego.v2

limits := data.profile.special.air_supply_vents

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "ventilation", "vents_unblocked"]] if some i, s in input.systems

exempt contains [s.id, "its source asks this of other kinds of system"] if {
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
	s.ventilation.vents_unblocked == true
}

deficient contains [s.id, ["systems", i, "ventilation", "vents_unblocked"]] if {
	some i, s in input.systems
	s.id in judged
	s.ventilation.vents_unblocked == false
}

missing contains [s.id, ["systems", i, "kind"]] if {
	some i, s in input.systems
	not is_string(s.kind)
}

missing contains [s.id, ["systems", i, "ventilation", "vents_unblocked"]] if {
	some i, s in input.systems
	not is_boolean(s.ventilation.vents_unblocked)
}
