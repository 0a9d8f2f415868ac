# METADATA
# title: Notches and holes in joists keep to the advised figures
# description: A notch in the middle third or a hole near the edge takes the strength where the joist needs it most.
# custom:
#   subject: pipe segment
#   grade: recommended
#   stage: roughed-in
#   remedy: Have the cut member judged and strengthened by a carpenter or engineer.
#   caution: Do not cut further and keep loads off the member until it has been judged.
#   limits:
#     notch: {dimension: ratio, sense: at-most}
#     edge: {dimension: length, sense: at-least}
package policy.pipe.framing_figures

import data.policy.pipes
import rego.v2

limits := data.profile.pipe.framing_figures

subjects contains gap if some gap in pipes.gaps

subjects contains [p.id, ["systems", i, "pipe", j, "framing_cuts"]] if {
	some i, s in input.systems
	some j, p in s.pipe
}

exempt contains outcome if some outcome in pipes.outside

exempt contains [p.id, "nothing was cut for it"] if {
	some s in input.systems
	some p in s.pipe
	is_array(p.framing_cuts)
	count(p.framing_cuts) == 0
}

judged contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in pipes.judged
	count(p.framing_cuts) > 0
}

notches_right contains p.id if {
	some s in input.systems
	some p in s.pipe
	is_array(p.framing_cuts)
	not "notch" in p.framing_cuts
}

notches_right contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.notch_share.si <= limits.notch.si
	p.notch_in_middle_third == false
}

holes_right contains p.id if {
	some s in input.systems
	some p in s.pipe
	is_array(p.framing_cuts)
	not "hole" in p.framing_cuts
}

holes_right contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.hole_edge.si >= limits.edge.si
}

met contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in judged
	p.id in notches_right
	p.id in holes_right
}

deficient contains [p.id, ["systems", i, "pipe", j, "notch_share"], "notch"] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.id in judged
	"notch" in p.framing_cuts
	p.notch_share.si > limits.notch.si
}

deficient contains [p.id, ["systems", i, "pipe", j, "notch_in_middle_third"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.id in judged
	"notch" in p.framing_cuts
	p.notch_in_middle_third == true
}

deficient contains [p.id, ["systems", i, "pipe", j, "hole_edge"], "edge"] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.id in judged
	"hole" in p.framing_cuts
	p.hole_edge.si < limits.edge.si
}

missing contains gap if some gap in pipes.unsaid

missing contains [p.id, ["systems", i, "pipe", j, "framing_cuts"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_array(p.framing_cuts)
}

missing contains [p.id, ["systems", i, "pipe", j, "notch_share"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	"notch" in p.framing_cuts
	not is_number(p.notch_share.si)
}

missing contains [p.id, ["systems", i, "pipe", j, "notch_in_middle_third"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	"notch" in p.framing_cuts
	not is_boolean(p.notch_in_middle_third)
}

missing contains [p.id, ["systems", i, "pipe", j, "hole_edge"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	"hole" in p.framing_cuts
	not is_number(p.hole_edge.si)
}
