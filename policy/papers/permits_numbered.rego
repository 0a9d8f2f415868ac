# METADATA
# title: Each permit is recorded with number and authority
# description: A permit that cannot be looked up might as well not exist.
# custom:
#   subject: permit
#   grade: recommended
#   stage: roughed-in
#   remedy: Write down the number of the permit and who issued it.
#   limits:
#     no_number: {dimension: choice, sense: none-of}
package policy.papers.permits_numbered

import rego.v2

no_number := data.profile.papers.permits_numbered.no_number.any_of

subjects contains ["job", ["job", "permits"]] if not is_array(input.job.permits)

subjects contains [p.id, ["job", "permits", i, "number"]] if some i, p in input.job.permits

exempt contains [p.id, "it is not required"] if {
	some p in input.job.permits
	p.status == "not-required"
}

asked contains p.id if {
	some p in input.job.permits
	is_string(p.status)
	p.status != "not-required"
}

met contains p.id if {
	some p in input.job.permits
	p.id in asked
	is_string(p.authority)
	is_string(p.number)
	is_array(no_number)
	not lower(p.number) in no_number
}

deficient contains [p.id, ["job", "permits", i, "number"], "no_number"] if {
	some i, p in input.job.permits
	p.id in asked
	lower(p.number) in no_number
}

missing contains [p.id, ["job", "permits", i, "status"]] if {
	some i, p in input.job.permits
	not is_string(p.status)
}

missing contains [p.id, ["job", "permits", i, "number"]] if {
	some i, p in input.job.permits
	not is_string(p.number)
}

missing contains [p.id, ["job", "permits", i, "authority"]] if {
	some i, p in input.job.permits
	not is_string(p.authority)
}
