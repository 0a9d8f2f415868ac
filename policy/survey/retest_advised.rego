# METADATA
# title: Where the earlier test was not made to the rules, a new one was advised
# description: A system designed on a wrong number may be too weak, or not needed at all.
# custom:
#   subject: diagnostics
#   grade: required
#   stage: planned
#   remedy: Tell the client that the earlier test does not count and advise a new one before the work.
package policy.survey.retest_advised

import rego.v2

subjects contains ["diagnostics", ["diagnostics", "retest_advised"]]

exempt contains [id, "the earlier test was made to the rules"] if {
	some [id, _] in subjects
	input.diagnostics.earlier_test_valid == true
}

asked if input.diagnostics.earlier_test_valid == false

met contains id if {
	asked
	some [id, _] in subjects
	input.diagnostics.retest_advised == true
}

deficient contains [id, ["diagnostics", "retest_advised"]] if {
	asked
	some [id, _] in subjects
	input.diagnostics.retest_advised == false
}

missing contains [id, ["diagnostics", "earlier_test_valid"]] if {
	some [id, _] in subjects
	not is_boolean(input.diagnostics.earlier_test_valid)
}

missing contains [id, ["diagnostics", "retest_advised"]] if {
	some [id, _] in subjects
	not is_boolean(input.diagnostics.retest_advised)
}
