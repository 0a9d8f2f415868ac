package policy.lib_test

import data.policy.lib
import rego.v2

sets := {
	"subjects": {["a", []], ["b", []], ["c", []], ["d", []], ["e", []]},
	"exempt": {["a", "why"]},
	"met": {"b"},
	"deficient": {["c", []]},
	"undetermined": {["d", [], "why"]},
}

test_each_set_gives_its_verdict if {
	lib.verdict(sets, "a") == "not-applicable"
	lib.verdict(sets, "b") == "met"
	lib.verdict(sets, "c") == "deficient"
	lib.verdict(sets, "d") == "undetermined"
}

test_silence_is_unrecorded if lib.verdict(sets, "e") == "unrecorded"
