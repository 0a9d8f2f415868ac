package policy.diagnostics.suction_reaches_test

import data.policy.diagnostics.suction_reaches as rule
import data.policy.lib
import rego.v2

# common practice: any measurable suction at every hole; the sign is that of the
# pressure below the slab less that of the room.
profile := {"diagnostics": {"suction_reaches": {"below": {"si": 0}}}}

job(hole) := {"diagnostics": {"communication_tests": [{"id": "t", "holes": [object.union({"id": "h"}, hole)]}]}}

verdict(job) := v if v := lib.verdict(rule, "h") with input as job with data.profile as profile

test_met if verdict(job({"pressure": {"si": -2}})) == "met"

test_deficient_at_zero if verdict(job({"pressure": {"si": 0}})) == "deficient"

test_deficient_when_it_pushes if verdict(job({"pressure": {"si": 1}, "smoke": "up"})) == "deficient"

test_the_meter_counts_more_than_smoke if verdict(job({"pressure": {"si": 1}, "smoke": "down"})) == "deficient"

test_undetermined_by_smoke_alone if verdict(job({"smoke": "down"})) == "undetermined"

test_deficient_by_smoke_that_does_not_go_down if {
	verdict(job({"smoke": "still"})) == "deficient"
	verdict(job({"smoke": "up"})) == "deficient"
}

test_unrecorded if verdict(job({})) == "unrecorded"

test_unrecorded_without_holes if {
	"unrecorded" == lib.verdict(rule, "t") with data.profile as profile
		with input as {"diagnostics": {"communication_tests": [{"id": "t"}]}}
}

test_unrecorded_without_a_list if {
	"unrecorded" == lib.verdict(rule, "diagnostics") with input as {} with data.profile as profile
}
