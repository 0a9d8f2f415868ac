package policy.membrane.overlap_test

import data.policy.lib
import data.policy.membrane.overlap as rule
import rego.v2

# EPA RMS 1994 14.5.6 (from memory), IRC 2018 AF103.5.2, CC-1000 2018 6.4.3 and an
# Illinois training text: 12 in or more.
profile := {"membrane": {"overlap": {"minimum": {"si": 0.3048}}}}

sheet(fields) := {"systems": [{"id": "s", "kind": "sub-membrane", "membrane": fields}]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met_at_exactly_twelve_inches if verdict(sheet({"has_seams": true, "seam_overlap": {"si": 0.3048}})) == "met"

test_deficient if verdict(sheet({"has_seams": true, "seam_overlap": {"si": 0.3}})) == "deficient"

test_unrecorded if verdict(sheet({"has_seams": true})) == "unrecorded"

test_unrecorded_condition if verdict(sheet({"seam_overlap": {"si": 0.3048}})) == "unrecorded"

test_not_applicable if verdict(sheet({"has_seams": false})) == "not-applicable"

test_not_applicable_without_a_membrane if verdict({"systems": [{"id": "s", "kind": "sub-slab"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "membrane", "has_seams"]],
		["s", ["systems", 0, "membrane", "seam_overlap"]],
	}
}
