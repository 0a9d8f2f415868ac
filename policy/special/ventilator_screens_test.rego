package policy.special.ventilator_screens_test

import data.policy.lib
import data.policy.special.ventilator_screens as rule
import rego.v2

# EPA RMS 1994 14.8.6 (from memory): screened inside and outside.
profile := {"special": {"ventilator_screens": {"kinds": {"any_of": ["heat-recovery-ventilation"]}}}}

made(parts) := {"systems": [object.union({"id": "s", "kind": "heat-recovery-ventilation"}, parts)]}

full := {"ventilation": {"ports_screened": true}}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met if verdict(made(full)) == "met"

test_deficient_ports_screened if verdict(made(object.union(full, {"ventilation": {"ports_screened": false}}))) == "deficient"

test_unrecorded_ports_screened if verdict(made(json.remove(full, ["ventilation/ports_screened"]))) == "unrecorded"

test_unrecorded_kind if verdict({"systems": [object.union({"id": "s"}, full)]}) == "unrecorded"

test_not_applicable_to_other_systems if verdict({"systems": [{"id": "s", "kind": "baseboard-channel"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "ventilation", "ports_screened"]],
	}
}
