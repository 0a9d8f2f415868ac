# METADATA
# title: The office keeps the file of the job complete
# description: What was found, measured and promised in this house can be looked up when somebody asks.
# custom:
#   subject: office records
#   grade: required
#   stage: closeout
#   remedy: Add what is left out to the file of the job.
#   limits:
#     contents: {dimension: choice, sense: all-of}
package policy.papers.job_file

import rego.v2

needed := data.profile.papers.job_file.contents.any_of

subjects contains ["closeout", ["closeout", "records", "contents"]]

left_out contains item if {
	some item in needed
	not item in input.closeout.records.contents
}

met contains "closeout" if {
	is_array(input.closeout.records.contents)
	count(needed) > 0
	count(left_out) == 0
}

deficient contains ["closeout", ["closeout", "records", "contents"], "contents"] if {
	is_array(input.closeout.records.contents)
	count(left_out) > 0
}
