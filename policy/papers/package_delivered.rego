# METADATA
# title: The client got the package, once the work was finished
# description: Papers that stay in the office help nobody on the night the alarm goes off.
# custom:
#   subject: closeout package
#   grade: required
#   stage: closeout
#   remedy: Hand the package over and write down the day; if it was handed over before the end of the work, bring what is new.
package policy.papers.package_delivered

import rego.v2

subjects contains ["closeout", ["closeout", "package", "delivered"]]

met contains "closeout" if input.closeout.package.delivered.si >= input.job.dates.completed.si

deficient contains ["closeout", ["closeout", "package", "delivered"]] if {
	input.closeout.package.delivered.si < input.job.dates.completed.si
}

missing contains ["closeout", ["closeout", "package", "delivered"]] if not is_number(input.closeout.package.delivered.si)

missing contains ["closeout", ["job", "dates", "completed"]] if not is_number(input.job.dates.completed.si)
