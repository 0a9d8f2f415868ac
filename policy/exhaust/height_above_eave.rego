# METADATA
# title: The outlet is above the eave
# description: Gas let out under the eave is caught by the overhang and gets into attic vents and upper windows.
# custom:
#   subject: outlet
#   grade: required
#   stage: roughed-in
#   remedy: Carry the pipe past the eave, so that its end stands above it.
#   caution: Work from a ladder that is set and tied, away from power lines.
#   limits:
#     above: {dimension: length, sense: more-than}
package policy.exhaust.height_above_eave

import data.policy.systems
import rego.v2

above := data.profile.exhaust.height_above_eave.above.si

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "discharge", "height_above_eave"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

met contains d.id if {
	some d in input.derived.discharges
	d.id in systems.with_fan
	d.height_above_eave.si > above
}

deficient contains [d.id, ["derived", "discharges", i, "height_above_eave"], "above"] if {
	some i, d in input.derived.discharges
	d.id in systems.with_fan
	d.height_above_eave.si <= above
}

missing contains gap if some gap in systems.unsaid

missing contains [d.id, ["derived", "discharges", i, "height_above_eave"]] if {
	some i, d in input.derived.discharges
	not is_number(d.height_above_eave.si)
}
