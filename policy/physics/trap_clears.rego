# METADATA
# title: No water trap is deeper than the fan can lift
# description: A low point full of water shuts the pipe like a valve; the gauge shows a strong fan and the house fills with soil gas.
# custom:
#   subject: system
#   grade: required
#   stage: roughed-in
#   remedy: Take out the low point or drain it.
#   limits:
#     drained: {dimension: choice, sense: not-for}
package policy.physics.trap_clears

import data.policy.airways
import data.policy.systems
import rego.v2

limits := data.profile.physics.trap_clears

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "pipe"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

judged contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	is_array(limits.drained.any_of)
}

free contains d.id if {
	some d in input.derived.segments
	d.trap_depth.si == 0
}

free contains p.id if {
	some s in input.systems
	some p in s.pipe
	p.drainage in limits.drained.any_of
}

free contains d.id if {
	some d in input.derived.segments
	airways.sited
	some f in input.derived.systems
	f.id == d.system
	d.trap_suction.si <= f.shutoff_pressure.si
}

met contains s.id if {
	some s in input.systems
	s.id in judged
	count(s.pipe) > 0
	count({p.id | some p in s.pipe; not p.id in free}) == 0
}

deficient contains [d.system, ["derived", "segments", i, "trap_depth"]] if {
	some i, d in input.derived.segments
	d.system in judged
	some f in input.derived.systems
	f.id == d.system
	d.trap_suction.si > f.shutoff_pressure.si
	some s in input.systems
	some p in s.pipe
	p.id == d.id
	is_string(p.drainage)
	not p.drainage in limits.drained.any_of
}

undetermined contains [s.id, ["systems", i, "pipe"], "lengths, rises, drains, fan curve and altitude are not all recorded, so a trap may be there that the fan cannot lift"] if {
	some i, s in input.systems
	s.id in judged
}

missing contains gap if some gap in systems.unsaid
