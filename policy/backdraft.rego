# METADATA
# description: |
#   Backdraft tests that failed and were made good by a later one, so that rules
#   about readings need not look for it.
package policy.backdraft

import rego.v2

# Failed tests of appliances that passed later, with the system on.
made_good contains t.id if {
	some t in input.diagnostics.backdraft_tests
	t.passed == false
	some later in input.diagnostics.backdraft_tests
	later.appliance == t.appliance
	later.passed == true
	later.system_on == true
	later.at.si > t.at.si
}
