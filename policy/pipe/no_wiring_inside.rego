# METADATA
# title: No wire runs inside the pipe
# description: Damp soil gas eats at the wire, and the next hand that opens the pipe finds it live.
# custom:
#   subject: pipe segment
#   grade: hazard
#   stage: running
#   remedy: Have the wire taken out of the pipe and run in its own conduit.
#   caution: Wiring is work for licensed people; cut the power and prove it dead first.
package policy.pipe.no_wiring_inside

import data.policy.pipes
import rego.v2

subjects contains gap if some gap in pipes.gaps

subjects contains [p.id, ["systems", i, "pipe", j, "wiring_inside"]] if {
	some i, s in input.systems
	some j, p in s.pipe
}

exempt contains outcome if some outcome in pipes.outside

met contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in pipes.judged
	p.wiring_inside == false
}

deficient contains [p.id, ["systems", i, "pipe", j, "wiring_inside"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.id in pipes.judged
	p.wiring_inside == true
}

missing contains gap if some gap in pipes.unsaid

missing contains [p.id, ["systems", i, "pipe", j, "wiring_inside"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_boolean(p.wiring_inside)
}
