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
	input.job.contaminant != "both" # a standard for either is among those that speak of it
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

# A job with one system that the standard covers stays inside it.
outside contains [scope.profile, "the standard is not for this kind of system"] if {
	some scope in data.scopes
	count(scope.system_kinds) > 0
	count(input.systems) > 0
	foreign := [1 | some s in input.systems; is_string(s.kind); not s.kind in scope.system_kinds]
	count(foreign) == count(input.systems)
}

# What this job puts in is new, whatever stood there before.
outside contains [scope.profile, "the system is older than the standard"] if {
	some scope in data.scopes
	input.job.purpose in {"inspection", "repair", "fan-replacement"}
	input.job.existing_system.installed.si < scope.installed_from.si
}
