package policy.testing.spikes_agree_test

import data.policy.lib
import data.policy.testing.spikes_agree as rule
import rego.v2

# ANSI/AARST MS-QA 2019 5.3.3: warning outside 20 %, control outside 30 %.
profile := {"testing": {"spikes_agree": {
	"warning_below": {"si": -20}, "warning_above": {"si": 20},
	"control_below": {"si": -30}, "control_above": {"si": 30},
}}}

verdict(value) := v if {
	job := {"derived": {"spikes": [{"id": "s", "at": "", "relative_error": value}]}}
	v := lib.verdict(rule, "s") with input as job with data.profile as profile
}

# 9.1 read at 11.0 pCi/L: 17.3 % too low.
test_met if verdict({"si": -17.27273}) == "met"

test_met_at_exactly_twenty if {
	verdict({"si": 20}) == "met"
	verdict({"si": -20}) == "met"
}

test_undetermined_in_the_warning_band if {
	verdict({"si": 20.1}) == "undetermined"
	verdict({"si": -30}) == "undetermined"
}

test_deficient_outside if {
	verdict({"si": 30.1}) == "deficient"
	verdict({"si": -30.1}) == "deficient"
}

test_unrecorded if verdict({"undetermined": ["/measurements/spikes/0/measured"]}) == "unrecorded"
