# METADATA
# title: Each file says what it shows
# description: Forty photos without names are forty questions for whoever has to believe them.
# custom:
#   subject: file
#   grade: recommended
#   stage: closeout
#   remedy: Name in the record the things that can be seen on it.
package policy.evidence.shows_something

import rego.v2

subjects contains ["evidence", ["evidence"]] if not is_array(input.evidence)

subjects contains [e.id, ["evidence", i, "shows"]] if some i, e in input.evidence

met contains e.id if {
	some e in input.evidence
	count(e.shows) > 0
}

deficient contains [e.id, ["evidence", i, "shows"]] if {
	some i, e in input.evidence
	count(e.shows) == 0
}
