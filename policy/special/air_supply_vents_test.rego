package policy.special.air_supply_vents_test

import data.policy.lib
import data.policy.special.air_supply_vents as rule
import rego.v2

# RMS-LB 2018 (12/20) 12.2: supply vents open, protected, away from exhausts and waste bins.
profile := {"special": {"air_supply_vents": {"kinds": {"any_of": ["pressurization", "heat-recovery-ventilation", "crawlspace-ventilation"]}}}}

made(parts) := {"systems": [object.union({"id": "s", "kind": "pressurization"}, parts)]}

full := {"ventilation": {"vents_unblocked": true}}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met if verdict(made(full)) == "met"

test_deficient_vents_unblocked if verdict(made(object.union(full, {"ventilation": {"vents_unblocked": false}}))) == "deficient"

test_unrecorded_vents_unblocked if verdict(made(json.remove(full, ["ventilation/vents_unblocked"]))) == "unrecorded"

test_unrecorded_kind if verdict({"systems": [object.union({"id": "s"}, full)]}) == "unrecorded"

test_not_applicable_to_other_systems if verdict({"systems": [{"id": "s", "kind": "baseboard-channel"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "ventilation", "vents_unblocked"]],
	}
}
