# METADATA
# title: Smoke and meter tell the same story at each test hole
# description: Smoke that rises where the meter shows suction means that one of the two was not done.
# custom:
#   subject: communication test
#   grade: required
#   stage: roughed-in
#   remedy: Test the hole again, with the meter zeroed and the smoke held close.
#   limits:
#     below: {dimension: pressure, sense: at-least}
#     above: {dimension: pressure, sense: at-most}
package policy.physics.smoke_agrees

import rego.v2

limits := data.profile.physics.smoke_agrees

subjects contains ["diagnostics", ["diagnostics", "communication_tests"]] if not is_array(input.diagnostics.communication_tests)

subjects contains [t.id, ["diagnostics", "communication_tests", i, "holes"]] if some i, t in input.diagnostics.communication_tests

against contains h.id if {
	some t in input.diagnostics.communication_tests
	some h in t.holes
	h.smoke == "up"
	h.pressure.si < limits.below.si
}

against contains h.id if {
	some t in input.diagnostics.communication_tests
	some h in t.holes
	h.smoke == "down"
	h.pressure.si > limits.above.si
}

told contains h.id if {
	some t in input.diagnostics.communication_tests
	some h in t.holes
	is_string(h.smoke)
	is_number(h.pressure.si)
}

met contains t.id if {
	some t in input.diagnostics.communication_tests
	count(t.holes) > 0
	count({h.id | some h in t.holes; not h.id in told}) == 0
	count({h.id | some h in t.holes; h.id in against}) == 0
	limits.below.si <= limits.above.si
}

deficient contains [t.id, ["diagnostics", "communication_tests", i, "holes", j, "smoke"]] if {
	some i, t in input.diagnostics.communication_tests
	some j, h in t.holes
	h.id in against
}

# Holes at which only one of the two was recorded, and holes at which neither was.
alone contains h.id if {
	some t in input.diagnostics.communication_tests
	some h in t.holes
	is_string(h.smoke)
	not is_number(h.pressure.si)
}

alone contains h.id if {
	some t in input.diagnostics.communication_tests
	some h in t.holes
	is_number(h.pressure.si)
	not is_string(h.smoke)
}

silent contains h.id if {
	some t in input.diagnostics.communication_tests
	some h in t.holes
	not is_string(h.smoke)
	not is_number(h.pressure.si)
}

undetermined contains [t.id, ["diagnostics", "communication_tests", i, "holes"], "smoke and meter are not both recorded at every hole, so there is nothing to compare"] if {
	some i, t in input.diagnostics.communication_tests
	count({h.id | some h in t.holes; h.id in silent}) == 0
	count({h.id | some h in t.holes; h.id in alone}) > 0
}

missing contains [t.id, ["diagnostics", "communication_tests", i, "holes", j, "smoke"]] if {
	some i, t in input.diagnostics.communication_tests
	some j, h in t.holes
	h.id in silent
}

missing contains [t.id, ["diagnostics", "communication_tests", i, "holes", j, "pressure"]] if {
	some i, t in input.diagnostics.communication_tests
	some j, h in t.holes
	h.id in silent
}
