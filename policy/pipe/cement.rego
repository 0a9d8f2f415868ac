# METADATA
# title: The cement is made to the standard for this plastic
# description: Cement for another plastic skins over without welding the joint.
# custom:
#   subject: pipe segment
#   grade: required
#   stage: roughed-in
#   remedy: Read the standard on the can; cut out joints made with another cement and make them again.
#   caution: Cements and primers give off harmful, flammable vapor; air the room and keep flames away.
#   limits:
#     pvc: {dimension: choice, sense: one-of}
#     abs: {dimension: choice, sense: one-of}
package policy.pipe.cement

import data.policy.pipes
import rego.v2

limits := data.profile.pipe.cement

subjects contains gap if some gap in pipes.gaps

subjects contains [p.id, ["systems", i, "pipe", j, "cement_standard"]] if {
	some i, s in input.systems
	some j, p in s.pipe
}

exempt contains outcome if some outcome in pipes.outside

exempt contains [p.id, "its joints are not cemented"] if {
	some s in input.systems
	some p in s.pipe
	is_string(p.joints)
	p.joints != "solvent-cemented"
}

exempt contains [p.id, "the source names none for this material"] if {
	some s in input.systems
	some p in s.pipe
	is_string(p.material)
	not p.material in {"pvc", "abs"}
}

judged contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in pipes.judged
	p.joints == "solvent-cemented"
}

met contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in judged
	p.material == "pvc"
	p.cement_standard in limits.pvc.any_of
}

deficient contains [p.id, ["systems", i, "pipe", j, "cement_standard"], "pvc"] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.id in judged
	p.material == "pvc"
	is_string(p.cement_standard)
	not p.cement_standard in limits.pvc.any_of
}

met contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in judged
	p.material == "abs"
	p.cement_standard in limits.abs.any_of
}

deficient contains [p.id, ["systems", i, "pipe", j, "cement_standard"], "abs"] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.id in judged
	p.material == "abs"
	is_string(p.cement_standard)
	not p.cement_standard in limits.abs.any_of
}

missing contains gap if some gap in pipes.unsaid

missing contains [p.id, ["systems", i, "pipe", j, "material"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_string(p.material)
}

missing contains [p.id, ["systems", i, "pipe", j, "joints"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_string(p.joints)
}

missing contains [p.id, ["systems", i, "pipe", j, "cement_standard"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_string(p.cement_standard)
}
