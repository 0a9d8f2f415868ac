# METADATA
# title: The report to the state was filed and is complete
# description: The state finds work that harms families only if it knows where work was done.
# custom:
#   subject: state report
#   grade: required
#   stage: closeout
#   remedy: File the quarterly report with owner, address, dates, kinds of system and building, results and tag number.
package policy.papers.state_report

import rego.v2

subjects contains ["closeout", ["closeout", "state_report", "filed"]]

met contains "closeout" if {
	input.closeout.state_report.filed == true
	input.closeout.state_report.complete == true
}

deficient contains ["closeout", ["closeout", "state_report", "filed"]] if input.closeout.state_report.filed == false

deficient contains ["closeout", ["closeout", "state_report", "complete"]] if input.closeout.state_report.complete == false

missing contains ["closeout", ["closeout", "state_report", "filed"]] if not is_boolean(input.closeout.state_report.filed)

missing contains ["closeout", ["closeout", "state_report", "complete"]] if not is_boolean(input.closeout.state_report.complete)
