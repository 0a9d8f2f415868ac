package policy.houses_test

import data.policy.houses
import rego.v2

old := {"house": {"new_construction": false}}

new := {"house": {"new_construction": true}}

test_an_old_house_is_left_out if {
	houses.left_out(["existing"]) with input as old
	not houses.meant(["existing"]) with input as old
}

test_a_new_house_is_meant if {
	houses.meant(["existing"]) with input as new
	not houses.left_out(["existing"]) with input as new
}

test_nobody_is_left_out if {
	houses.meant([]) with input as {}
	not houses.untold([]) with input as {}
}

test_untold if {
	houses.untold(["existing"]) with input as {}
	not houses.meant(["existing"]) with input as {}
	not houses.left_out(["existing"]) with input as {}
}
