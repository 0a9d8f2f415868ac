# METADATA
# title: The inlet below a membrane is long enough, and longer where wet soil pulls the sheet down
# description: The sheet is drawn against a short inlet and shuts it like a lid.
# custom:
#   subject: suction point
#   grade: recommended
#   stage: roughed-in
#   remedy: Lay a longer perforated pipe under the sheet and join it to the suction pipe.
#   limits:
#     usual: {dimension: length, sense: at-least}
#     wet: {dimension: length, sense: at-least}
package policy.suction.perforated_length

import data.policy.points
import rego.v2

limits := data.profile.suction.perforated_length

subjects contains gap if some gap in points.gaps

subjects contains [p.id, ["systems", i, "suction_points", j, "perforated_length"]] if {
	some i, s in input.systems
	some j, p in s.suction_points
}

exempt contains outcome if some outcome in points.outside

exempt contains [p.id, "it does not draw from below a membrane"] if {
	some s in input.systems
	some p in s.suction_points
	is_string(p.through)
	p.through != "membrane"
}

judged contains p.id if {
	some s in input.systems
	some p in s.suction_points
	p.id in points.judged
	p.through == "membrane"
}

met contains p.id if {
	some s in input.systems
	some p in s.suction_points
	p.id in judged
	p.perforated_length.si >= limits.wet.si
}

met contains p.id if {
	some s in input.systems
	some p in s.suction_points
	p.id in judged
	p.membrane_may_stick == false
	p.perforated_length.si >= limits.usual.si
}

deficient contains [p.id, ["systems", i, "suction_points", j, "perforated_length"], "usual"] if {
	some i, s in input.systems
	some j, p in s.suction_points
	p.id in judged
	p.perforated_length.si < limits.usual.si
}

deficient contains [p.id, ["systems", i, "suction_points", j, "perforated_length"], "wet"] if {
	some i, s in input.systems
	some j, p in s.suction_points
	p.id in judged
	p.membrane_may_stick == true
	p.perforated_length.si >= limits.usual.si
	p.perforated_length.si < limits.wet.si
}

missing contains gap if some gap in points.unsaid

missing contains [p.id, ["systems", i, "suction_points", j, "through"]] if {
	some i, s in input.systems
	some j, p in s.suction_points
	not is_string(p.through)
}

missing contains [p.id, ["systems", i, "suction_points", j, "membrane_may_stick"]] if {
	some i, s in input.systems
	some j, p in s.suction_points
	not is_boolean(p.membrane_may_stick)
}

missing contains [p.id, ["systems", i, "suction_points", j, "perforated_length"]] if {
	some i, s in input.systems
	some j, p in s.suction_points
	not is_number(p.perforated_length.si)
}
