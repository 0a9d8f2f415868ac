# METADATA
# title: A qualified person went over the finished system and what was found was put right
# description: A loose clamp or a missing label is found in five minutes on the day, and never afterwards.
# custom:
#   subject: system
#   grade: required
#   stage: closeout
#   remedy: Have a qualified person go over the system by the list, and put right what is found before it is handed over.
#   limits:
#     kinds: {dimension: choice, sense: applies-to}
package policy.survey.finished_system_inspected

import rego.v2

limits := data.profile.survey.finished_system_inspected
subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "commissioning", "inspected"]] if some i, s in input.systems

met contains s.id if {
	some s in input.systems
	s.commissioning.inspected == true
	s.commissioning.defects_fixed == true
	s.commissioning.inspected_by in credentialed
}

credentialed contains c.id if {
	some c in input.job.crew
	is_string(c.credential)
	c.credential_kind in limits.kinds.any_of
}

deficient contains [s.id, ["systems", i, "commissioning", "inspected"]] if {
	some i, s in input.systems
	s.commissioning.inspected == false
}

deficient contains [s.id, ["systems", i, "commissioning", "defects_fixed"]] if {
	some i, s in input.systems
	s.commissioning.defects_fixed == false
}

deficient contains [s.id, ["job", "crew", j, "credential_kind"], "kinds"] if {
	some s in input.systems
	some j, c in input.job.crew
	c.id == s.commissioning.inspected_by
	is_string(c.credential_kind)
	not c.credential_kind in limits.kinds.any_of
}

missing contains [s.id, ["systems", i, "commissioning", "inspected"]] if {
	some i, s in input.systems
	not is_boolean(s.commissioning.inspected)
}

missing contains [s.id, ["systems", i, "commissioning", "defects_fixed"]] if {
	some i, s in input.systems
	not is_boolean(s.commissioning.defects_fixed)
}

missing contains [s.id, ["systems", i, "commissioning", "inspected_by"]] if {
	some i, s in input.systems
	not is_string(s.commissioning.inspected_by)
}

missing contains [s.id, ["job", "crew", j, "credential"]] if {
	some s in input.systems
	some j, c in input.job.crew
	c.id == s.commissioning.inspected_by
	not is_string(c.credential)
}

missing contains [s.id, ["job", "crew", j, "credential_kind"]] if {
	some s in input.systems
	some j, c in input.job.crew
	c.id == s.commissioning.inspected_by
	not is_string(c.credential_kind)
}
