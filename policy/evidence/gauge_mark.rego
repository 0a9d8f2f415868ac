# METADATA
# title: A photo shows the gauge with its start-up mark
# description: The mark is the yardstick for every later reading; the photo proves that it was put on and where.
# custom:
#   subject: gauge
#   grade: recommended
#   stage: running
#   remedy: Take a photo of the gauge with its mark and reading, and name it in the record.
#   limits:
#     kinds: {dimension: choice, sense: one-of}
package policy.evidence.gauge_mark

import data.policy.gauges
import rego.v2

kinds := data.profile.evidence.gauge_mark.kinds.any_of

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "gauge", "photo"]] if some i, s in input.systems

exempt contains outcome if some outcome in gauges.absent

judged contains id if some id in gauges.shown

met contains s.id if {
	some s in input.systems
	s.id in judged
	some e in input.evidence
	e.id == s.gauge.photo
	e.media_type in kinds
}

deficient contains [s.id, ["evidence", k, "media_type"], "kinds"] if {
	some s in input.systems
	s.id in judged
	some k, e in input.evidence
	e.id == s.gauge.photo
	is_string(e.media_type)
	not e.media_type in kinds
}

deficient contains [s.id, ["systems", i, "gauge", "photo"]] if {
	some i, s in input.systems
	s.id in judged
	is_string(s.gauge.photo)
	is_array(input.evidence)
	not s.gauge.photo in {e.id | some e in input.evidence}
}

missing contains gap if some gap in gauges.unsaid

missing contains [s.id, ["systems", i, "gauge", "photo"]] if {
	some i, s in input.systems
	not is_string(s.gauge.photo)
}

missing contains [s.id, ["evidence"]] if {
	some s in input.systems
	not is_array(input.evidence)
}

missing contains [s.id, ["evidence", k, "media_type"]] if {
	some s in input.systems
	some k, e in input.evidence
	e.id == s.gauge.photo
	not is_string(e.media_type)
}
