# METADATA
# title: The package holds the radon results from before and after
# description: Two numbers tell the family, and one day the buyer, what the system does for them.
# custom:
#   subject: closeout package
#   grade: required
#   stage: closeout
#   remedy: Add the results of the tests before and after.
package policy.papers.package_results

import data.policy.systems
import rego.v2

subjects contains ["closeout", ["closeout", "package", "results_before_after"]]

exempt contains [id, "the system is only roughed in"] if {
	some [id, _] in subjects
	systems.only_roughed_in
}

met contains "closeout" if {
	systems.built
	input.closeout.package.results_before_after == true
}

deficient contains ["closeout", ["closeout", "package", "results_before_after"]] if {
	systems.built
	input.closeout.package.results_before_after == false
}

missing contains [id, path] if {
	some [id, _] in subjects
	not systems.built
	some path in systems.unsaid_power
}

missing contains ["closeout", ["closeout", "package", "results_before_after"]] if {
	not is_boolean(input.closeout.package.results_before_after)
}
