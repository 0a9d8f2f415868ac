# METADATA
# title: There are enough test points for a chemical vapor system
# description: Chemical vapor harms at levels that nobody smells; each slab and each membrane has to show that it is under suction.
# custom:
#   subject: foundation area
#   grade: required
#   stage: running
#   remedy: Drill test points until each slab and each membrane has one and the house has enough, far corners included.
#   limits:
#     house: {dimension: number, sense: at-least}
#     slab: {dimension: area, sense: more-than}
#     slabs: {dimension: choice, sense: one-of}
#     contaminants: {dimension: choice, sense: applies-to}
package policy.diagnostics.vapor_test_points

import rego.v2

limits := data.profile.diagnostics.vapor_test_points
subjects contains ["diagnostics", ["diagnostics", "communication_tests"]]

subjects contains [f.id, ["house", "foundations", i]] if some i, f in input.house.foundations

exempt contains [id, "the job is not about chemical vapor"] if {
	some [id, _] in subjects
	is_string(input.job.contaminant)
	not input.job.contaminant in limits.contaminants.any_of
}

exempt contains [f.id, "the slab is that small"] if {
	some f in input.house.foundations
	f.kind in limits.slabs.any_of
	f.footprint.si <= limits.slab.si
}

exempt contains [f.id, "it has neither slab nor membrane"] if {
	some f in input.house.foundations
	is_string(f.kind)
	not f.kind in limits.slabs.any_of
	membranes_known
	not f.id in under_membrane
}

under_membrane contains area if {
	some s in input.systems
	s.kind == "sub-membrane"
	some area in s.foundations
}

membranes_known if {
	is_array(input.systems)
	count(input.systems) == count({s.id |
		some s in input.systems
		is_string(s.kind)
		is_array(s.foundations)
	})
}

asked if input.job.contaminant in limits.contaminants.any_of

areas contains f.id if {
	some f in input.house.foundations
	f.kind in limits.slabs.any_of
	f.footprint.si > limits.slab.si
}

areas contains f.id if {
	some f in input.house.foundations
	is_string(f.kind)
	not f.kind in limits.slabs.any_of
	f.id in under_membrane
}

points contains [t.foundation, h.id] if {
	some t in input.diagnostics.communication_tests
	some h in t.holes
}

reached contains area if some [area, _] in points

all_points contains h.id if {
	some t in input.diagnostics.communication_tests
	some h in t.holes
}

# True when every test says where it was made and lists its holes.
all_described if {
	is_array(input.diagnostics.communication_tests)
	count(input.diagnostics.communication_tests) == count({t.id |
		some t in input.diagnostics.communication_tests
		is_string(t.foundation)
		is_array(t.holes)
	})
}

met contains "diagnostics" if {
	asked
	count(all_points) >= limits.house.si
}

met contains id if {
	asked
	some id in areas
	id in reached
}

deficient contains ["diagnostics", ["diagnostics", "communication_tests"], "house"] if {
	asked
	all_described
	count(all_points) < limits.house.si
}

deficient contains [f.id, ["house", "foundations", i, "footprint"], "slab"] if {
	asked
	all_described
	some i, f in input.house.foundations
	f.id in areas
	not f.id in reached
}

missing contains [id, ["job", "contaminant"]] if {
	some [id, _] in subjects
	not is_string(input.job.contaminant)
}

missing contains [id, ["diagnostics", "communication_tests"]] if {
	some [id, _] in subjects
	not is_array(input.diagnostics.communication_tests)
}

missing contains [id, ["diagnostics", "communication_tests", i, "holes"]] if {
	some [id, _] in subjects
	some i, t in input.diagnostics.communication_tests
	not is_array(t.holes)
}

missing contains [id, ["diagnostics", "communication_tests", i, "foundation"]] if {
	some [id, _] in subjects
	some i, t in input.diagnostics.communication_tests
	not is_string(t.foundation)
}

missing contains [f.id, ["house", "foundations", i, "kind"]] if {
	some i, f in input.house.foundations
	not is_string(f.kind)
}

# Areas of which it takes the systems to know whether a membrane lies there.
bare contains f.id if {
	some f in input.house.foundations
	is_string(f.kind)
	not f.kind in limits.slabs.any_of
}

missing contains [id, ["systems"]] if {
	some id in bare
	not is_array(input.systems)
}

missing contains [id, ["systems", i, "kind"]] if {
	some id in bare
	some i, s in input.systems
	not is_string(s.kind)
}

missing contains [id, ["systems", i, "foundations"]] if {
	some id in bare
	some i, s in input.systems
	not is_array(s.foundations)
}

missing contains [f.id, ["house", "foundations", i, "footprint"]] if {
	some i, f in input.house.foundations
	not is_number(f.footprint.si)
}
