# METADATA
# title: Vents put into a crawlspace against radon cannot be shut
# description: Somebody shuts them in the first cold night, and radon climbs all winter.
# custom:
#   subject: foundation area
#   grade: required
#   stage: running
#   remedy: Fit vents that cannot be closed.
#   caution: Crawlspaces are confined spaces; check the air and never go in without a second person outside.
package policy.special.crawl_vents_open

import data.policy.crawlspaces
import rego.v2

subjects contains gap if some gap in crawlspaces.unlisted

subjects contains [f.id, ["house", "foundations", i, "crawl_vents_closable"]] if some i, f in input.house.foundations

exempt contains outcome if some outcome in crawlspaces.others

met contains f.id if {
	some f in input.house.foundations
	f.id in crawlspaces.aired
	f.crawl_vents_closable == false
}

deficient contains [f.id, ["house", "foundations", i, "crawl_vents_closable"]] if {
	some i, f in input.house.foundations
	f.id in crawlspaces.aired
	f.crawl_vents_closable == true
}

missing contains gap if some gap in crawlspaces.unsaid

missing contains [f.id, ["house", "foundations", i, "crawl_vents_closable"]] if {
	some i, f in input.house.foundations
	not is_boolean(f.crawl_vents_closable)
}
