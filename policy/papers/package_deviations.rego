# METADATA
# title: The package lists where the work departs from the standard
# description: The next crew must not undo on purpose what was agreed, nor repeat what was only an exception.
# custom:
#   subject: closeout package
#   grade: required
#   stage: closeout
#   remedy: Add the list of departures and code conflicts to the package.
package policy.papers.package_deviations

import rego.v2

subjects contains ["closeout", ["closeout", "package", "deviations"]]

exempt contains [id, "there is no departure"] if {
	some [id, _] in subjects
	is_array(input.closeout.deviations)
	count(input.closeout.deviations) == 0
}

met contains "closeout" if {
	count(input.closeout.deviations) > 0
	input.closeout.package.deviations == true
}

deficient contains ["closeout", ["closeout", "package", "deviations"]] if {
	count(input.closeout.deviations) > 0
	input.closeout.package.deviations == false
}

missing contains ["closeout", ["closeout", "deviations"]] if not is_array(input.closeout.deviations)

missing contains ["closeout", ["closeout", "package", "deviations"]] if not is_boolean(input.closeout.package.deviations)
