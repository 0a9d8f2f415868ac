# METADATA
# title: Each file is the one that was recorded
# description: A file that was changed later shows what somebody wanted to show.
# custom:
#   subject: file
#   grade: required
#   stage: closeout
#   remedy: Find the file that was recorded; if the change was meant, look at the file again and record its digest anew.
package policy.evidence.digest_matches

import rego.v2

subjects contains ["evidence", ["evidence"]] if not is_array(input.evidence)

subjects contains [e.id, ["evidence", i, "sha256"]] if some i, e in input.evidence

exempt contains [d.id, "the file is not there, which another requirement asks for"] if {
	some d in input.derived.evidence
	d.present == false
}

met contains d.id if {
	some d in input.derived.evidence
	d.digest_matches == true
}

deficient contains [e.id, ["evidence", i, "sha256"]] if {
	some i, e in input.evidence
	some d in input.derived.evidence
	d.id == e.id
	d.digest_matches == false
}

undetermined contains [e.id, ["evidence", i, "sha256"], "the job folder was not looked at"] if {
	some i, e in input.evidence
	is_string(e.path)
	is_string(e.sha256)
	some d in input.derived.evidence
	d.id == e.id
	not is_boolean(d.present)
}

missing contains [e.id, ["evidence", i, "sha256"]] if {
	some i, e in input.evidence
	not is_string(e.sha256)
}

missing contains [e.id, ["evidence", i, "path"]] if {
	some i, e in input.evidence
	not is_string(e.path)
}
