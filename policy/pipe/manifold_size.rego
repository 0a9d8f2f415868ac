# METADATA
# title: Pipe that carries the air of several suction points is wide enough
# description: Where legs meet the air adds up; in narrow pipe the farthest leg gets what is left.
# custom:
#   subject: pipe segment
#   grade: required
#   stage: roughed-in
#   remedy: Replace the shared run with wider pipe, or give the owner the readings and the written reason for the smaller size.
#   limits:
#     minimum: {dimension: length, sense: at-least}
#     points: {dimension: number, sense: at-least}
package policy.pipe.manifold_size

import data.policy.pipes
import rego.v2

limits := data.profile.pipe.manifold_size

subjects contains gap if some gap in pipes.gaps

subjects contains [p.id, ["systems", i, "pipe", j, "nominal_size"]] if {
	some i, s in input.systems
	some j, p in s.pipe
}

exempt contains outcome if some outcome in pipes.outside

exempt contains [d.id, "it carries the air of fewer suction points"] if {
	some d in input.derived.segments
	d.feeds.si < limits.points.si
}

shared contains d.id if {
	some d in input.derived.segments
	d.feeds.si >= limits.points.si
}

judged contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in pipes.judged
	p.id in shared
	p.shape == "round"
}

met contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in judged
	p.nominal_size.si >= limits.minimum.si
}

met contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in judged
	p.nominal_size.si < limits.minimum.si
	s.commissioning.airflow_basis_documented == true
}

deficient contains [p.id, ["systems", i, "pipe", j, "nominal_size"], "minimum"] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.id in judged
	p.nominal_size.si < limits.minimum.si
	s.commissioning.airflow_basis_documented == false
}

undetermined contains [p.id, ["systems", i, "pipe", j, "shape"], "the size called for is that of round pipe"] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.id in pipes.judged
	p.id in shared
	is_string(p.shape)
	p.shape != "round"
}

missing contains gap if some gap in pipes.unsaid

missing contains [d.id, ["derived", "segments", i, "feeds"]] if {
	some i, d in input.derived.segments
	not is_number(d.feeds.si)
}

missing contains [p.id, ["systems", i, "pipe", j, "shape"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_string(p.shape)
}

missing contains [p.id, ["systems", i, "pipe", j, "nominal_size"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_number(p.nominal_size.si)
}

missing contains [p.id, ["systems", i, "commissioning", "airflow_basis_documented"]] if {
	some i, s in input.systems
	some p in s.pipe
	p.nominal_size.si < limits.minimum.si
	not is_boolean(s.commissioning.airflow_basis_documented)
}
