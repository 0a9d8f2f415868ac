# METADATA
# title: PVC joints are primed with a primer made to its standard
# description: Without primer the cement does not bite, and the joint pulls apart the first hot summer.
# custom:
#   subject: pipe segment
#   grade: required
#   stage: roughed-in
#   remedy: Read the standard on the can; cut out joints made without primer and make them again.
#   caution: Cements and primers give off harmful, flammable vapor; air the room and keep flames away.
#   limits:
#     pvc: {dimension: choice, sense: one-of}
package policy.pipe.primer

import data.policy.pipes
import rego.v2

limits := data.profile.pipe.primer

subjects contains gap if some gap in pipes.gaps

subjects contains [p.id, ["systems", i, "pipe", j, "primer_standard"]] if {
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
	not p.material in {"pvc"}
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
	p.primer_standard in limits.pvc.any_of
}

deficient contains [p.id, ["systems", i, "pipe", j, "primer_standard"], "pvc"] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.id in judged
	p.material == "pvc"
	is_string(p.primer_standard)
	not p.primer_standard in limits.pvc.any_of
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

missing contains [p.id, ["systems", i, "pipe", j, "primer_standard"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_string(p.primer_standard)
}
