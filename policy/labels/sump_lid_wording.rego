# METADATA
# title: The label on a sump lid warns not to open it, in letters that are easy to read
# description: Whoever lifts an unmarked lid opens the house to the soil and lames the system.
# custom:
#   subject: label
#   grade: required
#   stage: closeout
#   remedy: Replace the label by one that says the lid is part of the radon system and must stay shut, in large contrasting letters.
#   limits:
#     minimum: {dimension: length, sense: at-least}
#     not_for: {dimension: choice, sense: none-of}
package policy.labels.sump_lid_wording

import data.policy.houses
import data.policy.marks
import rego.v2

limits := data.profile.labels.sump_lid_wording

subjects contains gap if some gap in marks.vague

subjects contains [l.id, ["systems", i, "labels", j, "says_system"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "sump-lid"
}

exempt contains [id, "its source leaves out houses of this age"] if {
	some [id, _] in subjects
	houses.left_out(limits.not_for.any_of)
}

judged contains l.id if {
	some s in input.systems
	some l in s.labels
	l.kind == "sump-lid"
	houses.meant(limits.not_for.any_of)
}

met contains l.id if {
	some s in input.systems
	some l in s.labels
	l.id in judged
	l.says_system == true
	l.says_do_not_tamper == true
	l.contrasting == true
	l.letter_height.si >= limits.minimum.si
}

deficient contains [l.id, ["systems", i, "labels", j, "says_system"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.id in judged
	l.says_system == false
}

deficient contains [l.id, ["systems", i, "labels", j, "says_do_not_tamper"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.id in judged
	l.says_do_not_tamper == false
}

deficient contains [l.id, ["systems", i, "labels", j, "contrasting"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.id in judged
	l.contrasting == false
}

deficient contains [l.id, ["systems", i, "labels", j, "letter_height"], "minimum"] if {
	some i, s in input.systems
	some j, l in s.labels
	l.id in judged
	l.letter_height.si < limits.minimum.si
}

missing contains gap if some gap in marks.vague

missing contains [id, ["house", "new_construction"]] if {
	some [id, _] in subjects
	houses.untold(limits.not_for.any_of)
}

missing contains [l.id, ["systems", i, "labels", j, "says_system"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "sump-lid"
	not is_boolean(l.says_system)
}

missing contains [l.id, ["systems", i, "labels", j, "says_do_not_tamper"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "sump-lid"
	not is_boolean(l.says_do_not_tamper)
}

missing contains [l.id, ["systems", i, "labels", j, "contrasting"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "sump-lid"
	not is_boolean(l.contrasting)
}

missing contains [l.id, ["systems", i, "labels", j, "letter_height"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "sump-lid"
	not is_number(l.letter_height.si)
}
