# METADATA
# title: Everyone who needs a credential for this work has one
# description: The family lets people work on their air and their wiring because somebody once examined them.
# custom:
#   subject: worker
#   grade: recommended
#   stage: planned
#   remedy: Record the credential number of each person who leads, designs, wires or tests, or have it done by someone who has one.
#   limits:
#     roles: {dimension: choice, sense: applies-to}
#     no_credential: {dimension: choice, sense: none-of}
package policy.papers.credentials

import rego.v2

limits := data.profile.papers.credentials

subjects contains ["job", ["job", "crew"]] if not is_array(input.job.crew)

subjects contains [c.id, ["job", "crew", i, "credential"]] if some i, c in input.job.crew

exempt contains [c.id, "work of this kind needs no credential"] if {
	some c in input.job.crew
	is_string(c.role)
	is_array(limits.roles.any_of)
	not c.role in limits.roles.any_of
}

met contains c.id if {
	some c in input.job.crew
	c.role in limits.roles.any_of
	is_string(c.credential)
	is_array(limits.no_credential.any_of)
	not lower(c.credential) in limits.no_credential.any_of
}

deficient contains [c.id, ["job", "crew", i, "credential"], "no_credential"] if {
	some i, c in input.job.crew
	c.role in limits.roles.any_of
	lower(c.credential) in limits.no_credential.any_of
}

missing contains [c.id, ["job", "crew", i, "role"]] if {
	some i, c in input.job.crew
	not is_string(c.role)
}

missing contains [c.id, ["job", "crew", i, "credential"]] if {
	some i, c in input.job.crew
	not is_string(c.credential)
}
