# METADATA
# title: Every joint of the pipe is tight against air and water
# description: Before the fan a leaky joint wastes its pull on house air; after it, soil gas comes out.
# custom:
#   subject: pipe segment
#   grade: required
#   stage: running
#   remedy: Check each joint with smoke while the fan runs and remake those that leak.
#   caution: Cements and primers give off harmful, flammable vapor; air the room and keep flames away.
#   limits:
#     not_for: {dimension: choice, sense: not-for}
package policy.pipe.airtight

import data.policy.pipes
import rego.v2

limits := data.profile.pipe.airtight

subjects contains gap if some gap in pipes.gaps

subjects contains [p.id, ["systems", i, "pipe", j, "airtight"]] if {
	some i, s in input.systems
	some j, p in s.pipe
}

exempt contains outcome if some outcome in pipes.outside

exempt contains [s.id, "its source does not speak of systems driven this way"] if {
	some s in input.systems
	not is_array(s.pipe)
	s.powered_by in limits.not_for.any_of
}

exempt contains [p.id, "its source does not speak of systems driven this way"] if {
	some s in input.systems
	some p in s.pipe
	s.powered_by in limits.not_for.any_of
}

judged contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in pipes.judged
	is_string(s.powered_by)
	not s.powered_by in limits.not_for.any_of
}

met contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in judged
	p.airtight == true
}

deficient contains [p.id, ["systems", i, "pipe", j, "airtight"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.id in judged
	p.airtight == false
}

missing contains gap if some gap in pipes.unsaid

missing contains [p.id, ["systems", i, "powered_by"]] if {
	some i, s in input.systems
	some p in s.pipe
	not is_string(s.powered_by)
}

missing contains [p.id, ["systems", i, "pipe", j, "airtight"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_boolean(p.airtight)
}
