# METADATA
# title: Suspected asbestos that the work would disturb was cleared by an accredited person first
# description: Fibers set free by one cut stay in the house, and in the lungs of the crew and the family, for life.
# custom:
#   subject: hazard
#   grade: hazard
#   stage: planned
#   remedy: Stop. Leave the material alone until an accredited inspector has been consulted and has cleared the place.
#   caution: Suspected asbestos is not to be cut, drilled, swept or moved by anybody who is not accredited for it.
package policy.survey.asbestos_cleared

import rego.v2

subjects contains ["house", ["house", "hazards"]] if not is_array(input.house.hazards)

subjects contains [h.id, ["house", "hazards", i, "cleared_by_accredited"]] if some i, h in input.house.hazards

exempt contains [h.id, "it is not about asbestos"] if {
	some h in input.house.hazards
	is_string(h.kind)
	h.kind != "asbestos"
}

exempt contains [h.id, "it was ruled out or removed"] if {
	some h in input.house.hazards
	h.state in {"ruled-out", "abated"}
}

exempt contains [h.id, "the work does not touch it"] if {
	some h in input.house.hazards
	h.disturbed_by_work == false
}

touched contains h.id if {
	some h in input.house.hazards
	h.kind == "asbestos"
	h.state in {"suspected", "confirmed"}
	h.disturbed_by_work == true
}

met contains h.id if {
	some h in input.house.hazards
	h.id in touched
	h.cleared_by_accredited == true
}

deficient contains [h.id, ["house", "hazards", i, "cleared_by_accredited"]] if {
	some i, h in input.house.hazards
	h.id in touched
	h.cleared_by_accredited == false
}

missing contains [h.id, ["house", "hazards", i, "kind"]] if {
	some i, h in input.house.hazards
	not is_string(h.kind)
}

missing contains [h.id, ["house", "hazards", i, "state"]] if {
	some i, h in input.house.hazards
	not is_string(h.state)
}

missing contains [h.id, ["house", "hazards", i, "disturbed_by_work"]] if {
	some i, h in input.house.hazards
	not is_boolean(h.disturbed_by_work)
}

missing contains [h.id, ["house", "hazards", i, "cleared_by_accredited"]] if {
	some i, h in input.house.hazards
	not is_boolean(h.cleared_by_accredited)
}
