# METADATA
# title: The package holds copies of the permits
# description: A buyer or an insurer who asks whether the wiring was inspected gets the paper and not a shrug.
# custom:
#   subject: closeout package
#   grade: required
#   stage: closeout
#   remedy: Add copies of all permits to the package.
package policy.papers.package_permits

import rego.v2

subjects contains ["closeout", ["closeout", "package", "permits"]]

exempt contains [id, "no permit was needed"] if {
	some [id, _] in subjects
	is_array(input.job.permits)
	count(needed) == 0
	count(untold) == 0
}

needed contains p.id if {
	some p in input.job.permits
	is_string(p.status)
	p.status != "not-required"
}

untold contains ["closeout", ["job", "permits", i, "status"]] if {
	some i, p in input.job.permits
	not is_string(p.status)
}

met contains "closeout" if {
	count(needed) > 0
	input.closeout.package.permits == true
}

deficient contains ["closeout", ["closeout", "package", "permits"]] if {
	count(needed) > 0
	input.closeout.package.permits == false
}

missing contains gap if some gap in untold

missing contains ["closeout", ["job", "permits"]] if not is_array(input.job.permits)

missing contains ["closeout", ["closeout", "package", "permits"]] if not is_boolean(input.closeout.package.permits)
