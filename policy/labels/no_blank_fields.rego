# METADATA
# title: No field on a label is left blank
# description: A label with empty lines looks official and says nothing.
# custom:
#   subject: label
#   grade: recommended
#   stage: closeout
#   remedy: Fill in every field with a pen that lasts.
#   limits:
#     maximum: {dimension: number, sense: at-most}
package policy.labels.no_blank_fields

import data.policy.marks
import rego.v2

maximum := data.profile.labels.no_blank_fields.maximum.si

subjects contains gap if some gap in marks.unlisted

subjects contains [l.id, ["systems", i, "labels", j, "blank_fields"]] if {
	some i, s in input.systems
	some j, l in s.labels
}

met contains l.id if {
	some s in input.systems
	some l in s.labels
	l.blank_fields <= maximum
}

deficient contains [l.id, ["systems", i, "labels", j, "blank_fields"], "maximum"] if {
	some i, s in input.systems
	some j, l in s.labels
	l.blank_fields > maximum
}
