# METADATA
# title: Where the pipe passes a fire-rated wall or ceiling, its rating is restored
# description: Plastic pipe melts out in a fire and leaves a hole for flames and smoke.
# custom:
#   subject: penetration
#   grade: hazard
#   stage: roughed-in
#   remedy: Have a listed collar, damper or firestop fitted as its listing says and the code office asks.
#   limits:
#     allowed: {dimension: choice, sense: one-of}
package policy.pipe.fire_rated_penetrations

import data.policy.penetrations
import rego.v2

limits := data.profile.pipe.fire_rated_penetrations

subjects contains gap if some gap in penetrations.gaps

subjects contains [n.id, ["systems", i, "pipe", j, "penetrations", k, "fire_protection"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	some k, n in p.penetrations
}

exempt contains outcome if some outcome in penetrations.outside

exempt contains [n.id, "it has no fire rating"] if {
	some s in input.systems
	some p in s.pipe
	some n in p.penetrations
	n.fire_rated == false
}

judged contains n.id if {
	some s in input.systems
	some p in s.pipe
	some n in p.penetrations
	n.id in penetrations.judged
	n.fire_rated == true
}

met contains n.id if {
	some s in input.systems
	some p in s.pipe
	some n in p.penetrations
	n.id in judged
	n.fire_protection in limits.allowed.any_of
}

deficient contains [n.id, ["systems", i, "pipe", j, "penetrations", k, "fire_protection"], "allowed"] if {
	some i, s in input.systems
	some j, p in s.pipe
	some k, n in p.penetrations
	n.id in judged
	is_string(n.fire_protection)
	not n.fire_protection in limits.allowed.any_of
}

missing contains gap if some gap in penetrations.unsaid

missing contains [n.id, ["systems", i, "pipe", j, "penetrations", k, "fire_rated"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	some k, n in p.penetrations
	not is_boolean(n.fire_rated)
}

missing contains [n.id, ["systems", i, "pipe", j, "penetrations", k, "fire_protection"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	some k, n in p.penetrations
	not is_string(n.fire_protection)
}
