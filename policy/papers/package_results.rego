# METADATA
# title: The package holds the radon results from before and after
# description: Two numbers tell the family, and one day the buyer, what the system does for them.
# custom:
#   subject: closeout package
#   grade: required
#   stage: closeout
#   remedy: Add the results of the tests before and after.
package policy.papers.package_results

import rego.v2

subjects contains ["closeout", ["closeout", "package", "results_before_after"]]

met contains "closeout" if input.closeout.package.results_before_after == true

deficient contains ["closeout", ["closeout", "package", "results_before_after"]] if input.closeout.package.results_before_after == false
