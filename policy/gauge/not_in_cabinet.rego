# METADATA
# title: The gauge does not hang inside a closed cabinet
# description: A gauge behind a door is a gauge that nobody reads.
# custom:
#   subject: gauge
#   grade: recommended
#   stage: running
#   remedy: Move the gauge out into the room, or give the cabinet a window.
#   limits:
#     hidden: {dimension: choice, sense: none-of}
package policy.gauge.not_in_cabinet

import data.policy.gauges
import rego.v2

hidden := data.profile.gauge.not_in_cabinet.hidden.any_of

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "gauge", "place"]] if some i, s in input.systems

exempt contains outcome if some outcome in gauges.absent

met contains s.id if {
	some s in input.systems
	s.id in gauges.shown
	is_string(s.gauge.place)
	not s.gauge.place in hidden
}

deficient contains [s.id, ["systems", i, "gauge", "place"], "hidden"] if {
	some i, s in input.systems
	s.id in gauges.shown
	s.gauge.place in hidden
}

missing contains gap if some gap in gauges.unsaid

missing contains [s.id, ["systems", i, "gauge", "place"]] if {
	some i, s in input.systems
	not is_string(s.gauge.place)
}
