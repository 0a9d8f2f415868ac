# METADATA
# title: Backer rod lies behind the sealant of wide joints
# description: Sealant poured into a wide gap sinks, sticks on three sides and tears.
# custom:
#   subject: joint
#   grade: required
#   stage: running
#   remedy: Rake out the sealant, press in backer rod, and seal again.
#   caution: Sealants and foams give off vapor; air the room and keep flames away.
#   limits:
#     kinds: {dimension: choice, sense: applies-to}
#     without: {dimension: length, sense: at-most}
package policy.sealing.backer_rod

import data.policy.routes
import rego.v2

limits := data.profile.sealing.backer_rod

joints contains r.id if {
	some r in input.entry_routes
	r.kind in limits.kinds.any_of
}

subjects contains gap if some gap in routes.unlisted

subjects contains [r.id, ["entry_routes", i, "backer_rod"]] if {
	some i, r in input.entry_routes
	r.id in joints
}

exempt contains [r.id, "the gap is narrow enough to do without"] if {
	some r in input.entry_routes
	r.id in joints
	r.gap_width.si <= limits.without.si
}

exempt contains [r.id, "no sealant was put into it"] if {
	some r in input.entry_routes
	r.id in joints
	is_string(r.treatment)
	not r.treatment in routes.shut
}

wide contains r.id if {
	some r in input.entry_routes
	r.id in joints
	r.treatment in routes.shut
	r.gap_width.si > limits.without.si
}

met contains r.id if {
	some r in input.entry_routes
	r.id in wide
	r.backer_rod == true
}

deficient contains [r.id, ["entry_routes", i, "backer_rod"]] if {
	some i, r in input.entry_routes
	r.id in wide
	r.backer_rod == false
}

missing contains [r.id, ["entry_routes", i, "treatment"]] if {
	some i, r in input.entry_routes
	r.id in joints
	not is_string(r.treatment)
}

missing contains [r.id, ["entry_routes", i, "gap_width"]] if {
	some i, r in input.entry_routes
	r.id in joints
	not is_number(r.gap_width.si)
}

missing contains [r.id, ["entry_routes", i, "backer_rod"]] if {
	some i, r in input.entry_routes
	r.id in joints
	not is_boolean(r.backer_rod)
}
