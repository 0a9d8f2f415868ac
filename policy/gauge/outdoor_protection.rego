# METADATA
# title: A gauge outdoors is guarded against frost, sun and rain
# description: A frozen or faded tube outdoors shows a good reading long after the fan has died.
# custom:
#   subject: gauge
#   grade: recommended
#   stage: running
#   remedy: Bring the gauge indoors, or fit one made for outdoors, a heated box, or a liquid that does not freeze under a cover.
#   caution: Wiring for a heated box is for licensed people.
#   limits:
#     outdoors: {dimension: choice, sense: one-of}
#     protections: {dimension: choice, sense: one-of}
package policy.gauge.outdoor_protection

import data.policy.gauges
import rego.v2

limits := data.profile.gauge.outdoor_protection

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "gauge", "outdoor_protection"]] if some i, s in input.systems

exempt contains outcome if some outcome in gauges.absent

exempt contains [s.id, "the gauge is not outdoors"] if {
	some s in input.systems
	is_string(s.gauge.place)
	not s.gauge.place in limits.outdoors.any_of
}

exposed contains s.id if {
	some s in input.systems
	s.id in gauges.shown
	s.gauge.place in limits.outdoors.any_of
}

met contains s.id if {
	some s in input.systems
	s.id in exposed
	s.gauge.outdoor_protection in limits.protections.any_of
}

deficient contains [s.id, ["systems", i, "gauge", "outdoor_protection"], "protections"] if {
	some i, s in input.systems
	s.id in exposed
	is_string(s.gauge.outdoor_protection)
	not s.gauge.outdoor_protection in limits.protections.any_of
}

missing contains gap if some gap in gauges.unsaid

missing contains [s.id, ["systems", i, "gauge", "place"]] if {
	some i, s in input.systems
	not is_string(s.gauge.place)
}

missing contains [s.id, ["systems", i, "gauge", "outdoor_protection"]] if {
	some i, s in input.systems
	not is_string(s.gauge.outdoor_protection)
}
