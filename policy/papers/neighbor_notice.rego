# METADATA
# title: Neighbors under the same roof were told when not all units are treated
# description: Soil gas does not stop at a party wall, and the family next door may want to test.
# custom:
#   subject: closeout package
#   grade: required
#   stage: closeout
#   remedy: Add the notice to neighbors to the papers and hand it out.
#   limits:
#     shared: {dimension: choice, sense: applies-to}
package policy.papers.neighbor_notice

import rego.v2

shared := data.profile.papers.neighbor_notice.shared.any_of

subjects contains ["closeout", ["closeout", "package", "neighbor_notice"]]

exempt contains [id, "the house stands by itself"] if {
	some [id, _] in subjects
	is_string(input.house.kind)
	not input.house.kind in shared
	is_array(shared)
}

exempt contains [id, "all units are treated"] if {
	some [id, _] in subjects
	count(input.systems) > 0
	count(untreated) == 0
	count(untold) == 0
}

untreated contains s.id if {
	some s in input.systems
	s.commissioning.neighbor_units_treated == false
}

untold contains ["closeout", ["systems", i, "commissioning", "neighbor_units_treated"]] if {
	some i, s in input.systems
	not is_boolean(s.commissioning.neighbor_units_treated)
}

asked if {
	input.house.kind in shared
	count(untreated) > 0
}

met contains "closeout" if {
	asked
	input.closeout.package.neighbor_notice == true
}

deficient contains ["closeout", ["closeout", "package", "neighbor_notice"]] if {
	asked
	input.closeout.package.neighbor_notice == false
}

missing contains gap if some gap in untold

missing contains ["closeout", ["systems"]] if not is_array(input.systems)

missing contains ["closeout", ["house", "kind"]] if not is_string(input.house.kind)

missing contains ["closeout", ["closeout", "package", "neighbor_notice"]] if {
	not is_boolean(input.closeout.package.neighbor_notice)
}
