# METADATA
# title: The package is titled as radon mitigation information
# description: A folder without a name is thrown out with the old paint cards.
# custom:
#   subject: closeout package
#   grade: required
#   stage: closeout
#   remedy: Put a title on the package that says that it is about the radon system.
package policy.papers.package_titled

import rego.v2

subjects contains ["closeout", ["closeout", "package", "titled"]]

exempt contains [id, "somebody else than the owner lives there or looks after it"] if {
	some [id, _] in subjects
	is_string(input.house.occupancy)
	input.house.occupancy != "owner"
}

met contains "closeout" if {
	input.house.occupancy == "owner"
	input.closeout.package.titled == true
}

deficient contains ["closeout", ["closeout", "package", "titled"]] if {
	input.house.occupancy == "owner"
	input.closeout.package.titled == false
}

missing contains ["closeout", ["house", "occupancy"]] if not is_string(input.house.occupancy)

missing contains ["closeout", ["closeout", "package", "titled"]] if not is_boolean(input.closeout.package.titled)
