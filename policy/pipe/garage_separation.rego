# METADATA
# title: Where the pipe passes between garage and house, the gap is sealed and stops fire
# description: A gap to the garage lets fire and exhaust fumes into the house.
# custom:
#   subject: penetration
#   grade: hazard
#   stage: roughed-in
#   remedy: Seal the gap with the fireblocking that the code names, or have a listed device fitted.
#   limits:
#     allowed: {dimension: choice, sense: one-of}
package policy.pipe.garage_separation

import data.policy.penetrations
import rego.v2

limits := data.profile.pipe.garage_separation

subjects contains gap if some gap in penetrations.gaps

subjects contains [n.id, ["systems", i, "pipe", j, "penetrations", k, "sealed"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	some k, n in p.penetrations
}

exempt contains outcome if some outcome in penetrations.outside

between contains n.id if {
	some s in input.systems
	some p in s.pipe
	some n in p.penetrations
	n.garage_side == true
}

between contains n.id if {
	some s in input.systems
	some p in s.pipe
	some n in p.penetrations
	n.through == "garage-separation"
}

exempt contains [n.id, "it does not part garage and house"] if {
	some s in input.systems
	some p in s.pipe
	some n in p.penetrations
	n.garage_side == false
	is_string(n.through)
	n.through != "garage-separation"
}

exempt contains [n.id, "no garage is attached"] if {
	some s in input.systems
	some p in s.pipe
	some n in p.penetrations
	input.house.garage.attached == false
}

judged contains n.id if {
	some s in input.systems
	some p in s.pipe
	some n in p.penetrations
	n.id in penetrations.judged
	n.id in between
	input.house.garage.attached == true
}

met contains n.id if {
	some s in input.systems
	some p in s.pipe
	some n in p.penetrations
	n.id in judged
	n.sealed == true
	n.fire_protection in limits.allowed.any_of
}

deficient contains [n.id, ["systems", i, "pipe", j, "penetrations", k, "sealed"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	some k, n in p.penetrations
	n.id in judged
	n.sealed == false
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

missing contains [n.id, ["systems", i, "pipe", j, "penetrations", k, "through"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	some k, n in p.penetrations
	not is_string(n.through)
}

missing contains [n.id, ["systems", i, "pipe", j, "penetrations", k, "garage_side"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	some k, n in p.penetrations
	not n.through == "garage-separation"
	not is_boolean(n.garage_side)
}

missing contains [n.id, ["systems", i, "pipe", j, "penetrations", k, "sealed"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	some k, n in p.penetrations
	not is_boolean(n.sealed)
}

missing contains [n.id, ["systems", i, "pipe", j, "penetrations", k, "fire_protection"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	some k, n in p.penetrations
	not is_string(n.fire_protection)
}

missing contains [n.id, ["house", "garage", "attached"]] if {
	some s in input.systems
	some p in s.pipe
	some n in p.penetrations
	not is_boolean(input.house.garage.attached)
}
