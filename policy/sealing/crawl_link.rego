# METADATA
# title: The opening between crawlspace and basement is closed and can still be used
# description: Crawlspace air flows to the basement through that door; a door glued shut is a way out that is gone.
# custom:
#   subject: crawlspace
#   grade: required
#   stage: running
#   remedy: Fit a gasketed door with a latch that pulls tight, or bring both areas under suction.
#   limits:
#     closures: {dimension: choice, sense: one-of}
package policy.sealing.crawl_link

import rego.v2

closures := data.profile.sealing.crawl_link.closures.any_of

subjects contains ["house", ["house", "foundations"]] if not is_array(input.house.foundations)

subjects contains [f.id, ["house", "foundations", i, "link_to_basement"]] if {
	some i, f in input.house.foundations
	f.kind == "crawlspace"
}

subjects contains [f.id, ["house", "foundations", i, "kind"]] if {
	some i, f in input.house.foundations
	not is_string(f.kind)
}

basements := count([f | some f in input.house.foundations; f.kind == "basement"])

others := count([f | some f in input.house.foundations; is_string(f.kind); f.kind != "basement"])

exempt contains [f.id, "no basement lies beside it"] if {
	some f in input.house.foundations
	f.kind == "crawlspace"
	others == count(input.house.foundations)
}

met contains f.id if {
	some f in input.house.foundations
	f.kind == "crawlspace"
	basements > 0
	f.link_to_basement in closures
}

deficient contains [f.id, ["house", "foundations", i, "link_to_basement"], "closures"] if {
	some i, f in input.house.foundations
	f.kind == "crawlspace"
	basements > 0
	is_string(f.link_to_basement)
	not f.link_to_basement in closures
}
