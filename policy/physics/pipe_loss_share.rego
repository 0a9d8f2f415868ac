# METADATA
# title: The pipe leaves at least half of the fan's pressure to the ground
# description: A fan that spends itself on bends and narrow pipe leaves little for the far corners of the slab.
# custom:
#   subject: system
#   grade: recommended
#   stage: running
#   remedy: Use wider pipe, fewer or smoother bends, or move the fan nearer.
#   limits:
#     maximum: {dimension: ratio, sense: at-most}
package policy.physics.pipe_loss_share

import data.policy.airways
import data.policy.systems
import rego.v2

limits := data.profile.physics.pipe_loss_share

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["derived", "systems", i, "pipe_loss_share"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

met contains d.id if {
	some d in input.derived.systems
	d.id in systems.with_fan
	d.id in airways.proven
	d.pipe_loss_share.si <= limits.maximum.si
}

deficient contains [d.id, ["derived", "systems", i, "pipe_loss_share"], "maximum"] if {
	some i, d in input.derived.systems
	d.id in systems.with_fan
	d.pipe_loss_share.si > limits.maximum.si
}

undetermined contains [d.id, ["derived", "systems", i, "pipe_loss_share"], airways.only_computed] if {
	some i, d in input.derived.systems
	d.id in systems.with_fan
	not d.id in airways.proven
	d.pipe_loss_share.si <= limits.maximum.si
}

undetermined contains [d.id, ["derived", "systems", i, "pipe_loss_share"], "it does not follow from flow, fan curve and pipe as recorded"] if {
	some i, d in input.derived.systems
	d.id in systems.with_fan
	d.id in airways.proven
	not is_number(d.pipe_loss_share.si)
}

missing contains gap if some gap in systems.unsaid

missing contains [d.id, ["derived", "systems", i, "pipe_loss_share"]] if {
	some i, d in input.derived.systems
	not is_number(d.pipe_loss_share.si)
}
