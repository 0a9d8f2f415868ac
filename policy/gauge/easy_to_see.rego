# METADATA
# title: The gauge hangs where the people who live there see it
# description: Nobody looks behind boxes for a gauge, so a dead fan goes unnoticed for years.
# custom:
#   subject: gauge
#   grade: required
#   stage: running
#   remedy: Move the gauge, or what hides it, so that it is seen in passing.
package policy.gauge.easy_to_see

import data.policy.gauges
import rego.v2

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "gauge", "easy_to_see"]] if some i, s in input.systems

exempt contains outcome if some outcome in gauges.absent

met contains s.id if {
	some s in input.systems
	s.id in gauges.shown
	s.gauge.easy_to_see == true
}

deficient contains [s.id, ["systems", i, "gauge", "easy_to_see"]] if {
	some i, s in input.systems
	s.id in gauges.shown
	s.gauge.easy_to_see == false
}

missing contains gap if some gap in gauges.unsaid

missing contains [s.id, ["systems", i, "gauge", "easy_to_see"]] if {
	some i, s in input.systems
	not is_boolean(s.gauge.easy_to_see)
}
