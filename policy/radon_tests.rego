# METADATA
# description: |
#   Which radon tests prove the system of this job, so that rules about tests
#   need not ask again. Nothing is concluded from a field that is not recorded:
#   a test whose phase is not said is neither judged nor put aside.
package policy.radon_tests

import data.policy.systems
import rego.v2

# The id of all tests together.
all := "measurements"

# A monitor cannot be a field blank; of other devices the record must say it.
monitors contains t.id if {
	some t in input.measurements.tests
	t.device == "continuous-monitor"
}

rooms contains id if some id in monitors

rooms contains t.id if {
	some t in input.measurements.tests
	t.blank == false
}

# Tests that stand for a room after the work.
after contains t.id if {
	some t in input.measurements.tests
	t.id in rooms
	t.phase == "after"
	input.job.contaminant in {"radon", "both"}
}

after_short contains t.id if {
	some t in input.measurements.tests
	t.id in after
	t.kind == "short-term"
}

not_asked contains "the job is not about radon" if input.job.contaminant == "chemical-vapor"

# Tests that rules about proof leave aside, and the place of the tests when none
# are asked for.
aside contains [t.id, "this is not the test that proves the system"] if {
	some t in input.measurements.tests
	t.phase in {"before", "later"}
}

aside contains [t.id, "a field blank stands for no room"] if {
	some t in input.measurements.tests
	t.blank == true
	is_string(t.device)
	t.device != "continuous-monitor"
}

aside contains [t.id, reason] if {
	some t in input.measurements.tests
	some reason in not_asked
}

aside contains [all, reason] if {
	not is_array(input.measurements.tests)
	some reason in not_asked
}

long_term contains [t.id, "the requirement is for short-term tests"] if {
	some t in input.measurements.tests
	t.kind == "long-term"
}

unfanned contains [t.id, "no fan drives a system of this job"] if {
	some t in input.measurements.tests
	systems.no_fan
}

# Tests that prove the system, or might.
open contains t.id if {
	some t in input.measurements.tests
	not t.id in {id | some [id, _] in aside}
}

# True when the tests are listed and none of them can be one after the work.
none_after if {
	is_array(input.measurements.tests)
	count(open) == 0
}

# True when the house is being built and no test is older than the work.
new_and_untested if {
	input.house.new_construction == true
	is_array(input.measurements.tests)
	count(input.measurements.tests) == count({t.id |
		some t in input.measurements.tests
		t.phase in {"after", "later"}
	})
}

# What is not said that decides whether a test proves the system.
unsaid contains [t.id, ["measurements", "tests", i, "phase"]] if {
	some i, t in input.measurements.tests
	t.id in open
	not is_string(t.phase)
}

unsaid contains [t.id, ["measurements", "tests", i, "blank"]] if {
	some i, t in input.measurements.tests
	t.id in open
	not t.id in monitors
	not is_boolean(t.blank)
}

unsaid contains [t.id, ["job", "contaminant"]] if {
	some t in input.measurements.tests
	not is_string(input.job.contaminant)
}

unsaid_kind contains [t.id, ["measurements", "tests", i, "kind"]] if {
	some i, t in input.measurements.tests
	t.id in open
	not is_string(t.kind)
}

# Tests before the work that do not say whether the result is an upper bound:
# less than that may have gone away.
unsaid_detection contains ["measurements", "tests", i, "below_detection"] if {
	some i, t in input.measurements.tests
	t.phase == "before"
	not is_boolean(t.below_detection)
}

# The same for rules whose subject is all tests together.
unsaid_of_all contains path if some [_, path] in unsaid

unsaid_of_all contains ["measurements", "tests"] if not is_array(input.measurements.tests)
