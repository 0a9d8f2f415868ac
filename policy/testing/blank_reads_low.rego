# METADATA
# title: A field blank reads below detection
# description: A device that was never opened and still shows radon shows what the other devices got besides the room air.
# custom:
#   subject: test
#   grade: recommended
#   stage: closeout
#   remedy: Ask the laboratory what went wrong, and do not trust low results of the same batch.
package policy.testing.blank_reads_low

import data.policy.radon_tests
import rego.v2

subjects contains ["measurements", ["measurements", "tests"]] if not is_array(input.measurements.tests)

subjects contains [t.id, ["measurements", "tests", i, "blank"]] if some i, t in input.measurements.tests

exempt contains [id, reason] if {
	some [id, _] in subjects
	some reason in radon_tests.not_asked
}

exempt contains [t.id, "this is no field blank"] if {
	some t in input.measurements.tests
	t.id in radon_tests.rooms
}

blank contains t.id if {
	some t in input.measurements.tests
	input.job.contaminant in {"radon", "both"}
	t.blank == true
	is_string(t.device)
	t.device != "continuous-monitor"
}

met contains t.id if {
	some t in input.measurements.tests
	t.id in blank
	t.below_detection == true
}

deficient contains [t.id, ["measurements", "tests", i, "result"]] if {
	some i, t in input.measurements.tests
	t.id in blank
	t.below_detection == false
}

missing contains [id, ["job", "contaminant"]] if {
	some [id, _] in subjects
	not is_string(input.job.contaminant)
}

missing contains [t.id, ["measurements", "tests", i, "device"]] if {
	some i, t in input.measurements.tests
	not is_string(t.device)
}

missing contains [t.id, ["measurements", "tests", i, "blank"]] if {
	some i, t in input.measurements.tests
	not is_boolean(t.blank)
}

missing contains [t.id, ["measurements", "tests", i, "below_detection"]] if {
	some i, t in input.measurements.tests
	t.blank == true
	not is_boolean(t.below_detection)
}
