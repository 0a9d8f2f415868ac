# METADATA
# title: The outlet of a chemical vapor system keeps its distance from every door and window
# description: Chemical vapor is held farther off than radon, and height does not make up for distance.
# custom:
#   subject: outlet and opening
#   grade: hazard
#   stage: roughed-in
#   remedy: Move the outlet until it is far enough from the door or window in a straight line.
#   limits:
#     minimum: {dimension: length, sense: at-least}
#     kinds: {dimension: choice, sense: applies-to}
#     contaminants: {dimension: choice, sense: applies-to}
package policy.exhaust.vapor_clearance

import data.policy.openings
import data.policy.systems
import rego.v2

limits := data.profile.exhaust.vapor_clearance

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains gap if some gap in openings.gaps

subjects contains [c.id, ["derived", "clearances", i, "distance"]] if some i, c in input.derived.clearances

exempt contains [id, "the job is not about chemical vapor"] if {
	some [id, _] in subjects
	is_string(input.job.contaminant)
	not input.job.contaminant in limits.contaminants.any_of
}

exempt contains [id, reason] if {
	some [id, reason] in systems.without_fan
	some [gap, _] in openings.gaps
	gap == id
}

exempt contains [c.id, reason] if {
	some c in input.derived.clearances
	some [system, reason] in systems.without_fan
	system == c.system
}

exempt contains [c.id, "it is neither door nor window"] if {
	some c in input.derived.clearances
	is_string(c.kind)
	not c.kind in limits.kinds.any_of
}

judged contains c.id if {
	input.job.contaminant in limits.contaminants.any_of
	some c in input.derived.clearances
	c.system in systems.with_fan
	c.kind in limits.kinds.any_of
}

met contains c.id if {
	some c in input.derived.clearances
	c.id in judged
	c.distance.si >= limits.minimum.si
}

deficient contains [c.id, ["derived", "clearances", i, "distance"], "minimum"] if {
	some i, c in input.derived.clearances
	c.id in judged
	c.distance.si < limits.minimum.si
}

missing contains [id, ["job", "contaminant"]] if {
	some [id, _] in subjects
	not is_string(input.job.contaminant)
}

missing contains gap if some gap in openings.gaps

missing contains [c.id, path] if {
	some c in input.derived.clearances
	some [system, path] in systems.unsaid
	system == c.system
}

missing contains [id, path] if some [id, "kind", path] in openings.untold

missing contains [c.id, ["derived", "clearances", i, "distance"]] if {
	some i, c in input.derived.clearances
	not is_number(c.distance.si)
}
