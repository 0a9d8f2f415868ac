package policy.physics.crew_hours_test

import data.policy.lib
import data.policy.physics.crew_hours as rule
import rego.v2

# common practice: from the first hour of the first day to the last of the last.
verdict(job) := v if v := lib.verdict(rule, "w") with input as job

record(hours, span) := {"job": {"crew": [{"id": "w", "hours_on_site": hours}]}, "derived": {"order": {"work_span": span}}}

test_met_at_the_limit if verdict(record({"si": 172800}, {"si": 172800})) == "met"

test_deficient if verdict(record({"si": 180000}, {"si": 172800})) == "deficient"

test_undetermined_without_hours if verdict(record({}, {"si": 172800})) == "undetermined"

test_undetermined_without_days if verdict(record({"si": 3600}, {})) == "undetermined"

test_unrecorded_without_a_crew if {
	"unrecorded" == lib.verdict(rule, "job") with input as {}
}
