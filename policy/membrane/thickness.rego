# METADATA
# title: The membrane is thick enough for its material
# description: Thin sheet tears on the first stone, and a tear under a box of books is never found.
# custom:
#   subject: membrane
#   grade: required
#   stage: running
#   remedy: Lay thicker sheet, or a cross-laminated one.
#   caution: Enter a crawlspace only with a second person outside, light, and air that was checked.
#   limits:
#     plain: {dimension: length, sense: at-least}
#     cross_laminated: {dimension: length, sense: at-least}
package policy.membrane.thickness

import data.policy.membranes
import rego.v2

limits := data.profile.membrane.thickness

subjects contains gap if some gap in membranes.unlisted

subjects contains [s.id, ["systems", i, "membrane", "thickness"]] if some i, s in input.systems

exempt contains outcome if some outcome in membranes.none

plain contains s.id if {
	some s in input.systems
	s.id in membranes.laid
	s.membrane.material in {"polyethylene", "reinforced"}
}

crossed contains s.id if {
	some s in input.systems
	s.id in membranes.laid
	s.membrane.material == "cross-laminated"
}

met contains s.id if {
	some s in input.systems
	s.id in plain
	s.membrane.thickness.si >= limits.plain.si
}

met contains s.id if {
	some s in input.systems
	s.id in crossed
	s.membrane.thickness.si >= limits.cross_laminated.si
}

deficient contains [s.id, ["systems", i, "membrane", "thickness"], "plain"] if {
	some i, s in input.systems
	s.id in plain
	s.membrane.thickness.si < limits.plain.si
}

deficient contains [s.id, ["systems", i, "membrane", "thickness"], "cross_laminated"] if {
	some i, s in input.systems
	s.id in crossed
	s.membrane.thickness.si < limits.cross_laminated.si
}

undetermined contains [s.id, ["systems", i, "membrane", "material"], "there is no thickness for this material"] if {
	some i, s in input.systems
	s.id in membranes.laid
	s.membrane.material == "other"
}

missing contains gap if some gap in membranes.unsaid

missing contains [s.id, ["systems", i, "membrane", "material"]] if {
	some i, s in input.systems
	not is_string(s.membrane.material)
}

missing contains [s.id, ["systems", i, "membrane", "thickness"]] if {
	some i, s in input.systems
	not is_number(s.membrane.thickness.si)
}
