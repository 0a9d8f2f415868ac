# METADATA
# title: The suction below the slab holds in winter
# description: In frost the warm house pulls harder at the ground than on the day of the test; suction that was just enough turns round.
# custom:
#   subject: communication test
#   grade: recommended
#   stage: planned
#   remedy: Raise the suction at the weak hole, or test again on a cold day with all exhausts on.
#   limits:
#     holds: {dimension: choice, sense: one-of}
#     marginal: {dimension: choice, sense: one-of}
package policy.diagnostics.holds_in_winter

import rego.v2

limits := data.profile.diagnostics.holds_in_winter
subjects contains ["diagnostics", ["diagnostics", "communication_tests"]] if not is_array(input.diagnostics.communication_tests)

subjects contains [t.id, ["derived", "communication", i, "seasonal_verdict"]] if some i, t in input.diagnostics.communication_tests

# A neutral level that was assumed can count against a test only.
met contains c.id if {
	is_number(input.diagnostics.neutral_level.si)
	some c in input.derived.communication
	c.seasonal_verdict in limits.holds.any_of
}

deficient contains [c.id, ["derived", "communication", i, "seasonal_verdict"], "holds"] if {
	some i, c in input.derived.communication
	is_string(c.seasonal_verdict)
	not c.seasonal_verdict in limits.holds.any_of
	not c.seasonal_verdict in limits.marginal.any_of
}

undetermined contains [c.id, ["derived", "communication", i, "seasonal_verdict"], "the suction left in winter is too small to be sure of"] if {
	some i, c in input.derived.communication
	c.seasonal_verdict in limits.marginal.any_of
}

missing contains [c.id, ["diagnostics", "neutral_level"]] if {
	not is_number(input.diagnostics.neutral_level.si)
	some c in input.derived.communication
}

missing contains [c.id, ["derived", "communication", i, "stack_correction"]] if {
	some i, c in input.derived.communication
	not is_string(c.seasonal_verdict)
	not is_number(c.stack_correction.si)
}

missing contains [t.id, ["diagnostics", "communication_tests", i, "holes"]] if {
	some i, t in input.diagnostics.communication_tests
	not is_array(t.holes)
}

missing contains [t.id, ["diagnostics", "communication_tests", i, "holes"]] if {
	some i, t in input.diagnostics.communication_tests
	count(t.holes) == 0
}

missing contains [t.id, ["diagnostics", "communication_tests", i, "holes", j, "pressure"]] if {
	some i, t in input.diagnostics.communication_tests
	some j, h in t.holes
	not is_number(h.pressure.si)
}
