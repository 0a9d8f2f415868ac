# METADATA
# title: A photo shows how the fan is switched off for service
# description: Whoever comes to mend the fan has to find the switch before touching a wire.
# custom:
#   subject: electrical
#   grade: recommended
#   stage: running
#   remedy: Take a photo of the switch or plug beside the fan, and name it in the record.
#   caution: Covers stay on for the photo; live parts are for licensed people.
#   limits:
#     kinds: {dimension: choice, sense: one-of}
package policy.evidence.disconnect

import data.policy.wiring
import rego.v2

kinds := data.profile.evidence.disconnect.kinds.any_of

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "electrical", "photo"]] if some i, s in input.systems

exempt contains outcome if some outcome in wiring.outside

exempt contains [s.id, "there is no disconnect"] if {
	some s in input.systems
	s.electrical.disconnect == "none"
}

judged contains s.id if {
	some s in input.systems
	s.id in wiring.judged
	is_string(s.electrical.disconnect)
	s.electrical.disconnect != "none"
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	some e in input.evidence
	e.id == s.electrical.photo
	e.media_type in kinds
}

deficient contains [s.id, ["evidence", k, "media_type"], "kinds"] if {
	some s in input.systems
	s.id in judged
	some k, e in input.evidence
	e.id == s.electrical.photo
	is_string(e.media_type)
	not e.media_type in kinds
}

deficient contains [s.id, ["systems", i, "electrical", "photo"]] if {
	some i, s in input.systems
	s.id in judged
	is_string(s.electrical.photo)
	is_array(input.evidence)
	not s.electrical.photo in {e.id | some e in input.evidence}
}

missing contains gap if some gap in wiring.unsaid

missing contains [s.id, ["systems", i, "electrical", "disconnect"]] if {
	some i, s in input.systems
	not is_string(s.electrical.disconnect)
}

missing contains [s.id, ["systems", i, "electrical", "photo"]] if {
	some i, s in input.systems
	not is_string(s.electrical.photo)
}

missing contains [s.id, ["evidence"]] if {
	some s in input.systems
	not is_array(input.evidence)
}

missing contains [s.id, ["evidence", k, "media_type"]] if {
	some s in input.systems
	some k, e in input.evidence
	e.id == s.electrical.photo
	not is_string(e.media_type)
}
