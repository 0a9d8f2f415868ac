# METADATA
# title: A change of heating or cooling made against radon was reviewed by its designer or a licensed mechanical contractor
# description: More outside air or another balance can draw flue gas into the house or freeze a pipe.
# custom:
#   subject: house
#   grade: hazard
#   stage: running
#   remedy: Have the designer or a licensed mechanical contractor review the change before it stays.
#   caution: Work on burners, ducts and controls is for licensed people.
package policy.survey.air_handling_reviewed

import rego.v2

subjects contains ["house", ["house", "air_handling", "change_reviewed"]]

exempt contains [id, "heating and cooling were not changed against radon"] if {
	some [id, _] in subjects
	input.house.air_handling.changed_as_fix == false
}

asked if input.house.air_handling.changed_as_fix == true

met contains id if {
	asked
	some [id, _] in subjects
	input.house.air_handling.change_reviewed == true
}

deficient contains [id, ["house", "air_handling", "change_reviewed"]] if {
	asked
	some [id, _] in subjects
	input.house.air_handling.change_reviewed == false
}

missing contains [id, ["house", "air_handling", "changed_as_fix"]] if {
	some [id, _] in subjects
	not is_boolean(input.house.air_handling.changed_as_fix)
}

missing contains [id, ["house", "air_handling", "change_reviewed"]] if {
	some [id, _] in subjects
	not is_boolean(input.house.air_handling.change_reviewed)
}
