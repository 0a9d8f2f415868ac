# METADATA
# title: All seams of a baseboard channel are sealed as its maker says
# description: The channel is all seam; one open corner and it draws room air.
# custom:
#   subject: system
#   grade: required
#   stage: running
#   remedy: Seal floor, wall, corner and end seams of the channel as its maker says.
#   caution: Sealants and foams give off vapor; air the room and keep flames away.
package policy.sealing.baseboard_channel

import rego.v2

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "baseboard_seams_sealed"]] if some i, s in input.systems

exempt contains [s.id, "this kind of system has no baseboard channel"] if {
	some s in input.systems
	is_string(s.kind)
	s.kind != "baseboard-channel"
}

met contains s.id if {
	some s in input.systems
	s.kind == "baseboard-channel"
	s.baseboard_seams_sealed == true
}

deficient contains [s.id, ["systems", i, "baseboard_seams_sealed"]] if {
	some i, s in input.systems
	s.kind == "baseboard-channel"
	s.baseboard_seams_sealed == false
}

missing contains [s.id, ["systems", i, "kind"]] if {
	some i, s in input.systems
	not is_string(s.kind)
}

missing contains [s.id, ["systems", i, "baseboard_seams_sealed"]] if {
	some i, s in input.systems
	not is_boolean(s.baseboard_seams_sealed)
}
