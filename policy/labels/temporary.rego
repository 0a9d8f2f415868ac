# METADATA
# title: A temporary system says so on its label, and whose it is since when
# description: Makeshift work without a date stays for years.
# custom:
#   subject: system
#   grade: required
#   stage: running
#   remedy: Label the system as temporary, with the day it has to be replaced, its date, and name, phone and certification of the contractor.
package policy.labels.temporary

import data.policy.marks
import rego.v2

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "labels"]] if some i, s in input.systems

exempt contains [s.id, "the system is permanent"] if {
	some s in input.systems
	s.permanence == "permanent"
}

whole contains s.id if {
	some s in input.systems
	some l in s.labels
	l.kind == "temporary"
	l.says_temporary == true
	l.installer == true
	l.phone == true
	l.credential == true
	l.install_date == true
}

met contains s.id if {
	some s in input.systems
	s.permanence == "temporary"
	s.id in whole
}

deficient contains [s.id, ["systems", i, "labels"]] if {
	some i, s in input.systems
	s.permanence == "temporary"
	s.id in marks.known
	count({l.id | some l in s.labels; l.kind == "temporary"}) == 0
}

deficient contains [s.id, ["systems", i, "labels", j, "says_temporary"]] if {
	some i, s in input.systems
	s.permanence == "temporary"
	not s.id in whole
	some j, l in s.labels
	l.kind == "temporary"
	l.says_temporary == false
}

deficient contains [s.id, ["systems", i, "labels", j, "installer"]] if {
	some i, s in input.systems
	s.permanence == "temporary"
	not s.id in whole
	some j, l in s.labels
	l.kind == "temporary"
	l.installer == false
}

deficient contains [s.id, ["systems", i, "labels", j, "phone"]] if {
	some i, s in input.systems
	s.permanence == "temporary"
	not s.id in whole
	some j, l in s.labels
	l.kind == "temporary"
	l.phone == false
}

deficient contains [s.id, ["systems", i, "labels", j, "credential"]] if {
	some i, s in input.systems
	s.permanence == "temporary"
	not s.id in whole
	some j, l in s.labels
	l.kind == "temporary"
	l.credential == false
}

deficient contains [s.id, ["systems", i, "labels", j, "install_date"]] if {
	some i, s in input.systems
	s.permanence == "temporary"
	not s.id in whole
	some j, l in s.labels
	l.kind == "temporary"
	l.install_date == false
}

missing contains gap if some gap in marks.untold

missing contains [s.id, ["systems", i, "permanence"]] if {
	some i, s in input.systems
	not is_string(s.permanence)
}

missing contains [s.id, ["systems", i, "labels", j, "says_temporary"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "temporary"
	not is_boolean(l.says_temporary)
}

missing contains [s.id, ["systems", i, "labels", j, "installer"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "temporary"
	not is_boolean(l.installer)
}

missing contains [s.id, ["systems", i, "labels", j, "phone"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "temporary"
	not is_boolean(l.phone)
}

missing contains [s.id, ["systems", i, "labels", j, "credential"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "temporary"
	not is_boolean(l.credential)
}

missing contains [s.id, ["systems", i, "labels", j, "install_date"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.kind == "temporary"
	not is_boolean(l.install_date)
}
