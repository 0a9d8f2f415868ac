# METADATA
# title: Each file that the record names is in the job folder
# description: A photo that nobody can open proves nothing to anybody.
# custom:
#   subject: file
#   grade: required
#   stage: closeout
#   remedy: Put the file into the job folder, or correct its path.
package policy.evidence.file_present

import rego.v2

subjects contains ["evidence", ["evidence"]] if not is_array(input.evidence)

subjects contains [e.id, ["evidence", i, "path"]] if some i, e in input.evidence

met contains d.id if {
	some d in input.derived.evidence
	d.present == true
}

deficient contains [e.id, ["evidence", i, "path"]] if {
	some i, e in input.evidence
	some d in input.derived.evidence
	d.id == e.id
	d.present == false
}

undetermined contains [e.id, ["evidence", i, "path"], "the job folder was not looked at"] if {
	some i, e in input.evidence
	is_string(e.path)
	some d in input.derived.evidence
	d.id == e.id
	not is_boolean(d.present)
}
