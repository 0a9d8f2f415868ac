# METADATA
# title: The sump lid carries a label
# description: Whoever lifts an unmarked lid opens the house to the soil and lames the system.
# custom:
#   subject: sump
#   grade: required
#   stage: closeout
#   remedy: Fix a label to the lid that names the radon system.
package policy.labels.sump_lid

import data.policy.marks
import data.policy.routes
import rego.v2

subjects contains gap if some gap in routes.unlisted

subjects contains [r.id, ["entry_routes", i, "sump"]] if {
	some i, r in input.entry_routes
	r.kind == "sump"
}

exempt contains outcome if some outcome in routes.bare

sumps contains r.id if {
	some r in input.entry_routes
	r.kind == "sump"
}

# The only sump of the house: a lid label can be on no other.
alone contains id if {
	count(sumps) == 1
	count({r.id | some r in input.entry_routes; not is_string(r.kind)}) == 0
	some id in sumps
}

labels contains l.id if {
	some s in input.systems
	some l in s.labels
	l.kind == "sump-lid"
}

marked contains l.marks if {
	some s in input.systems
	some l in s.labels
	l.kind == "sump-lid"
}

marked contains id if {
	count(labels) > 0
	some id in alone
}

# Lid labels that may be on any sump.
loose contains l.id if {
	some s in input.systems
	some l in s.labels
	l.kind == "sump-lid"
	not is_string(l.marks)
}

met contains id if {
	some id in routes.lidded
	id in marked
}

deficient contains [r.id, ["entry_routes", i, "sump"]] if {
	count(marks.known) == count(input.systems)
	count(loose) == 0
	some i, r in input.entry_routes
	r.id in routes.lidded
	not r.id in marked
}

missing contains gap if some gap in routes.unlisted

missing contains gap if some gap in routes.untreated_sumps

missing contains [id, path] if {
	some [id, _] in subjects
	some [_, path] in marks.untold
}

missing contains [r.id, ["systems", i, "labels", j, "marks"]] if {
	some r in input.entry_routes
	r.kind == "sump"
	some i, s in input.systems
	some j, l in s.labels
	l.id in loose
}
