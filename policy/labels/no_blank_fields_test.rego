package policy.labels.no_blank_fields_test

import data.policy.labels.no_blank_fields as rule
import data.policy.lib
import rego.v2

# common practice, from what inspectors found
profile := {"labels": {"no_blank_fields": {"maximum": {"si": 0}}}}

carrying(label) := {"systems": [{"id": "s", "labels": [object.union({"id": "a"}, label)]}]}

verdict(job) := v if v := lib.verdict(rule, "a") with input as job with data.profile as profile

test_met_at_exactly_none if verdict(carrying({"blank_fields": 0})) == "met"

test_deficient_at_one if verdict(carrying({"blank_fields": 1})) == "deficient"

test_unrecorded if verdict(carrying({})) == "unrecorded"

test_unrecorded_labels if {
	"unrecorded" == lib.verdict(rule, "s") with input as {"systems": [{"id": "s"}]} with data.profile as profile
}

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}
