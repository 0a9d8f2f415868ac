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

show contains "Sealants, foams and adhesives give off vapor that can make people ill: air the space, keep flames away, and keep infants and the sick out until the smell is gone." if {
	some r in input.entry_routes
	r.material in {"urethane-caulk", "silicone", "expanding-foam"}
}

show contains "Sealants, foams and adhesives give off vapor that can make people ill: air the space, keep flames away, and keep infants and the sick out until the smell is gone." if {
	some s in input.systems
	s.kind == "sub-membrane"
}

show contains "A sump holds water and current: unplug the pump and prove it dead before reaching in, and never leave the pit open where a child can fall in." if {
	some r in input.entry_routes
	r.kind == "sump"
}

show contains "Before drilling a slab find out what lies in and below it: heating pipes, wires, gas, drains, and tensioned cables that can kill when cut; where in doubt ask whoever built it or have it scanned." if {
	some s in input.systems
	some p in s.suction_points
	p.through == "slab"
}

show contains "Digging beside a foundation: have buried lines marked first, shore what can cave in, and stay out of an unshored trench." if {
	some s in input.systems
	some p in s.suction_points
	p.through == "wall-from-outside"
}

show contains "Suction on block walls or on the air of a crawlspace draws much air out of the house: test fuel-burning appliances again in the cold season, and have carbon monoxide alarms." if {
	some s in input.systems
	s.kind in {"block-wall", "crawlspace-depressurization"}
}

show contains "More outdoor air in a crawlspace can freeze pipes and cool the floor: insulate them, and ask a plumber where in doubt." if {
	some s in input.systems
	s.kind == "crawlspace-ventilation"
}

show contains "Holes and notches in joists, beams and studs weaken them: stay within what the local code lets a plumber cut, and ask an engineer before cutting trusses or beams." if {
	some s in input.systems
	some p in s.pipe
	some h in p.penetrations
	h.through in {"floor", "ceiling", "roof"}
}

show contains "Chemical vapor site: tell the workers which chemicals are there, choose their gear for those chemicals, and ask whether the rules for hazardous-waste work apply." if {
	input.job.contaminant in {"chemical-vapor", "both"}
}

show contains "Gas leak suspected: touch no switch, get everybody out, and call the gas company from outside." if {
	some h in input.house.hazards
	h.kind == "gas-leak"
	h.state in {"suspected", "confirmed"}
}

show contains "Unsafe wiring: stay clear, cut the power if that is safe, and leave the repair to a licensed electrician." if {
	some h in input.house.hazards
	h.kind == "wiring"
	h.state in {"suspected", "confirmed"}
}

show contains "Unsound structure: keep out from below it until a qualified person has looked at it." if {
	some h in input.house.hazards
	h.kind == "structure"
	h.state in {"suspected", "confirmed"}
}

show contains "Sewage or mold: do not stir it up, keep food and hands apart from it, and leave larger cleanups to trained people." if {
	some h in input.house.hazards
	h.kind in {"sewage", "mold"}
	h.state in {"suspected", "confirmed"}
}

show contains "A respirator protects only after fit test and training, and only with the right cartridge; it does not help where oxygen is short." if {
	input.safety.respirators_used == true
}
