package policy.backdraft_test

import data.policy.backdraft
import rego.v2

failed := {"id": "t", "appliance": "a", "passed": false, "at": {"si": 1}}

passed := {"id": "u", "appliance": "a", "passed": true, "system_on": true, "at": {"si": 2}}

made_good(tests) := v if v := backdraft.made_good with input as {"diagnostics": {"backdraft_tests": tests}}

test_made_good if made_good([failed, passed]) == {"t"}

test_not_by_an_earlier_test if made_good([failed, object.union(passed, {"at": {"si": 0}})]) == set()

test_not_with_the_system_off if made_good([failed, object.union(passed, {"system_on": false})]) == set()

test_not_by_another_appliance if made_good([failed, object.union(passed, {"appliance": "b"})]) == set()

test_not_when_the_outcome_is_unknown if made_good([failed, object.remove(passed, ["passed"])]) == set()
