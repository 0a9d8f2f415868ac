# METADATA
# title: Records of safety and exposure are kept for a working life
# description: Lung cancer from radon shows after decades; without the log no worker can prove where it came from.
# custom:
#   subject: office records
#   grade: required
#   stage: closeout
#   remedy: Keep the exposure and safety records of every worker for the time asked for.
#   limits:
#     minimum: {dimension: duration, sense: at-least}
package policy.papers.exposure_records_kept

import rego.v2

minimum := data.profile.papers.exposure_records_kept.minimum.si

subjects contains ["closeout", ["closeout", "records", "exposure_kept_for"]]

met contains "closeout" if input.closeout.records.exposure_kept_for.si >= minimum

deficient contains ["closeout", ["closeout", "records", "exposure_kept_for"], "minimum"] if {
	input.closeout.records.exposure_kept_for.si < minimum
}
