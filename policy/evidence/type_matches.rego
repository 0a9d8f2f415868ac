# METADATA
# title: Each file is of the type that the record claims
# description: What is named a photo and is not one cannot be looked at.
# custom:
#   subject: file
#   grade: required
#   stage: closeout
#   remedy: Save the file in the type that is recorded, or record the type that it has.
package policy.evidence.type_matches

import rego.v2

subjects contains ["evidence", ["evidence"]] if not is_array(input.evidence)

subjects contains [e.id, ["evidence", i, "media_type"]] if some i, e in input.evidence

exempt contains [d.id, "the file is not there, which another requirement asks for"] if {
	some d in input.derived.evidence
	d.present == false
}

met contains d.id if {
	some d in input.derived.evidence
	d.type_matches == true
}

deficient contains [e.id, ["evidence", i, "media_type"]] if {
	some i, e in input.evidence
	some d in input.derived.evidence
	d.id == e.id
	d.type_matches == false
}

undetermined contains [e.id, ["evidence", i, "media_type"], "the job folder was not looked at"] if {
	some i, e in input.evidence
	is_string(e.path)
	is_string(e.media_type)
	some d in input.derived.evidence
	d.id == e.id
	not is_boolean(d.present)
}

missing contains [e.id, ["evidence", i, "media_type"]] if {
	some i, e in input.evidence
	not is_string(e.media_type)
}

missing contains [e.id, ["evidence", i, "path"]] if {
	some i, e in input.evidence
	not is_string(e.path)
}
