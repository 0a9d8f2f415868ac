# METADATA
# title: Rain and condensate in the pipe run down to the soil
# description: Water that stays in the pipe blocks the air, freezes, and ends in the fan.
# custom:
#   subject: pipe segment
#   grade: required
#   stage: roughed-in
#   remedy: Hang the run again so that it falls to the suction point, or lead its water round the fan and back.
#   limits:
#     allowed: {dimension: choice, sense: one-of}
package policy.pipe.drains_back

import data.policy.pipes
import rego.v2

limits := data.profile.pipe.drains_back

subjects contains gap if some gap in pipes.gaps

subjects contains [p.id, ["systems", i, "pipe", j, "drainage"]] if {
	some i, s in input.systems
	some j, p in s.pipe
}

exempt contains outcome if some outcome in pipes.outside

# Pipe whose lower end lets the water go: that of a system stands in the pit, and
# of pipe that is only roughed in it has to be said.
open_below contains p.id if {
	some s in input.systems
	s.powered_by in {"fan", "passive"}
	some p in s.pipe
}

open_below contains p.id if {
	some s in input.systems
	s.powered_by == "rough-in"
	s.rough_in.drains_to_soil == true
	some p in s.pipe
}

met contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in pipes.judged
	p.id in open_below
	p.drainage in limits.allowed.any_of
}

deficient contains [p.id, ["systems", i, "pipe", j, "drainage"], "allowed"] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.id in pipes.judged
	is_string(p.drainage)
	not p.drainage in limits.allowed.any_of
}

deficient contains [p.id, ["systems", i, "rough_in", "drains_to_soil"]] if {
	some i, s in input.systems
	s.powered_by == "rough-in"
	s.rough_in.drains_to_soil == false
	some p in s.pipe
	p.id in pipes.judged
}

missing contains gap if some gap in pipes.unsaid

missing contains [p.id, ["systems", i, "powered_by"]] if {
	some i, s in input.systems
	some p in s.pipe
	not is_string(s.powered_by)
}

missing contains [p.id, ["systems", i, "rough_in", "drains_to_soil"]] if {
	some i, s in input.systems
	s.powered_by == "rough-in"
	some p in s.pipe
	not is_boolean(s.rough_in.drains_to_soil)
}

missing contains [p.id, ["systems", i, "pipe", j, "drainage"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_string(p.drainage)
}
