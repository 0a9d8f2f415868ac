# METADATA
# title: Fittings are of the same material as the pipe
# description: One cement cannot weld two plastics, so a mixed joint is the one that opens.
# custom:
#   subject: pipe segment
#   grade: required
#   stage: roughed-in
#   remedy: Replace fittings of another material.
#   caution: Cements and primers give off harmful, flammable vapor; air the room and keep flames away.
package policy.pipe.fittings_match

import data.policy.pipes
import rego.v2

subjects contains gap if some gap in pipes.gaps

subjects contains [p.id, ["systems", i, "pipe", j, "fittings_match_pipe"]] if {
	some i, s in input.systems
	some j, p in s.pipe
}

exempt contains outcome if some outcome in pipes.outside

exempt contains [p.id, "there is no fitting in it"] if {
	some s in input.systems
	some p in s.pipe
	is_array(p.fittings)
	count(p.fittings) == 0
}

judged contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in pipes.judged
	count(p.fittings) > 0
}

met contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in judged
	p.fittings_match_pipe == true
}

deficient contains [p.id, ["systems", i, "pipe", j, "fittings_match_pipe"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.id in judged
	p.fittings_match_pipe == false
}

missing contains gap if some gap in pipes.unsaid

missing contains [p.id, ["systems", i, "pipe", j, "fittings"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_array(p.fittings)
}

missing contains [p.id, ["systems", i, "pipe", j, "fittings_match_pipe"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_boolean(p.fittings_match_pipe)
}
