# METADATA
# title: The pipe blocks no door, window, panel or opening that must stay free
# description: In a fire the blocked window is the one that is needed.
# custom:
#   subject: pipe segment
#   grade: required
#   stage: roughed-in
#   remedy: Route the pipe round the opening. A coupling that comes apart helps only where the section is put back airtight.
package policy.pipe.access_kept

import data.policy.pipes
import rego.v2

subjects contains gap if some gap in pipes.gaps

subjects contains [p.id, ["systems", i, "pipe", j, "blocks_access"]] if {
	some i, s in input.systems
	some j, p in s.pipe
}

exempt contains outcome if some outcome in pipes.outside

met contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.id in pipes.judged
	p.blocks_access == false
}

deficient contains [p.id, ["systems", i, "pipe", j, "blocks_access"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	p.id in pipes.judged
	p.blocks_access == true
}

missing contains gap if some gap in pipes.unsaid

missing contains [p.id, ["systems", i, "pipe", j, "blocks_access"]] if {
	some i, s in input.systems
	some j, p in s.pipe
	not is_boolean(p.blocks_access)
}
