# METADATA
# title: A photo shows each opening that was sealed
# description: Caulk behind a finished wall cannot be checked twice; the photo is the only later look at it.
# custom:
#   subject: entry route
#   grade: recommended
#   stage: running
#   remedy: Take a photo of the sealed opening before it is covered, and name it in the record.
#   limits:
#     kinds: {dimension: choice, sense: one-of}
#     untouched: {dimension: choice, sense: not-for}
package policy.evidence.sealed_openings

import rego.v2

limits := data.profile.evidence.sealed_openings

subjects contains ["entry_routes", ["entry_routes"]] if not is_array(input.entry_routes)

subjects contains [r.id, ["entry_routes", i, "photo"]] if some i, r in input.entry_routes

exempt contains [r.id, "nothing was done to it"] if {
	some r in input.entry_routes
	r.treatment in limits.untouched.any_of
}

judged contains r.id if {
	some r in input.entry_routes
	is_string(r.treatment)
	not r.treatment in limits.untouched.any_of
}

named contains [r.id, e.id] if {
	some r in input.entry_routes
	some e in input.evidence
	e.id == r.photo
}

named contains [id, e.id] if {
	some e in input.evidence
	some id in e.shows
}

met contains id if {
	some [id, file] in named
	id in judged
	some e in input.evidence
	e.id == file
	e.media_type in limits.kinds.any_of
}

deficient contains [id, ["evidence", k, "media_type"], "kinds"] if {
	some [id, file] in named
	id in judged
	not id in met
	some k, e in input.evidence
	e.id == file
	is_string(e.media_type)
	not e.media_type in limits.kinds.any_of
}

deficient contains [r.id, ["entry_routes", i, "photo"]] if {
	some i, r in input.entry_routes
	r.id in judged
	is_string(r.photo)
	is_array(input.evidence)
	not r.id in met
	not r.photo in {e.id | some e in input.evidence}
}

missing contains [r.id, ["entry_routes", i, "treatment"]] if {
	some i, r in input.entry_routes
	not is_string(r.treatment)
}

missing contains [r.id, ["entry_routes", i, "photo"]] if {
	some i, r in input.entry_routes
	not is_string(r.photo)
}
