package policy.sealing.drains_to_soil_test

import data.policy.lib
import data.policy.sealing.drains_to_soil as rule
import rego.v2

# EPA RMS 1994 14.7.2 (from memory): a condensate drain that ends below the slab is
# trapped, led to a trapped floor drain, or pumped. IRC 2018 AF103.4.3: trapped or
# in solid pipe to daylight. SGM-SF 2017 (12/20) 7.8.2: utility drains get a
# one-way valve, another route or a deep trap.
limits(kinds, treatments) := {"sealing": {"drains_to_soil": {
	"kinds": {"any_of": kinds},
	"treatments": {"any_of": treatments},
}}}

epa := limits(["condensate-drain"], ["trapped", "rerouted"])

consensus := limits(["condensate-drain", "utility-drain"], ["trapped", "rerouted", "one-way-valve"])

drain(fields) := {"entry_routes": [object.union({"id": "r", "kind": "condensate-drain"}, fields)]}

verdict(job) := v if v := lib.verdict(rule, "r") with input as job with data.profile as epa

test_met if verdict(drain({"treatment": "trapped"})) == "met"

test_deficient if verdict(drain({"treatment": "left-open"})) == "deficient"

test_unrecorded if verdict(drain({})) == "unrecorded"

test_a_valve_where_the_source_names_it if {
	verdict(drain({"treatment": "one-way-valve"})) == "deficient"
	"met" == lib.verdict(rule, "r") with input as drain({"treatment": "one-way-valve"}) with data.profile as consensus
}

test_utility_drains_where_the_source_names_them if {
	job := drain({"kind": "utility-drain", "treatment": "left-open"})
	"deficient" == lib.verdict(rule, "r") with input as job with data.profile as consensus
	got := rule.subjects with input as job with data.profile as epa
	count(got) == 0
}

test_unrecorded_kind if verdict({"entry_routes": [{"id": "r"}]}) == "unrecorded"

test_unrecorded_without_entry_routes if {
	"unrecorded" == lib.verdict(rule, "entry_routes") with input as {} with data.profile as epa
}
