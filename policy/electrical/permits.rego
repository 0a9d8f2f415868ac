# METADATA
# title: It was asked which permits the work needs, and each of them was obtained
# description: Without a permit nobody independent looks at the wiring, and the insurer may not pay.
# custom:
#   subject: job and permit
#   grade: required
#   stage: roughed-in
#   remedy: Ask the local code office, and get the permit before going on.
#   limits:
#     obtained: {dimension: choice, sense: one-of}
package policy.electrical.permits

import rego.v2

limits := data.profile.electrical.permits

subjects contains ["job", ["job", "permits"]]
subjects contains [p.id, ["job", "permits", i, "status"]] if some i, p in input.job.permits

met contains "job" if {
	is_array(input.job.permits)
	input.job.jurisdiction.permit_duties_checked == true
}

deficient contains ["job", ["job", "jurisdiction", "permit_duties_checked"]] if {
	input.job.jurisdiction.permit_duties_checked == false
}

met contains p.id if {
	some p in input.job.permits
	p.status in limits.obtained.any_of
}

deficient contains [p.id, ["job", "permits", i, "status"], "obtained"] if {
	some i, p in input.job.permits
	is_string(p.status)
	not p.status in limits.obtained.any_of
}

missing contains ["job", ["job", "permits"]] if not is_array(input.job.permits)
missing contains ["job", ["job", "jurisdiction", "permit_duties_checked"]] if {
	not is_boolean(input.job.jurisdiction.permit_duties_checked)
}
