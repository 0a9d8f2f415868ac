# METADATA
# title: The protection plan covers what hurts people in this trade
# description: A plan that leaves out ladders or crawlspaces leaves out where the accidents happen.
# custom:
#   subject: plan
#   grade: recommended
#   stage: planned
#   remedy: Add what is left out to the plan and go through it with the crew.
#   limits:
#     topics: {dimension: choice, sense: all-of}
package policy.safety.plan_topics

import rego.v2

topics := data.profile.safety.plan_topics.topics.any_of

subjects contains ["safety", ["safety", "plan_topics"]]

exempt contains [id, "there is no plan"] if {
	some [id, _] in subjects
	input.safety.plan_written == false
}

left_out contains topic if {
	some topic in topics
	not topic in input.safety.plan_topics
}

met contains "safety" if {
	input.safety.plan_written == true
	is_array(input.safety.plan_topics)
	count(topics) > 0
	count(left_out) == 0
}

deficient contains ["safety", ["safety", "plan_topics"], "topics"] if {
	input.safety.plan_written == true
	is_array(input.safety.plan_topics)
	count(left_out) > 0
}

missing contains ["safety", ["safety", "plan_written"]] if not is_boolean(input.safety.plan_written)

missing contains ["safety", ["safety", "plan_topics"]] if not is_array(input.safety.plan_topics)
