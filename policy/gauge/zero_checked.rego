# METADATA
# title: The gauge stood at zero before its reading was taken
# description: A gauge that does not start at zero shows a pull that is not there, and the mark made from it is wrong for good.
# custom:
#   subject: gauge
#   grade: recommended
#   stage: running
#   remedy: Open the tube to the room, see that the gauge stands at zero or set it, connect it again and take the reading anew.
package policy.gauge.zero_checked

import data.policy.gauges
import rego.v2

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "gauge", "zero_checked"]] if some i, s in input.systems

exempt contains outcome if some outcome in gauges.absent

met contains s.id if {
	some s in input.systems
	s.id in gauges.shown
	s.gauge.zero_checked == true
}

deficient contains [s.id, ["systems", i, "gauge", "zero_checked"]] if {
	some i, s in input.systems
	s.id in gauges.shown
	s.gauge.zero_checked == false
}

missing contains gap if some gap in gauges.unsaid

missing contains [s.id, ["systems", i, "gauge", "zero_checked"]] if {
	some i, s in input.systems
	not is_boolean(s.gauge.zero_checked)
}
