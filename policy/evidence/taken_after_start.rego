# METADATA
# title: Photos of what was installed were taken after the work started
# description: A photo older than the work shows another house, or this one without the system.
# custom:
#   subject: photo
#   grade: required
#   stage: closeout
#   remedy: Take the photo again; if the clock of the camera was wrong, say so in a note.
package policy.evidence.taken_after_start

import rego.v2

subjects contains ["evidence", ["evidence"]] if not is_array(input.evidence)

subjects contains [d.id, ["derived", "evidence", i, "taken"]] if {
	some i, d in input.derived.evidence
	d.id in installed
}

# Photos that the record gives as proof of something installed.
installed contains s.gauge.photo if some s in input.systems

installed contains s.discharge.photo if some s in input.systems

installed contains s.electrical.photo if some s in input.systems

installed contains l.photo if {
	some s in input.systems
	some l in s.labels
}

installed contains r.photo if some r in input.entry_routes

exempt contains [e.id, "it is no photo"] if {
	some e in input.evidence
	e.id in installed
	is_string(e.media_type)
	not startswith(e.media_type, "image/")
}

met contains d.id if {
	some d in input.derived.evidence
	d.id in installed
	d.present == true
	d.before_work == false
}

deficient contains [d.id, ["derived", "evidence", i, "taken"]] if {
	some i, d in input.derived.evidence
	d.id in installed
	d.before_work == true
}

undetermined contains [d.id, ["derived", "evidence", i, "taken"], "the file itself was not looked at"] if {
	some i, d in input.derived.evidence
	d.id in installed
	d.before_work == false
	not d.present == true
}

missing contains [d.id, ["derived", "evidence", i, "taken"]] if {
	some i, d in input.derived.evidence
	d.id in installed
	not is_number(d.taken.si)
}

missing contains [d.id, ["job", "dates", "work_started"]] if {
	some d in input.derived.evidence
	d.id in installed
	not is_number(input.job.dates.work_started.si)
}

missing contains [e.id, ["evidence", i, "media_type"]] if {
	some i, e in input.evidence
	e.id in installed
	not is_string(e.media_type)
}
