package policy.membrane.heavy_cover_test

import data.policy.lib
import data.policy.membrane.heavy_cover as rule
import rego.v2

# EPA RMS 1994 15.9 (from memory) and RMS-LB 2018 (12/20) 7.6.1: heavier sheet or a
# cover is advised where things are stored or people often enter.
profile := {"membrane": {"heavy_cover": {}}}

sheet(stored, cover) := {
	"systems": [{"id": "s", "kind": "sub-membrane", "foundations": ["f"], "membrane": {"heavy_cover": cover}}],
	"house": {"foundations": [{"id": "f", "used_for_storage": stored}]},
}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met if verdict(sheet(true, true)) == "met"

test_deficient if verdict(sheet(true, false)) == "deficient"

test_not_applicable_where_nobody_goes if verdict(sheet(false, false)) == "not-applicable"

test_unrecorded if {
	verdict({
		"systems": [{"id": "s", "kind": "sub-membrane", "foundations": ["f"]}],
		"house": {"foundations": [{"id": "f", "used_for_storage": true}]},
	}) == "unrecorded"
}

test_unrecorded_use if {
	verdict({"systems": [{
		"id": "s", "kind": "sub-membrane",
		"foundations": ["f"], "membrane": {"heavy_cover": false},
	}]}) == "unrecorded"
}

test_not_applicable_without_a_membrane if verdict({"systems": [{"id": "s", "kind": "sub-slab"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {
		"systems": [{"id": "s"}, {"id": "t", "kind": "sub-membrane", "foundations": ["f"], "membrane": {"heavy_cover": true}}],
		"house": {"foundations": [{"id": "f"}]},
	}
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "foundations"]],
		["s", ["systems", 0, "membrane", "heavy_cover"]],
		["t", ["house", "foundations", 0, "used_for_storage"]],
	}
}
