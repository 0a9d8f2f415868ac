# METADATA
# description: |
#   Safety reminders shown with a job, from what its record contains. They are
#   no verdicts: they go with the work whatever the record says.
package policy.cautions

import rego.v2

show contains "Drilling or cutting concrete and block raises silica dust: use a shroud with dust collector or water, and a respirator where the plan calls for one." if {
	input.safety.concrete_drilled == true
}

show contains "Drilling or cutting concrete and block raises silica dust: use a shroud with dust collector or water, and a respirator where the plan calls for one." if {
	some s in input.systems
	count(s.suction_points) > 0
}

show contains "Primers, cements and sealants give off harmful, flammable vapor: air the space, keep flames away, keep the data sheets at hand." if {
	some s in input.systems
	count(s.pipe) > 0
}

show contains "Wiring is work for licensed people: cut the power and prove it dead before touching fan or disconnect." if {
	some s in input.systems
	s.powered_by == "fan"
}

show contains "Ladders and roofs: set and tie the ladder, keep three points of contact, stay off wet or icy roofs and away from power lines." if {
	some s in input.systems
	s.discharge.mounting in {"through-roof", "exterior-wall"}
}

show contains "Suction on the ground can pull flue gas back into the house: test every fuel-burning appliance with the system on; if it spills, switch off, open up and get help." if {
	count(input.house.combustion) > 0
}

show contains "Suspected asbestos: do not disturb it; stop until an accredited person has cleared the place." if {
	some h in input.house.hazards
	h.kind == "asbestos"
	h.state in {"suspected", "confirmed"}
}

show contains "Paint in houses from before 1978 may hold lead: the renovation rule applies to work that disturbs it." if {
	input.house.year_built < 1978
}

show contains "Crawlspaces and pits are confined: check the air, take a light, and never go in without a second person outside." if {
	some f in input.house.foundations
	f.kind == "crawlspace"
}

show contains "High radon: keep time inside short before the fan runs, air the work area, and log each worker's exposure." if {
	some t in input.measurements.tests
	t.phase == "before"
	t.result.si >= 3700
}
