# METADATA
# title: Pipe in attic and open air is protected where it freezes
# description: Ice closes the pipe on the coldest nights, when the house draws hardest on the soil.
# custom:
#   subject: pipe segment
#   grade: recommended
#   stage: running
#   remedy: Insulate the run, and cover the insulation outdoors.
#   limits:
#     above: {dimension: thermal-resistance, sense: more-than}
#     places: {dimension: choice, sense: one-of}
package policy.pipe.cold_runs_protected

import data.policy.pipes
import rego.v2

limits := data.profile.pipe.cold_runs_protected

subjects contains gap if some gap in pipes.gaps

subjects contains [p.id, ["systems", i, "pipe", j, "insulation", "resistance"]] if {
	some i, s in input.systems
	some j, p in s.pipe
}

exempt contains outcome if some outcome in pipes.outside

exempt contains [p.id, "pipe does not freeze here"] if {
	some s in input.systems
	some p in s.pipe
	input.house.freezing_climate == false
}

exempt contains [p.id, "it runs where it is warm"] if {
	some s in input.systems
	some p in s.pipe
	is_string(p.place)
	not p.place in limits.places.any_of
}

judged contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in pipes.judged
	input.house.freezing_climate == true
	p.place in limits.places.any_of
}

met contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in judged
	p.insulation.needed in {"freezing", "both"}
	p.insulation.resistance.si > limits.above.si
}

deficient contains [p.id, ["systems", i, "pipe", j, "insulation", "needed"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.id in judged
	is_string(p.insulation.needed)
	not p.insulation.needed in {"freezing", "both"}
}

deficient contains [p.id, ["systems", i, "pipe", j, "insulation", "resistance"], "above"] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.id in judged
	p.insulation.resistance.si <= limits.above.si
}

missing contains gap if some gap in pipes.unsaid

missing contains [p.id, ["systems", i, "pipe", j, "place"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_string(p.place)
}

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

missing contains [p.id, ["house", "freezing_climate"]] if {
	some s in input.systems
	some p in s.pipe
	not is_boolean(input.house.freezing_climate)
}
