# METADATA
# title: The backdraft test was made after the fan first ran
# description: What the chimney does without the fan says nothing about the first night with it.
# custom:
#   subject: backdraft test
#   grade: hazard
#   stage: running
#   remedy: Test again with the fan running.
#   caution: If flue gas comes out, switch the system off, open windows, get everybody out and call a licensed heating contractor.
package policy.combustion.tested_after_start

import data.policy.systems
import rego.v2

subjects contains ["diagnostics", ["diagnostics", "backdraft_tests"]] if {
	not is_array(input.diagnostics.backdraft_tests)
	not nothing_burns
}

nothing_burns if {
	is_array(input.house.combustion)
	count(input.house.combustion) == 0
}

subjects contains [t.id, ["diagnostics", "backdraft_tests", i, "at"]] if some i, t in input.diagnostics.backdraft_tests

exempt contains [t.id, "it was made with the system off, for comparison"] if {
	some t in input.diagnostics.backdraft_tests
	t.system_on == false
}

exempt contains [t.id, "no fan of a system draws on the ground"] if {
	some t in input.diagnostics.backdraft_tests
	systems.none_with_fan
}

# Fans that had started when the test was made, and fans that had not.
before contains [t.id, s.id] if {
	some t in input.diagnostics.backdraft_tests
	some s in input.systems
	s.id in systems.with_fan
	s.fan.started.si <= t.at.si
}

not_yet contains [t.id, s.id] if {
	some t in input.diagnostics.backdraft_tests
	some s in input.systems
	s.id in systems.with_fan
	s.fan.started.si > t.at.si
}

met contains t.id if {
	count(systems.unsaid) == 0
	count(systems.with_fan) > 0
	some t in input.diagnostics.backdraft_tests
	t.system_on == true
	count(systems.with_fan) == count({s | some [id, s] in before; id == t.id})
}

deficient contains [t.id, ["diagnostics", "backdraft_tests", i, "at"]] if {
	some i, t in input.diagnostics.backdraft_tests
	t.system_on == true
	some [id, _] in not_yet
	id == t.id
}

missing contains [t.id, path] if {
	some t in input.diagnostics.backdraft_tests
	some [_, path] in systems.unsaid
}

missing contains [t.id, ["systems"]] if {
	some t in input.diagnostics.backdraft_tests
	not is_array(input.systems)
}

missing contains [t.id, ["systems", i, "fan", "started"]] if {
	some t in input.diagnostics.backdraft_tests
	some i, s in input.systems
	s.id in systems.with_fan
	not is_number(s.fan.started.si)
}

missing contains [t.id, ["diagnostics", "backdraft_tests", i, "system_on"]] if {
	some i, t in input.diagnostics.backdraft_tests
	not is_boolean(t.system_on)
}

missing contains [t.id, ["diagnostics", "backdraft_tests", i, "at"]] if {
	some i, t in input.diagnostics.backdraft_tests
	not is_number(t.at.si)
}
