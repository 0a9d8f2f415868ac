# METADATA
# description: |
#   Which systems with a fan have a gauge, which have none, and of which nobody
#   wrote that down.
package policy.gauges

import data.policy.systems
import rego.v2

shown contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	is_string(s.gauge.kind)
	s.gauge.kind != "none"
}

absent contains outcome if some outcome in systems.without_fan

absent contains [s.id, "there is no gauge"] if {
	some s in input.systems
	s.gauge.kind == "none"
}

unsaid contains gap if some gap in systems.unsaid

unsaid contains [s.id, ["systems", i, "gauge", "kind"]] if {
	some i, s in input.systems
	not is_string(s.gauge.kind)
}

# Systems of which every reading says whether the fan ran; otherwise it is not
# known which is the first and which the last with the fan on.
read contains s.id if {
	some s in input.systems
	is_array(s.gauge.readings)
	count({r.id | some r in s.gauge.readings; not is_boolean(r.fan_on)}) == 0
}

unread contains [s.id, ["systems", i, "gauge", "readings", j, "fan_on"]] if {
	some i, s in input.systems
	some j, r in s.gauge.readings
	not is_boolean(r.fan_on)
}
