# METADATA
# title: Job records are kept long enough
# description: When someone falls ill years later the file is all that is left of the job.
# custom:
#   subject: office records
#   grade: required
#   stage: closeout
#   remedy: Keep the records as long as the standard or the licence asks for.
#   limits:
#     minimum: {dimension: duration, sense: at-least}
package policy.papers.records_kept

import rego.v2

minimum := data.profile.papers.records_kept.minimum.si

subjects contains ["closeout", ["closeout", "records", "kept_for"]]

met contains "closeout" if input.closeout.records.kept_for.si >= minimum

deficient contains ["closeout", ["closeout", "records", "kept_for"], "minimum"] if {
	input.closeout.records.kept_for.si < minimum
}
