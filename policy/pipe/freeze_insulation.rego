# METADATA
# title: Pipe in which ice would build up is insulated, and covered against weather
# description: Ice closes the pipe on the coldest nights, when the house draws hardest on the soil.
# custom:
#   subject: pipe segment
#   grade: required
#   stage: running
#   remedy: Insulate the run to the resistance called for, and cover the insulation where rain and sun reach it.
#   limits:
#     minimum: {dimension: thermal-resistance, sense: at-least}
#     outdoors: {dimension: choice, sense: one-of}
package policy.pipe.freeze_insulation

import data.policy.pipes
import rego.v2

limits := data.profile.pipe.freeze_insulation

subjects contains gap if some gap in pipes.gaps

subjects contains [p.id, ["systems", i, "pipe", j, "insulation", "resistance"]] if {
	some i, s in input.systems
	some j, p in s.pipe
}

exempt contains outcome if some outcome in pipes.outside

exempt contains [p.id, "ice is not expected in it"] if {
	some s in input.systems
	some p in s.pipe
	is_string(p.insulation.needed)
	not p.insulation.needed in {"freezing", "both"}
}

judged contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in pipes.judged
	p.insulation.needed in {"freezing", "both"}
}

covered contains p.id if {
	some s in input.systems
	some p in s.pipe
	is_string(p.place)
	not p.place in limits.outdoors.any_of
}

covered contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.insulation.weather_protected == true
}

met contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in judged
	p.insulation.resistance.si >= limits.minimum.si
	p.id in covered
}

deficient contains [p.id, ["systems", i, "pipe", j, "insulation", "resistance"], "minimum"] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.id in judged
	p.insulation.resistance.si < limits.minimum.si
}

deficient contains [p.id, ["systems", i, "pipe", j, "insulation", "weather_protected"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.id in judged
	p.place in limits.outdoors.any_of
	p.insulation.weather_protected == false
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

missing contains [p.id, ["systems", i, "pipe", j, "place"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not p.id in covered
	not is_string(p.place)
}

missing contains [p.id, ["systems", i, "pipe", j, "insulation", "weather_protected"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not p.id in covered
	not is_boolean(p.insulation.weather_protected)
}
