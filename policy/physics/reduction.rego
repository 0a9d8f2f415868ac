# METADATA
# title: The radon level went down, and not to nothing
# description: A level that rose means that the system made things worse; a level of zero, lower than outdoors, means that nothing was measured.
# custom:
#   subject: tests together
#   grade: required
#   stage: closeout
#   remedy: Check which result belongs to which test; if the level rose, switch nothing off before somebody qualified has looked, and test again.
#   limits:
#     least: {dimension: percent, sense: at-least}
#     below: {dimension: percent, sense: less-than}
package policy.physics.reduction

import data.policy.radon_tests
import data.policy.systems
import rego.v2

limits := data.profile.physics.reduction

subjects contains ["measurements", ["measurements", "tests"]]

exempt contains [radon_tests.all, "the system is only roughed in"] if systems.only_roughed_in

met contains id if {
	systems.built
	count(radon_tests.unsaid_detection) == 0
	some [id, _] in subjects
	input.derived.radon.reduction.si >= limits.least.si
	input.derived.radon.reduction.si < limits.below.si
}

deficient contains [id, ["derived", "radon", "reduction"], "least"] if {
	some [id, _] in subjects
	input.derived.radon.reduction.si < limits.least.si
}

deficient contains [id, ["derived", "radon", "reduction"], "below"] if {
	some [id, _] in subjects
	input.derived.radon.reduction.si >= limits.below.si
}

undetermined contains [id, ["derived", "radon", "reduction"], "there are no results from before and after the work to compare"] if {
	some [id, _] in subjects
	is_array(input.measurements.tests)
	not is_number(input.derived.radon.reduction.si)
}

missing contains [id, path] if {
	some [id, _] in subjects
	some path in radon_tests.unsaid_detection
}

missing contains [radon_tests.all, path] if {
	not systems.built
	some path in systems.unsaid_power
}
