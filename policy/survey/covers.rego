# METADATA
# title: The survey looked at every place that matters
# description: The place nobody looked at is the one where the gas comes in, or where the drill meets a pipe.
# custom:
#   subject: item of the list
#   grade: required
#   stage: planned
#   remedy: Go back and look at what is left out.
#   limits:
#     items: {dimension: choice, sense: one-of}
package policy.survey.covers

import rego.v2

limits := data.profile.survey.covers
subjects contains ["diagnostics", ["diagnostics", "survey_covers"]] if not is_array(input.diagnostics.survey_covers)

subjects contains [item, ["diagnostics", "survey_covers"]] if {
	is_array(input.diagnostics.survey_covers)
	some item in limits.items.any_of
}

left_out contains item if {
	is_array(input.diagnostics.survey_covers)
	some item in limits.items.any_of
	not item in input.diagnostics.survey_covers
}

# What a house does not have is known once all it stands on is listed.
areas_told if {
	count(input.house.foundations) > 0
	count({f.id | some f in input.house.foundations; not is_string(f.kind)}) == 0
}

exempt contains [item, "the house has no crawlspace"] if {
	some item in left_out
	item == "crawlspaces"
	areas_told
	count({f.id | some f in input.house.foundations; f.kind == "crawlspace"}) == 0
}

exempt contains [item, "the house has no slab"] if {
	some item in left_out
	item == "slab-holes"
	areas_told
	count({f.id | some f in input.house.foundations; not f.kind in {"crawlspace", "earth-floor"}}) == 0
}

met contains item if {
	some item in limits.items.any_of
	item in input.diagnostics.survey_covers
}

deficient contains [item, path] if {
	some [item, path] in subjects
	item in left_out
}
