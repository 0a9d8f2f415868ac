# METADATA
# title: The client was told in writing of every unsafe condition
# description: People go on using a room with bad wiring or leaking gas until somebody tells them not to.
# custom:
#   subject: hazard
#   grade: hazard
#   stage: planned
#   remedy: Tell the client in writing now, and stop work near the danger.
#   caution: Keep people away from the danger; gas, wiring and structure are for licensed people.
package policy.survey.unsafe_told

import rego.v2

subjects contains ["house", ["house", "hazards"]] if not is_array(input.house.hazards)

subjects contains [h.id, ["house", "hazards", i, "client_told"]] if some i, h in input.house.hazards

exempt contains [h.id, "it was ruled out"] if {
	some h in input.house.hazards
	h.state == "ruled-out"
}

real contains h.id if {
	some h in input.house.hazards
	h.state in {"suspected", "confirmed", "abated"}
}

met contains h.id if {
	some h in input.house.hazards
	h.id in real
	h.client_told == true
}

deficient contains [h.id, ["house", "hazards", i, "client_told"]] if {
	some i, h in input.house.hazards
	h.id in real
	h.client_told == false
}

missing contains [h.id, ["house", "hazards", i, "state"]] if {
	some i, h in input.house.hazards
	not is_string(h.state)
}

missing contains [h.id, ["house", "hazards", i, "client_told"]] if {
	some i, h in input.house.hazards
	not is_boolean(h.client_told)
}
