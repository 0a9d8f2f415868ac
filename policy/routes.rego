# METADATA
# description: |
#   What the record says of entry routes as such: which could be of any kind,
#   which can be reached, and which sumps have a lid. An opening whose kind
#   nobody wrote down counts wherever it could matter.
package policy.routes

import rego.v2

unlisted contains ["entry_routes", ["entry_routes"]] if not is_array(input.entry_routes)

unlisted contains [r.id, ["entry_routes", i, "kind"]] if {
	some i, r in input.entry_routes
	not is_string(r.kind)
}

# Treatments that put something on or into the opening.
shut := {"sealed", "covered-and-sealed", "closed"}

unreachable contains [r.id, "it cannot be reached"] if {
	some r in input.entry_routes
	r.treatment == "not-reachable"
}

lids := {"sealed", "covered-and-sealed"}

lidded contains r.id if {
	some r in input.entry_routes
	r.kind == "sump"
	r.treatment in lids
}

bare contains [r.id, "no lid lies on it"] if {
	some r in input.entry_routes
	r.kind == "sump"
	is_string(r.treatment)
	not r.treatment in lids
}

# Sumps of which nobody wrote down whether they have a lid.
untreated_sumps contains [r.id, ["entry_routes", i, "treatment"]] if {
	some i, r in input.entry_routes
	r.kind == "sump"
	not is_string(r.treatment)
}
