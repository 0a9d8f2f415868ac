# METADATA
# title: The client was told about duties to report
# description: Some states make the owner or seller report radon work; nobody should learn that from a fine.
# custom:
#   subject: job
#   grade: required
#   stage: closeout
#   remedy: Tell the client which reports the state or the town asks for.
package policy.papers.reporting_duties_told

import rego.v2

subjects contains ["job", ["job", "jurisdiction", "reporting_duties_told"]]

met contains "job" if input.job.jurisdiction.reporting_duties_told == true

deficient contains ["job", ["job", "jurisdiction", "reporting_duties_told"]] if input.job.jurisdiction.reporting_duties_told == false
