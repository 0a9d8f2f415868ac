# METADATA
# title: The pipe is wide enough, or its smaller size was worked out from readings
# description: Narrow pipe chokes the fan, so that the far end of the slab is never reached.
# custom:
#   subject: pipe segment
#   grade: required
#   stage: roughed-in
#   remedy: Replace the narrow run, or give the owner the airflow, pressure and speed readings and the written reason for the smaller size.
#   limits:
#     minimum: {dimension: length, sense: at-least}
#     shapes: {dimension: choice, sense: one-of}
#     proof: {dimension: choice, sense: one-of}
package policy.pipe.minimum_size

import data.policy.pipes
import rego.v2

limits := data.profile.pipe.minimum_size

subjects contains gap if some gap in pipes.gaps

subjects contains [p.id, ["systems", i, "pipe", j, "nominal_size"]] if {
	some i, s in input.systems
	some j, p in s.pipe
}

exempt contains outcome if some outcome in pipes.outside

wide contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.shape == "round"
	p.nominal_size.si >= limits.minimum.si
}

wide contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.shape in limits.shapes.any_of
}

narrow contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.shape == "round"
	p.nominal_size.si < limits.minimum.si
}

narrow contains p.id if {
	some s in input.systems
	some p in s.pipe
	is_string(p.shape)
	p.shape != "round"
	not p.shape in limits.shapes.any_of
}

excusable if "airflow-basis" in limits.proof.any_of

met contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in pipes.judged
	p.id in wide
}

met contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in pipes.judged
	excusable
	p.id in narrow
	s.commissioning.airflow_basis_documented == true
}

unproven contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in narrow
	not excusable
}

unproven contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in narrow
	s.commissioning.airflow_basis_documented == false
}

deficient contains [p.id, ["systems", i, "pipe", j, "nominal_size"], "minimum"] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.id in pipes.judged
	p.id in unproven
	p.shape == "round"
}

deficient contains [p.id, ["systems", i, "pipe", j, "shape"], "minimum"] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.id in pipes.judged
	p.id in unproven
	p.shape != "round"
}

missing contains gap if some gap in pipes.unsaid

missing contains [p.id, ["systems", i, "pipe", j, "shape"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_string(p.shape)
}

missing contains [p.id, ["systems", i, "pipe", j, "nominal_size"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not p.id in wide
	not is_number(p.nominal_size.si)
}

missing contains [p.id, ["systems", i, "commissioning", "airflow_basis_documented"]] if {
	some i, s in input.systems
	some p in s.pipe
	excusable
	p.id in narrow
	not is_boolean(s.commissioning.airflow_basis_documented)
}
