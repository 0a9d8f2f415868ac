# METADATA
# title: The gauge is safe from knocks
# description: A bumped tube or pulled hose shows nothing, or shows trouble that is not there.
# custom:
#   subject: gauge
#   grade: required
#   stage: running
#   remedy: Guard the gauge or hang it out of the way of doors, tools and stored goods, and fasten its hose.
package policy.gauge.protected

import data.policy.gauges
import rego.v2

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "gauge", "protected"]] if some i, s in input.systems

exempt contains outcome if some outcome in gauges.absent

met contains s.id if {
	some s in input.systems
	s.id in gauges.shown
	s.gauge.protected == true
}

deficient contains [s.id, ["systems", i, "gauge", "protected"]] if {
	some i, s in input.systems
	s.id in gauges.shown
	s.gauge.protected == false
}

missing contains gap if some gap in gauges.unsaid

missing contains [s.id, ["systems", i, "gauge", "protected"]] if {
	some i, s in input.systems
	not is_boolean(s.gauge.protected)
}
