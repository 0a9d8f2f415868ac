package policy.special.vent_to_roof_test

import data.policy.lib
import data.policy.special.vent_to_roof as rule
import rego.v2

# British Columbia Building Code 9.13 (from memory, news summary): area 1, new houses since December 2014.
profile := {"special": {"vent_to_roof": {"not_for": {"any_of": ["existing"]}, "regions": {"any_of": ["BC"]}}}}

made(parts) := {"house": {"new_construction": true}, "job": {"jurisdiction": {"state": "BC"}}, "systems": [object.union({"id": "s", "kind": "sub-slab"}, parts)]}

full := {"rough_in": {"reaches_roof": true}}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

test_met if verdict(made(full)) == "met"

test_deficient_reaches_roof if verdict(made(object.union(full, {"rough_in": {"reaches_roof": false}}))) == "deficient"

test_unrecorded_reaches_roof if verdict(made(json.remove(full, ["rough_in/reaches_roof"]))) == "unrecorded"

test_unrecorded_kind if verdict({"house": {"new_construction": true}, "job": {"jurisdiction": {"state": "BC"}}, "systems": [object.union({"id": "s"}, full)]}) == "unrecorded"

test_not_applicable_to_other_systems if verdict({"house": {"new_construction": true}, "job": {"jurisdiction": {"state": "BC"}}, "systems": [{"id": "s", "kind": "crawlspace-ventilation"}]}) == "not-applicable"

test_not_applicable_to_a_house_that_stands if verdict(object.union(made({}), {"house": {"new_construction": false}})) == "not-applicable"

test_unrecorded_house if verdict(object.remove(made(full), ["house"])) == "unrecorded"

test_not_applicable_elsewhere if verdict(object.union(made({}), {"job": {"jurisdiction": {"state": "MB"}}})) == "not-applicable"

test_unrecorded_region if verdict(object.remove(made(full), ["job"])) == "unrecorded"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}]} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["house", "new_construction"]],
		["s", ["job", "jurisdiction", "state"]],
		["s", ["systems", 0, "rough_in", "reaches_roof"]],
	}
}
