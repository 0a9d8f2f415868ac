# METADATA
# title: Credentials were valid on the last day of the work
# description: An expired licence often means that the insurance does not pay for what goes wrong.
# custom:
#   subject: worker
#   grade: recommended
#   stage: closeout
#   remedy: Renew the credential, and have the work looked over by someone whose credential was valid.
#   limits:
#     roles: {dimension: choice, sense: applies-to}
#     least: {dimension: duration, sense: at-least}
package policy.papers.credentials_valid

import rego.v2

limits := data.profile.papers.credentials_valid

subjects contains ["job", ["job", "crew"]] if not is_array(input.job.crew)

subjects contains [c.id, ["job", "crew", i, "credential_expires"]] if some i, c in input.job.crew

exempt contains [c.id, "work of this kind needs no credential"] if {
	some c in input.job.crew
	is_string(c.role)
	is_array(limits.roles.any_of)
	not c.role in limits.roles.any_of
}

asked contains c.id if {
	some c in input.job.crew
	c.role in limits.roles.any_of
}

met contains d.id if {
	some d in input.derived.crew
	d.id in asked
	d.credential_margin.si >= limits.least.si
}

deficient contains [d.id, ["derived", "crew", i, "credential_margin"], "least"] if {
	some i, d in input.derived.crew
	d.id in asked
	d.credential_margin.si < limits.least.si
}

missing contains [c.id, ["job", "crew", i, "role"]] if {
	some i, c in input.job.crew
	not is_string(c.role)
}

missing contains [d.id, ["derived", "crew", i, "credential_margin"]] if {
	some i, d in input.derived.crew
	not is_number(d.credential_margin.si)
}
