package policy.occupants_test

import data.policy.occupants
import rego.v2

test_left_out if occupants.left_out(["tenant"]) with input as {"house": {"occupancy": "tenant"}}

test_not_left_out_when_unrecorded if not occupants.left_out(["tenant"]) with input as {}

test_meant if occupants.meant(["tenant"]) with input as {"house": {"occupancy": "owner"}}

test_meant_whatever_it_is if occupants.meant([]) with input as {}

test_not_meant_when_unrecorded if not occupants.meant(["tenant"]) with input as {}

test_untold if occupants.untold(["tenant"]) with input as {}

test_told if not occupants.untold(["tenant"]) with input as {"house": {"occupancy": "owner"}}

test_nothing_to_tell if not occupants.untold([]) with input as {}
