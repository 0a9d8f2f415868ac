# METADATA
# title: The pipe is made to a standard for its plastic
# description: Thin drain pipe looks the same in white and cracks at the first knock.
# custom:
#   subject: pipe segment
#   grade: required
#   stage: roughed-in
#   remedy: Read the print on the pipe; replace pipe made to another standard.
#   limits:
#     pvc: {dimension: choice, sense: one-of}
#     abs: {dimension: choice, sense: one-of}
package policy.pipe.product_standard

import data.policy.pipes
import rego.v2

limits := data.profile.pipe.product_standard

subjects contains gap if some gap in pipes.gaps

subjects contains [p.id, ["systems", i, "pipe", j, "standard"]] if {
	some i, s in input.systems
	some j, p in s.pipe
}

exempt contains outcome if some outcome in pipes.outside

exempt contains [p.id, "the source names no standard for this material"] if {
	some s in input.systems
	some p in s.pipe
	is_string(p.material)
	not p.material in {"pvc", "abs"}
}

met contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in pipes.judged
	p.material == "pvc"
	p.standard in limits.pvc.any_of
}

met contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in pipes.judged
	p.material == "abs"
	p.standard in limits.abs.any_of
}

deficient contains [p.id, ["systems", i, "pipe", j, "standard"], "pvc"] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.id in pipes.judged
	p.material == "pvc"
	is_string(p.standard)
	not p.standard in limits.pvc.any_of
}

deficient contains [p.id, ["systems", i, "pipe", j, "standard"], "abs"] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.id in pipes.judged
	p.material == "abs"
	is_string(p.standard)
	not p.standard in limits.abs.any_of
}

missing contains gap if some gap in pipes.unsaid

missing contains [p.id, ["systems", i, "pipe", j, "material"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_string(p.material)
}

missing contains [p.id, ["systems", i, "pipe", j, "standard"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_string(p.standard)
}
