package policy.physics.trap_clears_test

import data.policy.lib
import data.policy.physics.trap_clears as rule
import rego.v2

# common practice. 1.2 inH2O lifts a seal of 1.2 in and no more.
profile := {"physics": {"trap_clears": {"drained": {"any_of": ["other-drain"]}}}}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

record(drainage, depth, lift, shutoff) := {
	"house": {"altitude": {"si": 300}},
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "pipe": [{"id": "p", "drainage": drainage}]}],
	"derived": {
		"systems": [{"id": "s", "at": "/systems/0", "shutoff_pressure": shutoff}],
		"segments": [{"id": "p", "at": "/systems/0/pipe/0", "system": "s", "trap_depth": depth, "trap_suction": lift}],
	},
}

test_met_without_a_trap if verdict(record("slopes-to-suction", {"si": 0}, {"si": 0}, {})) == "met"

test_met_at_the_limit if verdict(record("holds-water", {"si": 0.03048}, {"si": 298.9}, {"si": 298.9})) == "met"

test_deficient if verdict(record("holds-water", {"si": 0.05}, {"si": 490.3}, {"si": 298.9})) == "deficient"

test_met_when_drained if verdict(record("other-drain", {"si": 0.05}, {"si": 490.3}, {"si": 298.9})) == "met"

test_undetermined_without_a_curve if verdict(record("holds-water", {"si": 0.05}, {"si": 490.3}, {})) == "undetermined"

test_unrecorded if verdict({"systems": [{"id": "s"}]}) == "unrecorded"

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	got == {["s", ["systems", 0, "kind"]], ["s", ["systems", 0, "powered_by"]]}
}

test_not_applicable_without_a_fan if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}
