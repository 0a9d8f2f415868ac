# METADATA
# title: Cleaner, primer and cement are those that the maker of the pipe names
# description: The wrong can makes a joint that looks glued and is not.
# custom:
#   subject: pipe segment
#   grade: required
#   stage: roughed-in
#   remedy: Look at the pipe maker's sheet, cut out joints made with another product and make them again.
#   caution: Cements and primers give off harmful, flammable vapor; air the room and keep flames away.
package policy.pipe.joined_as_maker_says

import data.policy.pipes
import rego.v2

subjects contains gap if some gap in pipes.gaps

subjects contains [p.id, ["systems", i, "pipe", j, "joined_as_maker_says"]] if {
	some i, s in input.systems
	some j, p in s.pipe
}

exempt contains outcome if some outcome in pipes.outside

met contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in pipes.judged
	p.joined_as_maker_says == true
}

deficient contains [p.id, ["systems", i, "pipe", j, "joined_as_maker_says"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.id in pipes.judged
	p.joined_as_maker_says == false
}

missing contains gap if some gap in pipes.unsaid

missing contains [p.id, ["systems", i, "pipe", j, "joined_as_maker_says"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_boolean(p.joined_as_maker_says)
}
