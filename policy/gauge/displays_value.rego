# METADATA
# title: A gauge shows a measured value all the time
# description: A lamp says on or off; a number shows a slow decline while there is still time to act.
# custom:
#   subject: gauge
#   grade: required
#   stage: running
#   remedy: Fit a gauge that shows pressure or fan current all the time.
#   limits:
#     kinds: {dimension: choice, sense: applies-to}
package policy.gauge.displays_value

import data.policy.systems
import rego.v2

kinds := data.profile.gauge.displays_value.kinds.any_of

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "gauge", "kind"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

met contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	s.gauge.kind in kinds
}

deficient contains [s.id, ["systems", i, "gauge", "kind"], "kinds"] if {
	some i, s in input.systems
	s.id in systems.with_fan
	is_string(s.gauge.kind)
	not s.gauge.kind in kinds
}

missing contains gap if some gap in systems.unsaid

missing contains [s.id, ["systems", i, "gauge", "kind"]] if {
	some i, s in input.systems
	not is_string(s.gauge.kind)
}
