# METADATA
# description: |
#   Which crawlspaces are aired against radon, and which areas of the house are
#   not, as far as the record says.
package policy.crawlspaces

import rego.v2

aired contains f.id if {
	some f in input.house.foundations
	f.kind == "crawlspace"
	some s in input.systems
	s.kind == "crawlspace-ventilation"
	f.id in s.foundations
}

unlisted contains ["house", ["house", "foundations"]] if not is_array(input.house.foundations)

others contains [f.id, "it is no crawlspace"] if {
	some f in input.house.foundations
	is_string(f.kind)
	f.kind != "crawlspace"
}

others contains [f.id, "it is not aired against radon"] if {
	some f in input.house.foundations
	is_array(input.systems)
	count({s.id | some s in input.systems; is_string(s.kind); s.kind != "crawlspace-ventilation"} | {s.id |
		some s in input.systems
		is_array(s.foundations)
		not f.id in s.foundations
	}) == count(input.systems)
}

unsaid contains gap if some gap in unlisted

unsaid contains [f.id, ["house", "foundations", i, "kind"]] if {
	some i, f in input.house.foundations
	not is_string(f.kind)
}

unsaid contains [f.id, ["systems"]] if {
	some f in input.house.foundations
	not is_array(input.systems)
}

unsaid contains [f.id, ["systems", i, "kind"]] if {
	some f in input.house.foundations
	some i, s in input.systems
	not is_string(s.kind)
}

unsaid contains [f.id, ["systems", i, "foundations"]] if {
	some f in input.house.foundations
	some i, s in input.systems
	not is_array(s.foundations)
}
