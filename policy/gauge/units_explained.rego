# METADATA
# title: A note says what the gauge shows, and that it does not measure radon
# description: People take a steady gauge for a low radon level and then never test again.
# custom:
#   subject: gauge
#   grade: recommended
#   stage: running
#   remedy: Put a note beside the gauge which says that it shows inches of water column as a sign that the fan pulls, and no radon.
package policy.gauge.units_explained

import data.policy.gauges
import rego.v2

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "gauge", "units_explained"]] if some i, s in input.systems

exempt contains outcome if some outcome in gauges.absent

met contains s.id if {
	some s in input.systems
	s.id in gauges.shown
	s.gauge.units_explained == true
}

deficient contains [s.id, ["systems", i, "gauge", "units_explained"]] if {
	some i, s in input.systems
	s.id in gauges.shown
	s.gauge.units_explained == false
}

missing contains gap if some gap in gauges.unsaid

missing contains [s.id, ["systems", i, "gauge", "units_explained"]] if {
	some i, s in input.systems
	not is_boolean(s.gauge.units_explained)
}
