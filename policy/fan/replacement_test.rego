package policy.fan.replacement_test

import data.policy.fan.replacement as rule
import data.policy.lib
import rego.v2

# SGM-SF 2023, as the publisher's newsletter of September 2024 describes it: when
# the fan of a system from before 2023 is replaced, outlet and fan place are
# corrected. Height and places as for new systems (from memory).
profile := {"fan": {"replacement": {
	"installed_before": {"si": 1672531200},
	"height": {"si": 3.048},
	"places": {"any_of": ["attic", "exterior", "garage"]},
}}}

old := {"si": 1442188800} # 2015-09-14

job(purpose, installed, altered, place, height) := {
	"job": {"purpose": purpose, "existing_system": {"installed": installed, "parts_altered": altered}},
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "fan": {"place": place}}],
	"derived": {"discharges": [{"id": "s", "at": "/systems/0/discharge", "height_above_grade": {"si": height}}]},
}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job with data.profile as profile

# Worked case 33: fan of a 2015 system replaced in 2024, outlet 7 ft up.
test_case_33 if verdict(job("fan-replacement", old, ["fan"], "exterior", 2.1336)) == "deficient"

test_met_at_exactly_ten_feet if verdict(job("fan-replacement", old, ["fan"], "exterior", 3.048)) == "met"

test_deficient_place if verdict(job("repair", old, ["fan"], "basement", 4)) == "deficient"

test_not_applicable_to_another_repair if verdict(job("repair", old, ["gauge"], "basement", 2)) == "not-applicable"

test_not_applicable_to_a_new_system if verdict(job("new-installation", old, ["fan"], "basement", 2)) == "not-applicable"

test_not_applicable_to_a_system_of_2023 if verdict(job("fan-replacement", {"si": 1672531200}, ["fan"], "basement", 2)) == "not-applicable"

test_unrecorded_without_the_year if verdict(job("fan-replacement", {}, ["fan"], "exterior", 4)) == "unrecorded"

test_unrecorded_without_the_parts if verdict(object.union({"job": {"purpose": "repair"}}, {"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan"}]})) == "unrecorded"

test_not_applicable_without_a_fan if verdict({"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "passive"}]}) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {} with data.profile as profile
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s"}], "derived": {"discharges": [{"id": "s", "at": "/systems/0/discharge"}]}} with data.profile as profile
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["job", "purpose"]],
		["s", ["job", "existing_system", "parts_altered"]],
		["s", ["job", "existing_system", "installed"]],
		["s", ["systems", 0, "fan", "place"]],
		["s", ["derived", "discharges", 0, "height_above_grade"]],
	}
}
