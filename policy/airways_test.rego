package policy.airways_test

import data.policy.airways
import rego.v2

job := {
	"house": {"altitude": {"si": 300}},
	"systems": [
		{"id": "full", "commissioning": {"measured_flow": {"si": 0.03}}, "discharge": {"rain_cap": false}},
		{"id": "flow", "commissioning": {"measured_flow": {"si": 0.03}}},
		{"id": "bare"},
	],
}

test_measured if {
	got := airways.measured with input as job
	got == {"full", "flow"}
}

test_told if {
	got := airways.told with input as job
	got == {"full"}
}

test_proven if {
	got := airways.proven with input as job
	got == {"full"}
}

test_untold if {
	got := airways.untold with input as {"systems": [{"id": "bare"}]}
	got == {["bare", ["house", "altitude"]], ["bare", ["systems", 0, "discharge", "rain_cap"]]}
}

test_reason_is_there if is_string(airways.only_computed)
