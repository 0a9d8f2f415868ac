# METADATA
# title: The membrane, or the way into the crawlspace, is labelled
# description: People who store things or mend pipes on an unmarked sheet tear holes into it.
# custom:
#   subject: system
#   grade: required
#   stage: closeout
#   remedy: Fix a label to the membrane or at the access that says what the sheet is for.
#   limits:
#     kinds: {dimension: choice, sense: one-of}
package policy.labels.membrane

import data.policy.marks
import data.policy.systems
import rego.v2

kinds := data.profile.labels.membrane.kinds.any_of

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "labels"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

exempt contains [s.id, "its source asks this of other kinds of system"] if {
	some s in input.systems
	is_string(s.kind)
	not s.kind in kinds
}

met contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	s.kind in kinds
	some l in s.labels
	l.kind == "membrane"
}

deficient contains [s.id, ["systems", i, "labels"]] if {
	some i, s in input.systems
	s.id in systems.with_fan
	s.kind in kinds
	s.id in marks.known
	count({l.id | some l in s.labels; l.kind == "membrane"}) == 0
}

missing contains gap if some gap in systems.unsaid

missing contains gap if some gap in marks.untold
