# METADATA
# title: Joints of plastic pipe are cemented, but for couplings and sump lids
# description: A joint that is only pushed together or taped comes apart behind a finished wall, where nobody looks.
# custom:
#   subject: pipe segment
#   grade: required
#   stage: roughed-in
#   remedy: Take the joint apart, clean it and cement it.
#   caution: Cements and primers give off harmful, flammable vapor; air the room and keep flames away.
#   limits:
#     allowed: {dimension: choice, sense: one-of}
#     at_sumps: {dimension: choice, sense: one-of}
package policy.pipe.joints

import data.policy.pipes
import rego.v2

limits := data.profile.pipe.joints

subjects contains gap if some gap in pipes.gaps

subjects contains [p.id, ["systems", i, "pipe", j, "joints"]] if {
	some i, s in input.systems
	some j, p in s.pipe
}

exempt contains outcome if some outcome in pipes.outside

exempt contains [p.id, "metal pipe is not cemented"] if {
	some s in input.systems
	some p in s.pipe
	p.material == "metal-downspout"
}

judged contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in pipes.judged
	is_string(p.material)
	p.material != "metal-downspout"
}

# A segment that is not the first and names no suction point carries on from
# another one.
mid_run contains p.id if {
	some s in input.systems
	some j, p in s.pipe
	j > 0
	not is_string(p.starts_at)
}

mid_run contains p.id if {
	some s in input.systems
	some p in s.pipe
	some point in s.suction_points
	point.id == p.starts_at
	is_string(point.through)
	point.through != "sump-lid"
}

at_sump contains p.id if {
	some s in input.systems
	some p in s.pipe
	some point in s.suction_points
	point.id == p.starts_at
	point.through == "sump-lid"
}

met contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in judged
	p.joints in limits.allowed.any_of
}

met contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in judged
	p.id in at_sump
	p.joints in limits.at_sumps.any_of
}

deficient contains [p.id, ["systems", i, "pipe", j, "joints"], "allowed"] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.id in judged
	is_string(p.joints)
	not p.joints in limits.allowed.any_of
	not p.joints in limits.at_sumps.any_of
}

deficient contains [p.id, ["systems", i, "pipe", j, "joints"], "allowed"] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.id in judged
	p.id in mid_run
	p.joints in limits.at_sumps.any_of
	not p.joints in limits.allowed.any_of
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

missing contains [p.id, ["systems", i, "pipe", j, "starts_at"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.joints in limits.at_sumps.any_of
	not p.joints in limits.allowed.any_of
	not p.id in mid_run
	not is_string(p.starts_at)
}

missing contains [p.id, ["systems", i, "suction_points", k, "through"]] if {
	some i, s in input.systems
	some p in s.pipe
	some k, point in s.suction_points
	point.id == p.starts_at
	not is_string(point.through)
}
