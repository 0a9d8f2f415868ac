# METADATA
# title: A job that replaces the fan of an older system also corrects outlet and fan place
# description: The day the fan is off is the day to mend an outlet beside a window; nobody comes back for it later.
# custom:
#   subject: system
#   grade: required
#   stage: running
#   remedy: Raise the outlet and move the fan to where a new system would have them, as part of this job.
#   caution: Wiring and work on a running fan are for licensed people; cut the power and prove it dead first.
#   limits:
#     installed_before: {dimension: date, sense: less-than}
#     height: {dimension: length, sense: at-least}
#     places: {dimension: choice, sense: one-of}
package policy.fan.replacement

import data.policy.systems
import rego.v2

limits := data.profile.fan.replacement

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "fan", "place"]] if some i, s in input.systems

replaced if input.job.purpose == "fan-replacement"

replaced if "fan" in input.job.existing_system.parts_altered

exempt contains outcome if some outcome in systems.without_fan

exempt contains [s.id, "a job of this purpose replaces no fan"] if {
	some s in input.systems
	input.job.purpose in {"new-installation", "temporary-system", "activation-of-rough-in", "inspection"}
}

exempt contains [s.id, "the fan was not replaced"] if {
	some s in input.systems
	is_string(input.job.purpose)
	is_array(input.job.existing_system.parts_altered)
	not replaced
}

exempt contains [s.id, "the system is not that old"] if {
	some s in input.systems
	input.job.existing_system.installed.si >= limits.installed_before.si
}

judged contains s.id if {
	replaced
	input.job.existing_system.installed.si < limits.installed_before.si
	some s in input.systems
	s.id in systems.with_fan
}

high contains d.id if {
	some d in input.derived.discharges
	d.height_above_grade.si >= limits.height.si
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	s.id in high
	s.fan.place in limits.places.any_of
}

deficient contains [d.id, ["derived", "discharges", i, "height_above_grade"], "height"] if {
	some i, d in input.derived.discharges
	d.id in judged
	d.height_above_grade.si < limits.height.si
}

deficient contains [s.id, ["systems", i, "fan", "place"], "places"] if {
	some i, s in input.systems
	s.id in judged
	is_string(s.fan.place)
	not s.fan.place in limits.places.any_of
}

missing contains gap if some gap in systems.unsaid

missing contains [s.id, ["job", "purpose"]] if {
	some s in input.systems
	not is_string(input.job.purpose)
}

missing contains [s.id, ["job", "existing_system", "parts_altered"]] if {
	some s in input.systems
	not replaced
	not is_array(input.job.existing_system.parts_altered)
}

missing contains [s.id, ["job", "existing_system", "installed"]] if {
	some s in input.systems
	not is_number(input.job.existing_system.installed.si)
}

missing contains [s.id, ["systems", i, "fan", "place"]] if {
	some i, s in input.systems
	not is_string(s.fan.place)
}

missing contains [d.id, ["derived", "discharges", i, "height_above_grade"]] if {
	some i, d in input.derived.discharges
	not is_number(d.height_above_grade.si)
}
