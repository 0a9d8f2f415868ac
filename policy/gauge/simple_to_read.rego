# METADATA
# title: The gauge can be read without training
# description: Whoever lives there has to tell good from bad at a glance.
# custom:
#   subject: gauge
#   grade: required
#   stage: running
#   remedy: Fit a plainer gauge, or put a note beside it that shows a good and a bad reading.
package policy.gauge.simple_to_read

import data.policy.gauges
import rego.v2

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "gauge", "simple_to_read"]] if some i, s in input.systems

exempt contains outcome if some outcome in gauges.absent

met contains s.id if {
	some s in input.systems
	s.id in gauges.shown
	s.gauge.simple_to_read == true
}

deficient contains [s.id, ["systems", i, "gauge", "simple_to_read"]] if {
	some i, s in input.systems
	s.id in gauges.shown
	s.gauge.simple_to_read == false
}

missing contains gap if some gap in gauges.unsaid

missing contains [s.id, ["systems", i, "gauge", "simple_to_read"]] if {
	some i, s in input.systems
	not is_boolean(s.gauge.simple_to_read)
}
