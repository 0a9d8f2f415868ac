package policy.testing.duplicate_spacing_test

import data.policy.lib
import data.policy.testing.duplicate_spacing as rule
import rego.v2

# ANSI/AARST MAH 2019 7.2.1, 8.5.2(d): 8 in (0.2032 m) at most.
profile := {"testing": {"duplicate_spacing": {"minimum": {"si": 0}, "maximum": {"si": 0.2032}}}}

job(values) := {
	"job": {"contaminant": "radon"},
	"measurements": {"tests": []},
	"derived": {"duplicates": [object.union({"id": "a/b", "at": ""}, values)]},
}

verdict(job) := v if v := lib.verdict(rule, "a/b") with input as job with data.profile as profile

test_not_applicable_to_chemical_vapor if {
	verdict(object.union(job({}), {"job": {"contaminant": "chemical-vapor"}})) == "not-applicable"
}

test_unrecorded if verdict(job({})) == "unrecorded"

test_unrecorded_without_a_list if {
	"unrecorded" == lib.verdict(rule, "measurements") with input as {} with data.profile as profile
}

test_met_at_exactly_eight_inches if verdict(job({"spacing": {"si": 0.2032}})) == "met"

test_deficient_at_nine if verdict(job({"spacing": {"si": 0.2286}})) == "deficient"

# 32 Ill. Adm. Code 422.130(c) (from memory): 4 to 5 in.
test_illinois_wants_them_neither_closer_nor_farther if {
	illinois := {"testing": {"duplicate_spacing": {"minimum": {"si": 0.1016}, "maximum": {"si": 0.127}}}}
	"met" == lib.verdict(rule, "a/b") with input as job({"spacing": {"si": 0.1016}}) with data.profile as illinois
	"met" == lib.verdict(rule, "a/b") with input as job({"spacing": {"si": 0.127}}) with data.profile as illinois
	"deficient" == lib.verdict(rule, "a/b") with input as job({"spacing": {"si": 0.0762}}) with data.profile as illinois
	"deficient" == lib.verdict(rule, "a/b") with input as job({"spacing": {"si": 0.1524}}) with data.profile as illinois
}

test_says_what_is_missing if {
	got := rule.missing with input as {"measurements": {"tests": []}, "derived": {"duplicates": [{"id": "a/b", "at": ""}]}} with data.profile as profile
	got == {
		["a/b", ["job", "contaminant"]],
		["a/b", ["derived", "duplicates", 0, "spacing"]],
	}
}
