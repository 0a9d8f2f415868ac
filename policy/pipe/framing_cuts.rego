# METADATA
# title: Cuts in framing stay within what the code allows for plumbing pipe
# description: A joist cut too deep sags under the floor above it, and nobody sees why.
# custom:
#   subject: pipe segment
#   grade: hazard
#   stage: roughed-in
#   remedy: Have the cut member judged and strengthened by a carpenter or engineer.
#   caution: Do not cut further and keep loads off the member until it has been judged.
package policy.pipe.framing_cuts

import data.policy.pipes
import rego.v2

subjects contains gap if some gap in pipes.gaps

subjects contains [p.id, ["systems", i, "pipe", j, "framing_cut_within_code"]] if {
	some i, s in input.systems
	some j, p in s.pipe
}

exempt contains outcome if some outcome in pipes.outside

met contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in pipes.judged
	p.framing_cut_within_code == true
}

deficient contains [p.id, ["systems", i, "pipe", j, "framing_cut_within_code"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.id in pipes.judged
	p.framing_cut_within_code == false
}

missing contains gap if some gap in pipes.unsaid

missing contains [p.id, ["systems", i, "pipe", j, "framing_cut_within_code"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_boolean(p.framing_cut_within_code)
}
