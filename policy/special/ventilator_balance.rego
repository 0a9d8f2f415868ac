# METADATA
# title: A heat-recovery ventilator brings in as much air as it takes out
# description: One that takes out more draws soil gas in, and flue gas back.
# custom:
#   subject: ventilator
#   grade: required
#   stage: running
#   remedy: Balance the flows, clean the filters, and measure both again.
#   caution: Wherever fuel burns, test for backdrafting after a change of air flows.
#   limits:
#     kinds: {dimension: choice, sense: one-of}
#     least: {dimension: ratio, sense: at-least}
#     most: {dimension: ratio, sense: at-most}
package policy.special.ventilator_balance

import rego.v2

limits := data.profile.special.ventilator_balance

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "ventilation", "supply_flow"]] if some i, s in input.systems

exempt contains [s.id, "it is no heat-recovery ventilator"] if {
	some s in input.systems
	is_string(s.kind)
	not s.kind in limits.kinds.any_of
}

judged contains s.id if {
	some s in input.systems
	s.kind in limits.kinds.any_of
}

met contains d.id if {
	some d in input.derived.systems
	d.id in judged
	d.ventilation_imbalance.si >= limits.least.si
	d.ventilation_imbalance.si <= limits.most.si
}

deficient contains [d.id, ["derived", "systems", i, "ventilation_imbalance"], "least"] if {
	some i, d in input.derived.systems
	d.id in judged
	d.ventilation_imbalance.si < limits.least.si
}

deficient contains [d.id, ["derived", "systems", i, "ventilation_imbalance"], "most"] if {
	some i, d in input.derived.systems
	d.id in judged
	d.ventilation_imbalance.si > limits.most.si
}

missing contains [s.id, ["systems", i, "kind"]] if {
	some i, s in input.systems
	not is_string(s.kind)
}

missing contains [s.id, ["systems", i, "ventilation", "supply_flow"]] if {
	some i, s in input.systems
	not is_number(s.ventilation.supply_flow.si)
}

missing contains [s.id, ["systems", i, "ventilation", "exhaust_flow"]] if {
	some i, s in input.systems
	not is_number(s.ventilation.exhaust_flow.si)
}
