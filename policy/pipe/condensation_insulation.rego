# METADATA
# title: Pipe that would drip on finishes is insulated under a vapor barrier
# description: Cold pipe in a warm room drips on ceilings, and wet ceilings grow mold.
# custom:
#   subject: pipe segment
#   grade: required
#   stage: running
#   remedy: Insulate the run to the resistance called for and close the insulation with a vapor barrier outside.
#   limits:
#     minimum: {dimension: thermal-resistance, sense: at-least}
package policy.pipe.condensation_insulation

import data.policy.pipes
import rego.v2

limits := data.profile.pipe.condensation_insulation

subjects contains gap if some gap in pipes.gaps

subjects contains [p.id, ["systems", i, "pipe", j, "insulation", "resistance"]] if {
	some i, s in input.systems
	some j, p in s.pipe
}

exempt contains outcome if some outcome in pipes.outside

exempt contains [p.id, "no dripping is expected from it"] if {
	some s in input.systems
	some p in s.pipe
	is_string(p.insulation.needed)
	not p.insulation.needed in {"condensation", "both"}
}

judged contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in pipes.judged
	p.insulation.needed in {"condensation", "both"}
}

met contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in judged
	p.insulation.resistance.si >= limits.minimum.si
	p.insulation.vapor_barrier == true
}

deficient contains [p.id, ["systems", i, "pipe", j, "insulation", "resistance"], "minimum"] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.id in judged
	p.insulation.resistance.si < limits.minimum.si
}

deficient contains [p.id, ["systems", i, "pipe", j, "insulation", "vapor_barrier"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.id in judged
	p.insulation.vapor_barrier == false
}

missing contains gap if some gap in pipes.unsaid

missing contains [p.id, ["systems", i, "pipe", j, "insulation", "needed"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_string(p.insulation.needed)
}

missing contains [p.id, ["systems", i, "pipe", j, "insulation", "resistance"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_number(p.insulation.resistance.si)
}

missing contains [p.id, ["systems", i, "pipe", j, "insulation", "vapor_barrier"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_boolean(p.insulation.vapor_barrier)
}
