# METADATA
# title: Parts outdoors carry a label that stands the weather
# description: Roofers and painters take an unnamed stack for a downspout, and paper fades in one summer.
# custom:
#   subject: system
#   grade: required
#   stage: closeout
#   remedy: Put a weatherproof label on fan or pipe outdoors.
#   caution: Work from a ladder that is set and tied, away from power lines.
#   limits:
#     outdoors: {dimension: choice, sense: one-of}
package policy.labels.exterior_weatherproof

import data.policy.marks
import data.policy.systems
import rego.v2

outdoors := data.profile.labels.exterior_weatherproof.outdoors.any_of

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "labels"]] if some i, s in input.systems

exempt contains outcome if some outcome in systems.without_fan

exempt contains [s.id, "nothing of it is outdoors"] if {
	some s in input.systems
	is_string(s.fan.place)
	not s.fan.place in outdoors
	is_array(s.pipe)
	count(s.pipe) == count([p.id | some p in s.pipe; is_string(p.place); p.place != "exterior"])
}

outside contains s.id if {
	some s in input.systems
	s.fan.place in outdoors
}

outside contains s.id if {
	some s in input.systems
	some p in s.pipe
	p.place == "exterior"
}

out_there contains l.id if {
	some s in input.systems
	some l in s.labels
	l.kind == "exterior"
}

out_there contains l.id if {
	some s in input.systems
	some l in s.labels
	l.place == "exterior-pipe"
}

met contains s.id if {
	some s in input.systems
	s.id in systems.with_fan
	s.id in outside
	some l in s.labels
	l.id in out_there
	l.weatherproof == true
}

deficient contains [s.id, ["systems", i, "labels"]] if {
	some i, s in input.systems
	s.id in systems.with_fan
	s.id in outside
	s.id in marks.known
	count(s.labels) == count([l.id | some l in s.labels; is_string(l.place)])
	count([l.id | some l in s.labels; l.id in out_there]) == count([l.id | some l in s.labels; l.id in out_there; l.weatherproof == false])
}

missing contains gap if some gap in systems.unsaid

missing contains gap if some gap in marks.untold

missing contains [s.id, ["systems", i, "fan", "place"]] if {
	some i, s in input.systems
	not s.id in outside
	not is_string(s.fan.place)
}

missing contains [s.id, ["systems", i, "pipe"]] if {
	some i, s in input.systems
	not s.id in outside
	not is_array(s.pipe)
}

missing contains [s.id, ["systems", i, "pipe", j, "place"]] if {
	some i, s in input.systems
	not s.id in outside
	some j, p in s.pipe
	not is_string(p.place)
}

missing contains [s.id, ["systems", i, "labels", j, "place"]] if {
	some i, s in input.systems
	some j, l in s.labels
	not is_string(l.place)
}

missing contains [s.id, ["systems", i, "labels", j, "weatherproof"]] if {
	some i, s in input.systems
	some j, l in s.labels
	l.id in out_there
	not is_boolean(l.weatherproof)
}
