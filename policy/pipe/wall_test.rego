package policy.pipe.wall_test

import data.policy.lib
import data.policy.pipe.wall as rule
import rego.v2

# EPA RMS 1994 15.2 (from memory): plastic no thinner than Schedule 20.
profile := {"pipe": {"wall": {"allowed": {"any_of": ["sch-20", "sch-40"]}, "arguable": {"any_of": ["sdr-35"]}}}}

segment(fields) := {"systems": [{
	"id": "s", "kind": "sub-slab", "powered_by": "fan",
	"pipe": [object.union({"id": "p", "above_ground": true}, fields)],
}]}

verdict(job) := v if v := lib.verdict(rule, "p") with input as job with data.profile as profile

pvc(schedule) := segment({"material": "pvc", "schedule": schedule})

test_met if verdict(pvc("sch-20")) == "met"

test_deficient if verdict(pvc("other")) == "deficient"

test_undetermined_by_another_scale if verdict(pvc("sdr-35")) == "undetermined"

# SGM-SF 2017 (12/20) 6.2.5: Schedule 40.
test_deficient_where_schedule_forty_is_asked if {
	forty := {"pipe": {"wall": {"allowed": {"any_of": ["sch-40"]}, "arguable": {"any_of": []}}}}
	"deficient" == lib.verdict(rule, "p") with input as pvc("sch-20") with data.profile as forty
}

test_not_applicable_to_metal if verdict(segment({"material": "metal-downspout"})) == "not-applicable"

test_unrecorded_without_material if verdict(segment({"schedule": "other"})) == "unrecorded"

test_unrecorded if verdict(segment({})) == "unrecorded"

test_not_applicable_below_the_slab if verdict(segment({"above_ground": false})) == "not-applicable"

test_unrecorded_without_a_list_of_pipe if {
	"unrecorded" == lib.verdict(rule, "s") with input as {"systems": [{"id": "s", "kind": "sub-slab"}]} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s", "pipe": [{"id": "p"}]}]} with data.profile as profile
	got == {
		["p", ["systems", 0, "kind"]],
		["p", ["systems", 0, "pipe", 0, "above_ground"]],
		["p", ["systems", 0, "pipe", 0, "material"]],
		["p", ["systems", 0, "pipe", 0, "schedule"]],
	}
}
