# METADATA
# title: Smoke at cracks and joints is drawn in with the system on
# description: Where smoke comes out, soil gas comes out.
# custom:
#   subject: smoke test
#   grade: recommended
#   stage: running
#   remedy: Seal the place and find out why it is not under suction.
package policy.diagnostics.smoke_drawn_in

import rego.v2

subjects contains ["diagnostics", ["diagnostics", "smoke_tests"]] if not is_array(input.diagnostics.smoke_tests)

subjects contains [t.id, ["diagnostics", "smoke_tests", i, "result"]] if some i, t in input.diagnostics.smoke_tests

met contains t.id if {
	some t in input.diagnostics.smoke_tests
	t.result == "drawn-in"
}

deficient contains [t.id, ["diagnostics", "smoke_tests", i, "result"]] if {
	some i, t in input.diagnostics.smoke_tests
	t.result == "pushed-out"
}

undetermined contains [t.id, ["diagnostics", "smoke_tests", i, "result"], "still smoke tells neither way"] if {
	some i, t in input.diagnostics.smoke_tests
	t.result == "still"
}
