# METADATA
# description: |
#   What the record leaves out about the openings near an outlet. An opening
#   that nobody listed must not pass for an opening that is not there.
package policy.openings

import rego.v2

# Kinds that count only where they can be opened; the others stand open.
closable := {"window", "door", "skylight"}

# Systems whose openings cannot be known: [system, what is not recorded].
unlisted contains [s.id, ["house", "openings"]] if {
	some s in input.systems
	not is_array(input.house.openings)
	not s.id in measured
}

unlisted contains [s.id, ["systems", i, "discharge"]] if {
	some i, s in input.systems
	not is_object(s.discharge)
}

# The same without systems for which an entry of undetermined distance already
# says it: subjects of the rules that judge each outlet and opening.
gaps contains [id, path] if {
	some [id, path] in unlisted
	not id in spoken_for
}

spoken_for contains c.system if {
	some c in input.derived.clearances
	c.at == "/house/openings"
}

spoken_for contains c.system if {
	some c in input.derived.clearances
	some s in input.systems
	s.id == c.system
	not is_object(s.discharge)
}

# Systems whose recorded distances stand for themselves, without a list of
# openings that they refer to. That no distance was measured does not say that
# there is no opening.
measured contains s.id if {
	some s in input.systems
	count(s.discharge.clearances) > 0
	count({c.id | some c in s.discharge.clearances; is_string(c.opening)}) == 0
}

# What is not said of one opening: [outlet/opening, which of its traits, path].
untold contains [c.id, "building", ["house", "openings", i, "building"]] if {
	some c in input.derived.clearances
	some i, o in input.house.openings
	o.id == c.opening
	not is_string(o.building)
}

untold contains [c.id, "kind", ["house", "openings", i, "kind"]] if {
	some c in input.derived.clearances
	some i, o in input.house.openings
	o.id == c.opening
	not is_string(o.kind)
}

untold contains [c.id, "conditioned", ["house", "openings", i, "into_conditioned_space"]] if {
	some c in input.derived.clearances
	some i, o in input.house.openings
	o.id == c.opening
	not is_boolean(o.into_conditioned_space)
}

untold contains [c.id, "operable", ["house", "openings", i, "operable"]] if {
	some c in input.derived.clearances
	some i, o in input.house.openings
	o.id == c.opening
	not is_boolean(o.operable)
}

untold contains [c.id, "building", ["systems", i, "discharge", "clearances", j, "building"]] if {
	some c in input.derived.clearances
	some i, s in input.systems
	s.id == c.system
	some j, m in s.discharge.clearances
	m.id == c.opening
	not is_string(m.building)
}

untold contains [c.id, "kind", ["systems", i, "discharge", "clearances", j, "kind"]] if {
	some c in input.derived.clearances
	some i, s in input.systems
	s.id == c.system
	some j, m in s.discharge.clearances
	m.id == c.opening
	not is_string(m.kind)
}

untold contains [c.id, "conditioned", ["systems", i, "discharge", "clearances", j, "into_conditioned_space"]] if {
	some c in input.derived.clearances
	some i, s in input.systems
	s.id == c.system
	some j, m in s.discharge.clearances
	m.id == c.opening
	not is_boolean(m.into_conditioned_space)
}

untold contains [c.id, "operable", ["systems", i, "discharge", "clearances", j, "operable"]] if {
	some c in input.derived.clearances
	some i, s in input.systems
	s.id == c.system
	some j, m in s.discharge.clearances
	m.id == c.opening
	not is_boolean(m.operable)
}
