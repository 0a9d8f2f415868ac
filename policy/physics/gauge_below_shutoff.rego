# METADATA
# title: The gauge shows no more than the fan can give
# description: A reading that cannot be was not read from this gauge, or not on this fan, and tells nobody whether the house is protected.
# custom:
#   subject: gauge
#   grade: required
#   stage: running
#   remedy: Read the gauge again after checking its zero; check the unit, the model of the fan and its data sheet.
#   limits:
#     maximum: {dimension: ratio, sense: at-most}
package policy.physics.gauge_below_shutoff

import data.policy.airways
import data.policy.readings
import rego.v2

limits := data.profile.physics.gauge_below_shutoff

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["derived", "systems", i, "gauge_share"]] if some i, s in input.systems

exempt contains outcome if some outcome in readings.aside

met contains d.id if {
	some d in input.derived.systems
	d.id in readings.known
	airways.sited
	d.gauge_share.si <= limits.maximum.si
}

deficient contains [d.id, ["derived", "systems", i, "gauge_share"], "maximum"] if {
	some i, d in input.derived.systems
	d.id in readings.known
	d.gauge_share.si > limits.maximum.si
}

undetermined contains [d.id, ["derived", "systems", i, "gauge_share"], "there is no fan curve from no flow on to compare the reading with"] if {
	some i, d in input.derived.systems
	d.id in readings.known
	not is_number(d.gauge_share.si)
}

undetermined contains [d.id, ["derived", "systems", i, "gauge_share"], "it would pass at sea level, and the altitude is not recorded"] if {
	some i, d in input.derived.systems
	d.id in readings.known
	d.gauge_share.si <= limits.maximum.si
	not airways.sited
}

missing contains gap if some gap in readings.unsaid
