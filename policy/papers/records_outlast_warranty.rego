# METADATA
# title: Job records are kept as long as the warranty runs
# description: Nobody can put right under warranty what nobody can look up.
# custom:
#   subject: office records
#   grade: required
#   stage: closeout
#   remedy: Keep the records at least until the warranty ends.
package policy.papers.records_outlast_warranty

import rego.v2

subjects contains ["closeout", ["closeout", "records", "kept_for"]]

met contains "closeout" if input.closeout.records.kept_for.si >= input.closeout.warranty.length.si

deficient contains ["closeout", ["closeout", "records", "kept_for"]] if {
	input.closeout.records.kept_for.si < input.closeout.warranty.length.si
}

missing contains ["closeout", ["closeout", "records", "kept_for"]] if not is_number(input.closeout.records.kept_for.si)

missing contains ["closeout", ["closeout", "warranty", "length"]] if not is_number(input.closeout.warranty.length.si)
