# METADATA
# title: A crawlspace that was closed off is treated as well
# description: Gaskets and sealant open with the seasons; behind them radon has had time to gather.
# custom:
#   subject: foundation area
#   grade: required
#   stage: planned
#   remedy: Cover the soil and draw from below the sheet, or treat the space in another lasting way.
#   caution: Crawlspaces are confined spaces; check the air and never go in without a second person outside.
#   limits:
#     closed: {dimension: choice, sense: one-of}
package policy.special.isolation_not_alone

import rego.v2

closed := data.profile.special.isolation_not_alone.closed.any_of

subjects contains ["house", ["house", "foundations"]] if not is_array(input.house.foundations)

subjects contains [f.id, ["house", "foundations", i, "treated"]] if some i, f in input.house.foundations

exempt contains [f.id, "it is no crawlspace"] if {
	some f in input.house.foundations
	is_string(f.kind)
	f.kind != "crawlspace"
}

exempt contains [f.id, "it was not closed off"] if {
	some f in input.house.foundations
	is_string(f.link_to_basement)
	not f.link_to_basement in closed
}

met contains f.id if {
	some f in input.house.foundations
	f.kind == "crawlspace"
	f.link_to_basement in closed
	f.treated == true
}

deficient contains [f.id, ["house", "foundations", i, "treated"]] if {
	some i, f in input.house.foundations
	f.kind == "crawlspace"
	f.link_to_basement in closed
	f.treated == false
}

missing contains ["house", ["house", "foundations"]] if not is_array(input.house.foundations)

missing contains [f.id, ["house", "foundations", i, "kind"]] if {
	some i, f in input.house.foundations
	not is_string(f.kind)
}

missing contains [f.id, ["house", "foundations", i, "link_to_basement"]] if {
	some i, f in input.house.foundations
	not is_string(f.link_to_basement)
}

missing contains [f.id, ["house", "foundations", i, "treated"]] if {
	some i, f in input.house.foundations
	not is_boolean(f.treated)
}
