# METADATA
# title: Sealing is not the only lasting fix
# description: Sealed joints open again and soil gas finds the rest; without suction below, radon comes back.
# custom:
#   subject: system
#   grade: required
#   stage: planned
#   remedy: Add a system that draws soil gas from below, or declare the sealing temporary.
package policy.sealing.not_the_only_fix

import rego.v2

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "kind"]] if some i, s in input.systems

other contains s.id if {
	some s in input.systems
	is_string(s.kind)
	s.kind != "sealing-only"
}

sealing contains s.id if {
	some s in input.systems
	s.kind == "sealing-only"
}

met contains id if some id in other

met contains id if {
	some id in sealing
	count(other) > 0
}

lasting contains s.id if {
	some s in input.systems
	s.id in sealing
	count(sealing) == count(input.systems)
	s.permanence == "permanent"
}

exempt contains [s.id, "it is declared temporary"] if {
	some s in input.systems
	s.id in sealing
	count(sealing) == count(input.systems)
	s.permanence == "temporary"
}

deficient contains [s.id, ["systems", i, "kind"]] if {
	some i, s in input.systems
	s.id in lasting
}

missing contains [s.id, ["systems", i, "kind"]] if {
	some i, s in input.systems
	not is_string(s.kind)
}

missing contains [id, ["systems", i, "kind"]] if {
	some id in sealing
	some i, s in input.systems
	not is_string(s.kind)
}

missing contains [s.id, ["systems", i, "permanence"]] if {
	some i, s in input.systems
	s.id in sealing
	not is_string(s.permanence)
}
