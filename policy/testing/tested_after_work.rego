# METADATA
# title: A radon test was made after the work and has a result
# description: A fan that hums proves nothing; only a test tells the people in the house what they breathe now.
# custom:
#   subject: tests together
#   grade: hazard
#   stage: closeout
#   remedy: Have a test made with the house closed and the fan on. Where a state lets the owner waive it, record the signed waiver as a variance.
#   caution: High radon harms over years; keep time in the lowest rooms short and air them until it is down.
package policy.testing.tested_after_work

import data.policy.radon_tests
import data.policy.systems
import rego.v2

subjects contains ["measurements", ["measurements", "tests"]]

exempt contains [radon_tests.all, reason] if some reason in radon_tests.not_asked

exempt contains [radon_tests.all, "the system is only roughed in"] if systems.only_roughed_in

met contains radon_tests.all if {
	systems.built
	some t in input.measurements.tests
	t.id in radon_tests.after
	is_number(t.result.si)
}

deficient contains [radon_tests.all, ["measurements", "tests"]] if {
	systems.built
	radon_tests.none_after
}

missing contains [radon_tests.all, path] if {
	not systems.built
	some path in systems.unsaid_power
}

missing contains [radon_tests.all, path] if some path in radon_tests.unsaid_of_all

missing contains [radon_tests.all, ["measurements", "tests", i, "result"]] if {
	some i, t in input.measurements.tests
	t.id in radon_tests.open
	not is_number(t.result.si)
}
