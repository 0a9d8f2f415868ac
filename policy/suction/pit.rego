# METADATA
# title: Soil was taken out below the hole in the slab, and how much is recorded
# description: Without a hollow the pipe draws on a spot no wider than itself.
# custom:
#   subject: suction point
#   grade: required
#   stage: roughed-in
#   remedy: Dig out a pit through the hole and write down how much came out.
#   caution: Soil gas in the hole can be high in radon; air the room while it is open.
#   limits:
#     above: {dimension: volume, sense: more-than}
#     through: {dimension: choice, sense: applies-to}
package policy.suction.pit

import data.policy.points
import rego.v2

limits := data.profile.suction.pit

subjects contains gap if some gap in points.gaps

subjects contains [p.id, ["systems", i, "suction_points", j, "pit_volume"]] if {
	some i, s in input.systems
	some j, p in s.suction_points
}

exempt contains outcome if some outcome in points.outside

exempt contains [p.id, "there is no pit where the pipe enters this way"] if {
	some s in input.systems
	some p in s.suction_points
	is_string(p.through)
	not p.through in limits.through.any_of
}

judged contains p.id if {
	some s in input.systems
	some p in s.suction_points
	p.id in points.judged
	p.through in limits.through.any_of
}

met contains p.id if {
	some s in input.systems
	some p in s.suction_points
	p.id in judged
	p.pit_volume.si > limits.above.si
}

deficient contains [p.id, ["systems", i, "suction_points", j, "pit_volume"], "above"] if {
	some i, s in input.systems
	some j, p in s.suction_points
	p.id in judged
	p.pit_volume.si <= limits.above.si
}

missing contains gap if some gap in points.unsaid

missing contains [p.id, ["systems", i, "suction_points", j, "through"]] if {
	some i, s in input.systems
	some j, p in s.suction_points
	not is_string(p.through)
}

missing contains [p.id, ["systems", i, "suction_points", j, "pit_volume"]] if {
	some i, s in input.systems
	some j, p in s.suction_points
	not is_number(p.pit_volume.si)
}
