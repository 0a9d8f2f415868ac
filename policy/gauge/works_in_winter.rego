# METADATA
# title: A gauge in the cold still works at the winter design temperature
# description: Pipes and fans fail most in deep frost, when a gauge that has frozen still shows the reading of autumn.
# custom:
#   subject: gauge
#   grade: recommended
#   stage: running
#   remedy: Fit a gauge, a liquid or a heated box that works at the winter design temperature, or hang the gauge in a heated room.
#   caution: Wiring for a heated box is for licensed people.
#   limits:
#     cold: {dimension: choice, sense: one-of}
package policy.gauge.works_in_winter

import data.policy.gauges
import rego.v2

cold := data.profile.gauge.works_in_winter.cold.any_of

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "gauge", "rated_low_temperature"]] if some i, s in input.systems

exempt contains outcome if some outcome in gauges.absent

exempt contains [s.id, "the gauge is not in the cold"] if {
	some s in input.systems
	is_string(s.gauge.place)
	not s.gauge.place in cold
}

met contains s.id if {
	some s in input.systems
	s.id in gauges.shown
	s.gauge.place in cold
	s.gauge.rated_low_temperature.si <= input.house.winter_design_temperature.si
}

deficient contains [s.id, ["systems", i, "gauge", "rated_low_temperature"]] if {
	some i, s in input.systems
	s.id in gauges.shown
	s.gauge.place in cold
	s.gauge.rated_low_temperature.si > input.house.winter_design_temperature.si
}

missing contains gap if some gap in gauges.unsaid

missing contains [s.id, ["systems", i, "gauge", "place"]] if {
	some i, s in input.systems
	not is_string(s.gauge.place)
}

missing contains [s.id, ["systems", i, "gauge", "rated_low_temperature"]] if {
	some i, s in input.systems
	not is_number(s.gauge.rated_low_temperature.si)
}

missing contains [s.id, ["house", "winter_design_temperature"]] if {
	some s in input.systems
	not is_number(input.house.winter_design_temperature.si)
}
