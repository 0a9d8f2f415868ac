# METADATA
# title: A photo shows the outlet
# description: An outlet under a window is seen at once on a photo, and never in a table.
# custom:
#   subject: discharge
#   grade: recommended
#   stage: roughed-in
#   remedy: Take a photo of the outlet with the nearest windows in view, and name it in the record.
#   caution: Take it from the ground; a photo is not worth a climb.
#   limits:
#     kinds: {dimension: choice, sense: one-of}
package policy.evidence.outlet

import data.policy.systems
import rego.v2

kinds := data.profile.evidence.outlet.kinds.any_of

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "discharge", "photo"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_outlet

exempt contains [s.id, "the pipe is only roughed in"] if {
	some s in input.systems
	s.powered_by == "rough-in"
}

judged contains s.id if {
	some s in input.systems
	s.kind in systems.soil_kinds
	s.powered_by in {"fan", "passive"}
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	some e in input.evidence
	e.id == s.discharge.photo
	e.media_type in kinds
}

deficient contains [s.id, ["evidence", k, "media_type"], "kinds"] if {
	some s in input.systems
	s.id in judged
	some k, e in input.evidence
	e.id == s.discharge.photo
	is_string(e.media_type)
	not e.media_type in kinds
}

deficient contains [s.id, ["systems", i, "discharge", "photo"]] if {
	some i, s in input.systems
	s.id in judged
	is_string(s.discharge.photo)
	is_array(input.evidence)
	not s.discharge.photo in {e.id | some e in input.evidence}
}

missing contains gap if some gap in systems.unsaid

missing contains [s.id, ["systems", i, "discharge", "photo"]] if {
	some i, s in input.systems
	not is_string(s.discharge.photo)
}

missing contains [s.id, ["evidence"]] if {
	some s in input.systems
	not is_array(input.evidence)
}

missing contains [s.id, ["evidence", k, "media_type"]] if {
	some s in input.systems
	some k, e in input.evidence
	e.id == s.discharge.photo
	not is_string(e.media_type)
}
