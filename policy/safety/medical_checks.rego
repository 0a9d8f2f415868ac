# METADATA
# title: Workers who often need a respirator are offered medical checks
# description: Scarred lungs are found early or not in time.
# custom:
#   subject: crew
#   grade: required
#   stage: planned
#   remedy: Offer the medical checks to every worker who needs a respirator that often.
#   limits:
#     days: {dimension: number, sense: at-least}
package policy.safety.medical_checks

import rego.v2

days := data.profile.safety.medical_checks.days.si

subjects contains ["safety", ["safety", "medical_checks"]]

exempt contains [id, "respirators are needed on fewer days"] if {
	some [id, _] in subjects
	input.safety.respirator_days_a_year < days
}

met contains "safety" if {
	input.safety.respirator_days_a_year >= days
	input.safety.medical_checks == true
}

deficient contains ["safety", ["safety", "medical_checks"]] if {
	input.safety.respirator_days_a_year >= days
	input.safety.medical_checks == false
}

missing contains ["safety", ["safety", "respirator_days_a_year"]] if {
	not is_number(input.safety.respirator_days_a_year)
}

missing contains ["safety", ["safety", "medical_checks"]] if not is_boolean(input.safety.medical_checks)
