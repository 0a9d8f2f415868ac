# METADATA
# title: A second person stood by while somebody was in a crawlspace
# description: Bad air, live wires and a stuck hatch kill the one who is down there alone.
# custom:
#   subject: crew
#   grade: hazard
#   stage: roughed-in
#   remedy: Stop, and send nobody in again without a second person outside who can call for help.
#   caution: Never go in after somebody who does not answer; call for help.
package policy.safety.second_person

import rego.v2

subjects contains ["safety", ["safety", "crawlspace_buddy"]]

exempt contains [id, "nobody entered a crawlspace"] if {
	some [id, _] in subjects
	input.safety.crawlspace_entered == false
}

met contains "safety" if {
	input.safety.crawlspace_entered == true
	input.safety.crawlspace_buddy == true
}

deficient contains ["safety", ["safety", "crawlspace_buddy"]] if {
	input.safety.crawlspace_entered == true
	input.safety.crawlspace_buddy == false
}

missing contains ["safety", ["safety", "crawlspace_entered"]] if not is_boolean(input.safety.crawlspace_entered)

missing contains ["safety", ["safety", "crawlspace_buddy"]] if not is_boolean(input.safety.crawlspace_buddy)
