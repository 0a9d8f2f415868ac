# METADATA
# title: The package stays with the system
# description: Papers in a drawer move out with the owner, and the next family has a pipe without a story.
# custom:
#   subject: closeout package
#   grade: required
#   stage: closeout
#   remedy: Fix the package to the system in plain view, or keep it in the mechanical room.
#   limits:
#     places: {dimension: choice, sense: one-of}
package policy.papers.package_place

import rego.v2

places := data.profile.papers.package_place.places.any_of

subjects contains ["closeout", ["closeout", "package", "kept_at"]]

exempt contains [id, "somebody else than the owner lives there or looks after it"] if {
	some [id, _] in subjects
	is_string(input.house.occupancy)
	input.house.occupancy != "owner"
}

met contains "closeout" if {
	input.house.occupancy == "owner"
	input.closeout.package.kept_at in places
}

deficient contains ["closeout", ["closeout", "package", "kept_at"], "places"] if {
	input.house.occupancy == "owner"
	is_string(input.closeout.package.kept_at)
	not input.closeout.package.kept_at in places
}

missing contains ["closeout", ["house", "occupancy"]] if not is_string(input.house.occupancy)

missing contains ["closeout", ["closeout", "package", "kept_at"]] if not is_string(input.closeout.package.kept_at)
