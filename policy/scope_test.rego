package policy.scope_test

import data.policy.scope
import rego.v2

outside(bounds, job) := reasons if {
	reasons := {reason | some [_, reason] in scope.outside} with input as job with data.scopes as [object.union({"profile": "p"}, bounds)]
}

test_storeys if {
	count(outside({"storeys_at_most": 3}, {"house": {"storeys": 4}})) == 1
	count(outside({"storeys_at_most": 3}, {"house": {"storeys": 3}})) == 0
}

test_contaminant if {
	count(outside({"contaminants": ["radon"]}, {"job": {"contaminant": "chemical-vapor"}})) == 1
	count(outside({"contaminants": ["radon"]}, {"job": {}})) == 0
	count(outside({"contaminants": ["radon"]}, {"job": {"contaminant": "both"}})) == 0
	count(outside({"contaminants": ["chemical-vapor"]}, {"job": {"contaminant": "both"}})) == 0
	count(outside({"contaminants": ["chemical-vapor"]}, {"job": {"contaminant": "radon"}})) == 1
}

test_kind_of_building if {
	count(outside({"house_kinds": ["detached"]}, {"house": {"kind": "school"}})) == 1
	count(outside({"house_kinds": ["detached"]}, {"house": {}})) == 0
}

test_new_houses if {
	count(outside({"new_houses": "only"}, {"house": {"new_construction": false}})) == 1
	count(outside({"new_houses": "never"}, {"house": {"new_construction": true}})) == 1
	count(outside({"new_houses": "only"}, {"house": {}})) == 0
}

test_kind_of_system if {
	depressurization := {"system_kinds": ["sub-slab", "drain-tile"]}
	count(outside(depressurization, {"systems": [{"kind": "heat-recovery-ventilation"}]})) == 1
	count(outside(depressurization, {"systems": [{"kind": "heat-recovery-ventilation"}, {"kind": "sub-slab"}]})) == 0
	count(outside(depressurization, {"systems": [{"kind": "heat-recovery-ventilation"}, {}]})) == 0
	count(outside(depressurization, {"systems": []})) == 0
	count(outside(depressurization, {})) == 0
}

old(purpose, installed) := {"job": {"purpose": purpose, "existing_system": {"installed": {"si": installed}}}}

# 1735689600 is the first second of 2025.
test_older_system if {
	from := {"installed_from": {"si": 1735689600}}
	count(outside(from, old("inspection", 1735689599))) == 1
	count(outside(from, old("inspection", 1735689600))) == 0
	count(outside(from, old("new-installation", 1735689599))) == 0
	count(outside(from, {"job": {"purpose": "inspection"}})) == 0
	count(outside(from, {"job": {"existing_system": {"installed": {"si": 1735689599}}}})) == 0
}
