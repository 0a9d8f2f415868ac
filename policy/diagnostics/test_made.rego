# METADATA
# title: Suction was tried out across the slab that the system treats
# description: Without a test the first sign of footings or tight clay is a family that still breathes radon.
# custom:
#   subject: system
#   grade: recommended
#   stage: planned
#   remedy: Draw suction at one hole with a vacuum and read the pressure at others.
#   limits:
#     kinds: {dimension: choice, sense: applies-to}
package policy.diagnostics.test_made

import rego.v2

limits := data.profile.diagnostics.test_made
subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["diagnostics", "communication_tests"]] if some s in input.systems

exempt contains [s.id, "this kind of system does not draw through a slab"] if {
	some s in input.systems
	is_string(s.kind)
	not s.kind in limits.kinds.any_of
}

tested contains s.id if {
	some s in input.systems
	some area in s.foundations
	some t in input.diagnostics.communication_tests
	t.foundation == area
	count(t.holes) > 0
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

met contains s.id if {
	some s in input.systems
	s.kind in limits.kinds.any_of
	s.id in tested
}

deficient contains [s.id, ["diagnostics", "communication_tests"]] if {
	some s in input.systems
	s.kind in limits.kinds.any_of
	is_array(s.foundations)
	all_described
	not s.id in tested
}

missing contains [s.id, ["systems", i, "kind"]] if {
	some i, s in input.systems
	not is_string(s.kind)
}

missing contains [s.id, ["systems", i, "foundations"]] if {
	some i, s in input.systems
	not is_array(s.foundations)
}

missing contains [s.id, ["diagnostics", "communication_tests"]] if {
	some s in input.systems
	not is_array(input.diagnostics.communication_tests)
}

missing contains [s.id, ["diagnostics", "communication_tests", j, "foundation"]] if {
	some s in input.systems
	some j, t in input.diagnostics.communication_tests
	not is_string(t.foundation)
}

missing contains [s.id, ["diagnostics", "communication_tests", j, "holes"]] if {
	some s in input.systems
	some j, t in input.diagnostics.communication_tests
	not is_array(t.holes)
}
