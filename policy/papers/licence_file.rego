# METADATA
# title: The office keeps the records that its licence asks for
# description: The state looks in these files when a family complains.
# custom:
#   subject: office records
#   grade: required
#   stage: closeout
#   remedy: Add what is left out to the office's records.
#   limits:
#     contents: {dimension: choice, sense: all-of}
package policy.papers.licence_file

import rego.v2

needed := data.profile.papers.licence_file.contents.any_of

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
