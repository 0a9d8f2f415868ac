package policy.special.ventilator_indoor_ports_test

import data.policy.lib
import data.policy.special.ventilator_indoor_ports as rule
import rego.v2

# EPA RMS 1994 14.8.4 (from memory): 12 ft or more.
profile := {"special": {"ventilator_indoor_ports": {"kinds": {"any_of": ["heat-recovery-ventilation"]}, "minimum": {"si": 3.6576}}}}

made(parts) := {"systems": [object.union({"id": "s", "kind": "heat-recovery-ventilation"}, parts)]}

full := {"ventilation": {"indoor_port_distance": {"si": 3.6576}}}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met_at_exactly_the_limit if verdict(made(full)) == "met"

test_deficient_minimum if verdict(made(object.union(full, {"ventilation": {"indoor_port_distance": {"si": 3.6}}}))) == "deficient"

test_unrecorded_indoor_port_distance if verdict(made(json.remove(full, ["ventilation/indoor_port_distance"]))) == "unrecorded"

test_unrecorded_kind if verdict({"systems": [object.union({"id": "s"}, full)]}) == "unrecorded"

test_not_applicable_to_other_systems if verdict({"systems": [{"id": "s", "kind": "baseboard-channel"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "ventilation", "indoor_port_distance"]],
	}
}
