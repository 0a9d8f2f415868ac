package policy.electrical.circuit_load_test

import data.policy.electrical.circuit_load as rule
import data.policy.lib
import rego.v2

# EPA RMS 1994 14.6.6 (from memory; Illinois agrees): a circuit of its own where
# the fan takes more than 50 % of the circuit or all loads more than 80 %.
profile := {"electrical": {"circuit_load": {"fan": {"si": 0.5}, "total": {"si": 0.8}}}}

loaded(fan, total, dedicated) := {
	"systems": [{"id": "s", "powered_by": "fan", "electrical": dedicated}],
	"derived": {"systems": [{"id": "s", "at": "/systems/0", "circuit_share_fan": fan, "circuit_share_total": total}]},
}

wired(fields) := {"systems": [object.union({"id": "s", "powered_by": "fan"}, fields)]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met_at_exactly_both if verdict(loaded({"si": 0.5}, {"si": 0.8}, {"circuit_dedicated": false})) == "met"

# Worked case 23: fan 90 W, other load 1,400 W on 15 A at 120 V, 1,800 W. Fan 5 %,
# total 1,490 W or 82.8 %.
test_deficient_over_eighty_percent if {
	job := loaded({"si": 0.05}, {"si": 0.827777777778}, {"circuit_dedicated": false})
	verdict(job) == "deficient"
	got := rule.deficient with input as job with data.profile as profile
	got == {["s", ["derived", "systems", 0, "circuit_share_total"], "total"]}
}

test_deficient_by_the_fan_alone if verdict(loaded({"si": 0.51}, {"si": 0.51}, {"circuit_dedicated": false})) == "deficient"

test_met_by_a_circuit_of_its_own if verdict(loaded({"si": 0.6}, {"si": 0.6}, {"circuit_dedicated": true})) == "met"

test_unrecorded_whether_it_is_shared if verdict(loaded({"si": 0.6}, {"si": 0.6}, {})) == "unrecorded"

test_unrecorded_load if {
	verdict(loaded({"si": 0.05}, {"undetermined": ["/systems/0/electrical/circuit_other_load"]}, {"circuit_dedicated": false})) == "unrecorded"
}

test_unrecorded if verdict(wired({})) == "unrecorded"

test_not_applicable_without_a_fan if verdict({"systems": [{"id": "s", "powered_by": "passive"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}], "derived": {"systems": [{"id": "s", "at": "/systems/0"}]}} with data.profile as profile
	got == {
		["s", ["systems", 0, "powered_by"]],
		["s", ["systems", 0, "electrical", "circuit_dedicated"]],
		["s", ["derived", "systems", 0, "circuit_share_fan"]],
		["s", ["derived", "systems", 0, "circuit_share_total"]],
	}
}
