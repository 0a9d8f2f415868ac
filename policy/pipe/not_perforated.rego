# METADATA
# title: Pipe above slab and membrane has no holes in it
# description: Holes above the slab pull in house air, or let soil gas out once the fan stops.
# custom:
#   subject: pipe segment
#   grade: required
#   stage: roughed-in
#   remedy: Replace perforated pipe above slab and membrane with solid pipe.
package policy.pipe.not_perforated

import data.policy.pipes
import rego.v2

subjects contains gap if some gap in pipes.gaps

subjects contains [p.id, ["systems", i, "pipe", j, "perforated"]] if {
	some i, s in input.systems
	some j, p in s.pipe
}

exempt contains outcome if some outcome in pipes.outside

met contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in pipes.judged
	p.perforated == false
}

deficient contains [p.id, ["systems", i, "pipe", j, "perforated"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.id in pipes.judged
	p.perforated == true
}

missing contains gap if some gap in pipes.unsaid

missing contains [p.id, ["systems", i, "pipe", j, "perforated"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_boolean(p.perforated)
}
