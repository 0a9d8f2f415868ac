# METADATA
# title: Inspection before design, oversight on site and inspection of the finished system are on record
# description: When something goes wrong, the record shows who looked and when; without it nobody did.
# custom:
#   subject: closeout papers
#   grade: required
#   stage: closeout
#   remedy: Put the three records into the job file.
package policy.survey.inspections_recorded

import rego.v2

subjects contains ["closeout", ["closeout", "records", "design_inspection"]]

undated contains s.id if {
	some s in input.systems
	not is_number(s.commissioning.inspected_on.si)
}

met contains id if {
	some [id, _] in subjects
	input.closeout.records.design_inspection == true
	input.closeout.records.oversight_recorded == true
	count(input.systems) > 0
	count(undated) == 0
}

deficient contains [id, ["closeout", "records", "design_inspection"]] if {
	some [id, _] in subjects
	input.closeout.records.design_inspection == false
}

deficient contains [id, ["closeout", "records", "oversight_recorded"]] if {
	some [id, _] in subjects
	input.closeout.records.oversight_recorded == false
}

missing contains [id, ["closeout", "records", "design_inspection"]] if {
	some [id, _] in subjects
	not is_boolean(input.closeout.records.design_inspection)
}

missing contains [id, ["closeout", "records", "oversight_recorded"]] if {
	some [id, _] in subjects
	not is_boolean(input.closeout.records.oversight_recorded)
}

missing contains [id, ["systems", i, "commissioning", "inspected_on"]] if {
	some [id, _] in subjects
	some i, s in input.systems
	s.id in undated
}

missing contains [id, ["systems"]] if {
	some [id, _] in subjects
	not is_array(input.systems)
}
