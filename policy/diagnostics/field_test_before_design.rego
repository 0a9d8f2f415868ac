# METADATA
# title: Suction below the slab was tested before design, with weather and exhausts on record
# description: A large or shared building hides footings and air leaks that a guess does not find.
# custom:
#   subject: diagnostics
#   grade: required
#   stage: planned
#   remedy: Make the test before the design, and note the weather and which exhausts ran.
#   limits:
#     spared: {dimension: choice, sense: not-for}
package policy.diagnostics.field_test_before_design

import rego.v2

limits := data.profile.diagnostics.field_test_before_design
subjects contains ["diagnostics", ["diagnostics", "communication_tests"]]

exempt contains [id, "it is optional for radon work in a single-family home"] if {
	some [id, _] in subjects
	input.house.kind in limits.spared.any_of
	input.job.contaminant == "radon"
}

exempt contains [id, "it is asked of existing buildings"] if {
	some [id, _] in subjects
	input.house.new_construction == true
}

not_spared if {
	is_string(input.house.kind)
	not input.house.kind in limits.spared.any_of
}

not_spared if input.job.contaminant in {"chemical-vapor", "both"}

asked if {
	not_spared
	input.house.new_construction == false
}

before contains t.id if {
	some t in input.diagnostics.communication_tests
	t.on.si <= input.job.dates.work_started.si
}

later contains t.id if {
	some t in input.diagnostics.communication_tests
	t.on.si > input.job.dates.work_started.si
}

met contains id if {
	asked
	some [id, _] in subjects
	some t in input.diagnostics.communication_tests
	t.id in before
	is_number(t.outdoor_temperature.si)
	is_boolean(t.exhausts_running)
}

deficient contains [id, path] if {
	asked
	some [id, path] in subjects
	count(input.diagnostics.communication_tests) == count(later)
}

missing contains [id, ["house", "kind"]] if {
	some [id, _] in subjects
	not is_string(input.house.kind)
}

missing contains [id, ["job", "contaminant"]] if {
	some [id, _] in subjects
	not is_string(input.job.contaminant)
}

missing contains [id, ["house", "new_construction"]] if {
	some [id, _] in subjects
	not is_boolean(input.house.new_construction)
}

missing contains [id, path] if {
	some [id, path] in subjects
	not is_array(input.diagnostics.communication_tests)
}

missing contains [id, ["job", "dates", "work_started"]] if {
	some [id, _] in subjects
	not is_number(input.job.dates.work_started.si)
}

missing contains [id, ["diagnostics", "communication_tests", i, "on"]] if {
	some [id, _] in subjects
	some i, t in input.diagnostics.communication_tests
	not is_number(t.on.si)
}

missing contains [id, ["diagnostics", "communication_tests", i, "outdoor_temperature"]] if {
	some [id, _] in subjects
	some i, t in input.diagnostics.communication_tests
	not is_number(t.outdoor_temperature.si)
}

missing contains [id, ["diagnostics", "communication_tests", i, "exhausts_running"]] if {
	some [id, _] in subjects
	some i, t in input.diagnostics.communication_tests
	not is_boolean(t.exhausts_running)
}
