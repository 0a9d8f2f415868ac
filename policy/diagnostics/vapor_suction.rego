# METADATA
# title: Every point below the slab of a chemical vapor system is under suction in the worst case
# description: Vapor that comes up on the coldest night with all exhausts running harms just as much.
# custom:
#   subject: test hole
#   grade: hazard
#   stage: running
#   remedy: Raise the suction until the far points hold, and test them again with all exhausts on.
#   caution: Chemical vapor calls for people trained for it; air the work area and watch for headache or dizziness.
#   limits:
#     most: {dimension: pressure, sense: at-most}
#     contaminants: {dimension: choice, sense: applies-to}
package policy.diagnostics.vapor_suction

import rego.v2

limits := data.profile.diagnostics.vapor_suction
subjects contains ["diagnostics", ["diagnostics", "communication_tests"]] if not is_array(input.diagnostics.communication_tests)

subjects contains [t.id, ["diagnostics", "communication_tests", i, "holes"]] if {
	some i, t in input.diagnostics.communication_tests
	not is_array(t.holes)
}

subjects contains [h.id, ["diagnostics", "communication_tests", i, "holes", j, "pressure"]] if {
	some i, t in input.diagnostics.communication_tests
	some j, h in t.holes
}

exempt contains [id, "the job is not about chemical vapor"] if {
	some [id, _] in subjects
	is_string(input.job.contaminant)
	not input.job.contaminant in limits.contaminants.any_of
}

asked if input.job.contaminant in limits.contaminants.any_of

# Smoke counts where it was seen in weather as cold as the design weather.
smoke_in_the_cold contains h.id if {
	some t in input.diagnostics.communication_tests
	t.outdoor_temperature.si <= input.house.winter_design_temperature.si
	some h in t.holes
	h.smoke == "down"
}

with_exhausts contains h.id if {
	some t in input.diagnostics.communication_tests
	t.exhausts_running == true
	some h in t.holes
}

# A neutral level that was assumed can count against a hole only.
strong contains h.id if {
	is_number(input.diagnostics.neutral_level.si)
	some h in input.derived.holes
	h.design_pressure.si <= limits.most.si
}

weak contains h.id if {
	some h in input.derived.holes
	h.design_pressure.si > limits.most.si
}

met contains id if {
	asked
	some id in with_exhausts
	id in (strong | smoke_in_the_cold)
}

deficient contains [h.id, ["diagnostics", "communication_tests", i, "holes", j, "pressure"], "most"] if {
	asked
	some i, t in input.diagnostics.communication_tests
	some j, h in t.holes
	h.id in weak
	not h.id in smoke_in_the_cold
}

undetermined contains [h.id, ["diagnostics", "communication_tests", i, "exhausts_running"], "the exhausts of the house did not run during the test"] if {
	asked
	some i, t in input.diagnostics.communication_tests
	t.exhausts_running == false
	some h in t.holes
	h.id in (strong | smoke_in_the_cold)
}

missing contains [id, ["job", "contaminant"]] if {
	some [id, _] in subjects
	not is_string(input.job.contaminant)
}

missing contains [h.id, ["diagnostics", "communication_tests", i, "exhausts_running"]] if {
	some i, t in input.diagnostics.communication_tests
	not is_boolean(t.exhausts_running)
	some h in t.holes
}

missing contains [h.id, ["diagnostics", "neutral_level"]] if {
	not is_number(input.diagnostics.neutral_level.si)
	some h in input.derived.holes
}

missing contains [h.id, ["derived", "holes", i, "design_pressure"]] if {
	some i, h in input.derived.holes
	not is_number(h.design_pressure.si)
}
