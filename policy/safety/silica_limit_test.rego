package policy.safety.silica_limit_test

import data.policy.lib
import data.policy.safety.silica_limit as rule
import rego.v2

# 29 CFR 1926.1153(d): 50 ug/m3 over 8 hours. 1926.1153 Table 1 (from memory): who
# follows the table need not measure.
profile := {"safety": {"silica_limit": {
	"level": {"si": 50},
	"methods": {"any_of": ["wet"]},
	"filter": {"si": 0.99},
}}}

drilled(fields) := {"safety": object.union({"concrete_drilled": true}, fields)}

verdict(job) := v if v := lib.verdict(rule, "safety") with input as job with data.profile as profile

test_met_at_exactly_fifty if {
	verdict(drilled({"dust_control": "none", "silica_level_ugm3": 50})) == "met"
}

test_met_below if verdict(drilled({"silica_level_ugm3": 18})) == "met"

test_met_by_listed_dust_control if {
	verdict(drilled({"dust_control": "shroud-and-collector", "dust_filter_efficiency": {"si": 0.99}})) == "met"
	verdict(drilled({"dust_control": "wet"})) == "met"
}

test_deficient_above if verdict(drilled({"dust_control": "none", "silica_level_ugm3": 51})) == "deficient"

test_deficient_above_with_a_poor_filter if {
	verdict(drilled({
		"dust_control": "shroud-and-collector", "dust_filter_efficiency": {"si": 0.98},
		"silica_level_ugm3": 51,
	})) == "deficient"
}

test_unrecorded_control if verdict(drilled({"silica_level_ugm3": 51})) == "unrecorded"

test_unrecorded if verdict(drilled({"dust_control": "none"})) == "unrecorded"

test_not_applicable_without_drilling if verdict(drilled({"concrete_drilled": false})) == "not-applicable"

test_says_what_is_missing if {
	none := rule.missing with input as {}
	none == {
		["safety", ["safety", "concrete_drilled"]],
		["safety", ["safety", "silica_level_ugm3"]],
		["safety", ["safety", "dust_control"]],
	}
	shroud := rule.missing with input as drilled({"dust_control": "shroud-and-collector", "silica_level_ugm3": 51})
	shroud == {["safety", ["safety", "dust_filter_efficiency"]]}
}
