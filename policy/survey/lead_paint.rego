# METADATA
# title: In an old house lead paint was looked for, and not disturbed without an accredited person
# description: Dust of lead paint harms small children; in a house of that age paint counts as lead paint until somebody has shown that it is not.
# custom:
#   subject: house
#   grade: hazard
#   stage: planned
#   remedy: Have the paint tested where the work touches it, or work by the lead renovation rule with certified people.
#   caution: Do not sand, scrape or cut painted surfaces of an old house dry.
#   limits:
#     built_before: {dimension: number, sense: less-than}
package policy.survey.lead_paint

import rego.v2

limits := data.profile.survey.lead_paint
subjects contains ["house", ["house", "year_built"]]

exempt contains [id, "the house is newer"] if {
	some [id, _] in subjects
	input.house.year_built >= limits.built_before.si
}

old if input.house.year_built < limits.built_before.si

looked_at contains h.id if {
	some h in input.house.hazards
	h.kind == "lead-paint"
	h.state in {"ruled-out", "abated"}
}

looked_at contains h.id if {
	some h in input.house.hazards
	h.kind == "lead-paint"
	h.state in {"suspected", "confirmed"}
	h.disturbed_by_work == false
}

looked_at contains h.id if {
	some h in input.house.hazards
	h.kind == "lead-paint"
	h.state in {"suspected", "confirmed"}
	h.disturbed_by_work == true
	h.cleared_by_accredited == true
}

listed := {h.id |
	some h in input.house.hazards
	h.kind == "lead-paint"
}

met contains id if {
	old
	some [id, _] in subjects
	count(listed) > 0
	count(listed) == count(looked_at)
	all_kinds_said
}

# A hazard without its kind may be lead paint.
all_kinds_said if {
	is_array(input.house.hazards)
	count(input.house.hazards) == count({h.id |
		some h in input.house.hazards
		is_string(h.kind)
	})
}

deficient contains [id, ["house", "hazards"]] if {
	old
	some [id, _] in subjects
	all_kinds_said
	count(listed) == 0
}

deficient contains [id, ["house", "hazards", i, "cleared_by_accredited"]] if {
	old
	some [id, _] in subjects
	some i, h in input.house.hazards
	h.kind == "lead-paint"
	h.state in {"suspected", "confirmed"}
	h.disturbed_by_work == true
	h.cleared_by_accredited == false
}

missing contains [id, ["house", "year_built"]] if {
	some [id, _] in subjects
	not is_number(input.house.year_built)
}

missing contains [id, ["house", "hazards"]] if {
	some [id, _] in subjects
	not is_array(input.house.hazards)
}

missing contains [id, ["house", "hazards", i, "kind"]] if {
	some [id, _] in subjects
	some i, h in input.house.hazards
	not is_string(h.kind)
}

missing contains [id, ["house", "hazards", i, "state"]] if {
	some [id, _] in subjects
	some i, h in input.house.hazards
	h.kind == "lead-paint"
	not is_string(h.state)
}

open contains h.id if {
	some h in input.house.hazards
	h.id in listed
	not h.id in looked_at
}

missing contains [id, ["house", "hazards", i, "disturbed_by_work"]] if {
	some [id, _] in subjects
	some i, h in input.house.hazards
	h.id in open
	not is_boolean(h.disturbed_by_work)
}

missing contains [id, ["house", "hazards", i, "cleared_by_accredited"]] if {
	some [id, _] in subjects
	some i, h in input.house.hazards
	h.id in open
	not is_boolean(h.cleared_by_accredited)
}
