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
