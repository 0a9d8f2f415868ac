# METADATA
# title: Freezing was considered before a crawlspace was aired
# description: A burst pipe under the floor floods the house.
# custom:
#   subject: foundation area
#   grade: required
#   stage: running
#   remedy: Look at water pipes and drains in the crawlspace and protect them, or choose another method.
#   caution: Crawlspaces are confined spaces; check the air and never go in without a second person outside.
package policy.special.crawl_freezing

import data.policy.crawlspaces
import rego.v2

subjects contains gap if some gap in crawlspaces.unlisted

subjects contains [f.id, ["house", "foundations", i, "crawl_freeze_considered"]] if some i, f in input.house.foundations

exempt contains outcome if some outcome in crawlspaces.others

met contains f.id if {
	some f in input.house.foundations
	f.id in crawlspaces.aired
	f.crawl_freeze_considered == true
}

deficient contains [f.id, ["house", "foundations", i, "crawl_freeze_considered"]] if {
	some i, f in input.house.foundations
	f.id in crawlspaces.aired
	f.crawl_freeze_considered == false
}

missing contains gap if some gap in crawlspaces.unsaid

missing contains [f.id, ["house", "foundations", i, "crawl_freeze_considered"]] if {
	some i, f in input.house.foundations
	not is_boolean(f.crawl_freeze_considered)
}
