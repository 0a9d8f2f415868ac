# METADATA
# title: A licensed radon contractor puts a roughed-in pipe to use
# description: A fan on a pipe of unknown history can blow soil gas indoors or draw flue gas back.
# custom:
#   subject: job
#   grade: required
#   stage: planned
#   remedy: Have the work done by a person who holds the license, and record the license.
package policy.special.activation_licensed

import rego.v2

subjects contains ["job", ["job", "crew"]]

exempt contains [id, "no roughed-in or passive pipe is put to use"] if {
	some [id, _] in subjects
	is_string(input.job.purpose)
	input.job.purpose != "activation-of-rough-in"
}

met contains "job" if {
	input.job.purpose == "activation-of-rough-in"
	some c in input.job.crew
	c.credential_kind == "mitigation"
	is_string(c.credential)
}

deficient contains ["job", ["job", "crew"]] if {
	input.job.purpose == "activation-of-rough-in"
	is_array(input.job.crew)
	count(input.job.crew) == count([c.id | some c in input.job.crew; is_string(c.credential_kind); c.credential_kind != "mitigation"])
}

missing contains ["job", ["job", "purpose"]] if not is_string(input.job.purpose)

missing contains ["job", ["job", "crew"]] if not is_array(input.job.crew)

missing contains ["job", ["job", "crew", i, "credential_kind"]] if {
	some i, c in input.job.crew
	not is_string(c.credential_kind)
}

missing contains ["job", ["job", "crew", i, "credential"]] if {
	some i, c in input.job.crew
	c.credential_kind == "mitigation"
	not is_string(c.credential)
}
