# METADATA
# description: Which systems draw from below a membrane; a kind not recorded could be one.
package policy.membranes

import rego.v2

unlisted contains ["systems", ["systems"]] if not is_array(input.systems)

laid contains s.id if {
	some s in input.systems
	s.kind == "sub-membrane"
}

none contains [s.id, "this kind of system has no membrane"] if {
	some s in input.systems
	is_string(s.kind)
	s.kind != "sub-membrane"
}

unsaid contains [s.id, ["systems", i, "kind"]] if {
	some i, s in input.systems
	not is_string(s.kind)
}
