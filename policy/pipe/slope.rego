# METADATA
# title: Level pipe falls back to the suction point, or its water is led off another way
# description: Damp soil air drips all winter; water that cannot run back fills a belly and stops the air.
# custom:
#   subject: pipe segment
#   grade: required
#   stage: roughed-in
#   remedy: Hang the run again with more fall to the suction point, or fit a drain at its low end.
#   limits:
#     minimum: {dimension: slope, sense: at-least}
#     other_drains: {dimension: choice, sense: one-of}
package policy.pipe.slope

import data.policy.pipes
import rego.v2

limits := data.profile.pipe.slope

subjects contains gap if some gap in pipes.gaps

subjects contains [p.id, ["systems", i, "pipe", j, "slope"]] if {
	some i, s in input.systems
	some j, p in s.pipe
}

exempt contains outcome if some outcome in pipes.outside

exempt contains [p.id, "an upright run drains by itself"] if {
	some s in input.systems
	some p in s.pipe
	p.run == "vertical"
}

judged contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in pipes.judged
	p.run == "horizontal"
}

steep contains d.id if {
	some d in input.derived.segments
	d.slope.si >= limits.minimum.si
}

flat contains d.id if {
	some d in input.derived.segments
	d.slope.si < limits.minimum.si
}

met contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in judged
	p.id in steep
}

met contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in judged
	p.drainage in limits.other_drains.any_of
}

deficient contains [d.id, ["derived", "segments", k, "slope"], "minimum"] if {
	some k, d in input.derived.segments
	d.id in judged
	d.id in flat
	some s in input.systems
	some p in s.pipe
	p.id == d.id
	is_string(p.drainage)
	not p.drainage in limits.other_drains.any_of
}

missing contains gap if some gap in pipes.unsaid

missing contains [p.id, ["systems", i, "pipe", j, "run"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_string(p.run)
}

missing contains [p.id, ["systems", i, "pipe", j, "drainage"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not p.id in steep
	not is_string(p.drainage)
}

missing contains [d.id, ["derived", "segments", k, "slope"]] if {
	some k, d in input.derived.segments
	not is_number(d.slope.si)
}
