# METADATA
# title: The riser of a chemical vapor system is of the material and size asked for
# description: Some chemicals soften other plastics, and a narrow riser cannot clear the slab.
# custom:
#   subject: pipe segment
#   grade: required
#   stage: roughed-in
#   remedy: Replace the riser.
#   limits:
#     minimum: {dimension: length, sense: at-least}
#     materials: {dimension: choice, sense: one-of}
#     kinds: {dimension: choice, sense: applies-to}
#     contaminants: {dimension: choice, sense: applies-to}
package policy.pipe.vapor_riser

import data.policy.pipes
import rego.v2

limits := data.profile.pipe.vapor_riser

subjects contains gap if some gap in pipes.gaps

subjects contains [p.id, ["systems", i, "pipe", j, "nominal_size"]] if {
	some i, s in input.systems
	some j, p in s.pipe
}

exempt contains outcome if some outcome in pipes.outside

exempt contains [p.id, "the job is not about chemical vapor"] if {
	some s in input.systems
	some p in s.pipe
	is_string(input.job.contaminant)
	not input.job.contaminant in limits.contaminants.any_of
}

exempt contains [p.id, "its source does not speak of this kind of system"] if {
	some s in input.systems
	some p in s.pipe
	is_string(s.kind)
	not s.kind in limits.kinds.any_of
}

exempt contains [p.id, "it is no riser"] if {
	some s in input.systems
	some p in s.pipe
	is_string(p.run)
	p.run != "vertical"
}

judged contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in pipes.judged
	input.job.contaminant in limits.contaminants.any_of
	s.kind in limits.kinds.any_of
	p.run == "vertical"
}

met contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in judged
	p.material in limits.materials.any_of
	p.nominal_size.si >= limits.minimum.si
}

deficient contains [p.id, ["systems", i, "pipe", j, "material"], "materials"] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.id in judged
	is_string(p.material)
	not p.material in limits.materials.any_of
}

deficient contains [p.id, ["systems", i, "pipe", j, "nominal_size"], "minimum"] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.id in judged
	p.nominal_size.si < limits.minimum.si
}

missing contains gap if some gap in pipes.unsaid

missing contains [p.id, ["job", "contaminant"]] if {
	some s in input.systems
	some p in s.pipe
	not is_string(input.job.contaminant)
}

missing contains [p.id, ["systems", i, "pipe", j, "run"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_string(p.run)
}

missing contains [p.id, ["systems", i, "pipe", j, "material"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_string(p.material)
}

missing contains [p.id, ["systems", i, "pipe", j, "nominal_size"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_number(p.nominal_size.si)
}
