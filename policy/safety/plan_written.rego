# METADATA
# title: A written plan protects the crew
# description: Dust, ladders, live wires and crawlspaces hurt those who start without having thought about them.
# custom:
#   subject: crew
#   grade: required
#   stage: planned
#   remedy: Write down how the crew is protected from dust, falls, current, fumes, bad air and radon.
package policy.safety.plan_written

import rego.v2

subjects contains ["safety", ["safety", "plan_written"]]

met contains "safety" if input.safety.plan_written == true

deficient contains ["safety", ["safety", "plan_written"]] if input.safety.plan_written == false
