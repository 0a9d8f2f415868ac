# METADATA
# title: The fan moves air
# description: A gauge at the top of what the fan gives looks strong, and it means that water, ice or tight soil lets nothing through.
# custom:
#   subject: gauge
#   grade: recommended
#   stage: running
#   remedy: Look for water in a low point or in the pit, ice at the outlet or a closed damper; in tight soil think of a fan made for it.
#   caution: Wiring and work on a running fan are for licensed people; cut the power and prove it dead first.
#   limits:
#     maximum: {dimension: ratio, sense: less-than}
package policy.physics.gauge_not_blocked

import data.policy.airways
import data.policy.readings
import rego.v2

limits := data.profile.physics.gauge_not_blocked

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["derived", "systems", i, "gauge_share"]] if some i, s in input.systems

exempt contains outcome if some outcome in readings.aside

met contains d.id if {
	some d in input.derived.systems
	d.id in readings.known
	airways.sited
	d.gauge_share.si < limits.maximum.si
}

deficient contains [d.id, ["derived", "systems", i, "gauge_share"], "maximum"] if {
	some i, d in input.derived.systems
	d.id in readings.known
	airways.sited
	d.gauge_share.si >= limits.maximum.si
}

missing contains gap if some gap in readings.unsaid

missing contains [s.id, ["house", "altitude"]] if {
	some s in input.systems
	not airways.sited
}

missing contains [d.id, ["derived", "systems", i, "gauge_share"]] if {
	some i, d in input.derived.systems
	not is_number(d.gauge_share.si)
}
