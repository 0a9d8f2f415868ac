# METADATA
# title: A fan that pushes air into the house has a screened intake, and the owner knows how to clean it
# description: Leaves and lint choke an intake within a season, and then the system holds nothing back.
# custom:
#   subject: fan
#   grade: required
#   stage: closeout
#   remedy: Fit a screen or filter that comes out for cleaning, and show the owner how.
#   limits:
#     kinds: {dimension: choice, sense: applies-to}
package policy.fan.intake_screened

import rego.v2

kinds := data.profile.fan.intake_screened.kinds.any_of

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "fan", "intake_screened"]] if some i, s in input.systems

exempt contains [s.id, "this system pushes no air into the house"] if {
	some s in input.systems
	is_string(s.kind)
	not s.kind in kinds
}

exempt contains [s.id, "no fan drives this system"] if {
	some s in input.systems
	is_string(s.powered_by)
	s.powered_by != "fan"
}

pushing contains s.id if {
	some s in input.systems
	s.kind in kinds
	s.powered_by == "fan"
}

met contains s.id if {
	some s in input.systems
	s.id in pushing
	s.fan.intake_screened == true
	s.fan.intake_care_told == true
}

deficient contains [s.id, ["systems", i, "fan", "intake_screened"]] if {
	some i, s in input.systems
	s.id in pushing
	s.fan.intake_screened == false
}

deficient contains [s.id, ["systems", i, "fan", "intake_care_told"]] if {
	some i, s in input.systems
	s.id in pushing
	s.fan.intake_care_told == false
}

missing contains [s.id, ["systems", i, "kind"]] if {
	some i, s in input.systems
	not is_string(s.kind)
}

missing contains [s.id, ["systems", i, "powered_by"]] if {
	some i, s in input.systems
	not is_string(s.powered_by)
}

missing contains [s.id, ["systems", i, "fan", "intake_screened"]] if {
	some i, s in input.systems
	not is_boolean(s.fan.intake_screened)
}

missing contains [s.id, ["systems", i, "fan", "intake_care_told"]] if {
	some i, s in input.systems
	not is_boolean(s.fan.intake_care_told)
}
