# METADATA
# description: Which profiles do not speak of this job at all, and why.
package policy.scope

import rego.v2

outside contains [scope.profile, "the house has more storeys than the standard covers"] if {
	some scope in data.scopes
	input.house.storeys > scope.storeys_at_most
}

outside contains [scope.profile, "the standard is not for this contaminant"] if {
	some scope in data.scopes
	count(scope.contaminants) > 0
	is_string(input.job.contaminant)
	not input.job.contaminant in scope.contaminants
}

outside contains [scope.profile, "the standard is not for this kind of building"] if {
	some scope in data.scopes
	count(scope.house_kinds) > 0
	is_string(input.house.kind)
	not input.house.kind in scope.house_kinds
}

outside contains [scope.profile, "the standard is for new houses only"] if {
	some scope in data.scopes
	scope.new_houses == "only"
	input.house.new_construction == false
}

outside contains [scope.profile, "the standard is not for new houses"] if {
	some scope in data.scopes
	scope.new_houses == "never"
	input.house.new_construction == true
}
