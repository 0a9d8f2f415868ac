# METADATA
# title: No low point in the pipe holds water
# description: A few cups of water in a belly shut off the air as well as a valve does.
# custom:
#   subject: pipe segment
#   grade: required
#   stage: roughed-in
#   remedy: Take out the low point, or drain it.
#   limits:
#     depth: {dimension: length, sense: at-most}
#     drained: {dimension: choice, sense: one-of}
package policy.pipe.no_water_trap

import data.policy.pipes
import rego.v2

limits := data.profile.pipe.no_water_trap

subjects contains gap if some gap in pipes.gaps

subjects contains [p.id, ["systems", i, "pipe", j, "rise"]] if {
	some i, s in input.systems
	some j, p in s.pipe
}

exempt contains outcome if some outcome in pipes.outside

straight contains d.id if {
	some d in input.derived.segments
	d.trap_depth.si <= limits.depth.si
}

met contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in pipes.judged
	p.id in straight
}

deficient contains [d.id, ["derived", "segments", k, "trap_depth"], "depth"] if {
	some k, d in input.derived.segments
	d.id in pipes.judged
	d.trap_depth.si > limits.depth.si
	some s in input.systems
	some p in s.pipe
	p.id == d.id
	is_string(p.drainage)
	not p.drainage in limits.drained.any_of
}

met contains d.id if {
	some d in input.derived.segments
	d.id in pipes.judged
	d.trap_depth.si > limits.depth.si
	some s in input.systems
	some p in s.pipe
	p.id == d.id
	p.drainage in limits.drained.any_of
}

missing contains gap if some gap in pipes.unsaid

missing contains [p.id, ["systems", i, "pipe", j, "drainage"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not p.id in straight
	not is_string(p.drainage)
}

missing contains [d.id, ["derived", "segments", k, "trap_depth"]] if {
	some k, d in input.derived.segments
	not is_number(d.trap_depth.si)
}
