# METADATA
# title: Drain tile under suction draws no air from its open end
# description: Tile that ends in daylight hands the fan outdoor air in place of soil gas.
# custom:
#   subject: system
#   grade: recommended
#   stage: running
#   remedy: Fit a one-way valve or a trap where the tile comes to daylight, so that water still leaves.
#   limits:
#     stops: {dimension: choice, sense: one-of}
package policy.sealing.drain_air_stop

import rego.v2

stops := data.profile.sealing.drain_air_stop.stops.any_of

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["systems", i, "foundations"]] if some i, s in input.systems

exempt contains [s.id, "this kind of system does not draw on drain tile"] if {
	some s in input.systems
	is_string(s.kind)
	s.kind != "drain-tile"
}

without_tile contains [s.id, f.id] if {
	some s in input.systems
	some f in input.house.foundations
	f.id in s.foundations
	f.perimeter_drain == "none"
}

shut_off contains [s.id, f.id] if {
	some s in input.systems
	some f in input.house.foundations
	f.id in s.foundations
	is_string(f.drain_ends)
	f.drain_ends != "daylight"
}

stopped contains [s.id, f.id] if {
	some s in input.systems
	some f in input.house.foundations
	f.id in s.foundations
	f.drain_ends == "daylight"
	f.drain_air_stop in stops
}

exempt contains [s.id, "the tile does not run to daylight"] if {
	some s in input.systems
	count([1 | some [id, _] in shut_off; id == s.id]) > 0
	count([1 | some [id, _] in (shut_off | without_tile); id == s.id]) == count(s.foundations)
}

met contains s.id if {
	some s in input.systems
	s.kind == "drain-tile"
	count([1 | some [id, _] in stopped; id == s.id]) > 0
	count([1 | some [id, _] in ((shut_off | stopped) | without_tile); id == s.id]) == count(s.foundations)
}

deficient contains [s.id, ["house", "foundations", i, "drain_air_stop"], "stops"] if {
	some s in input.systems
	s.kind == "drain-tile"
	some i, f in input.house.foundations
	f.id in s.foundations
	not [s.id, f.id] in without_tile
	f.drain_ends == "daylight"
	is_string(f.drain_air_stop)
	not f.drain_air_stop in stops
}

missing contains [s.id, ["systems", i, "kind"]] if {
	some i, s in input.systems
	not is_string(s.kind)
}

missing contains [s.id, ["systems", i, "foundations"]] if {
	some i, s in input.systems
	not is_array(s.foundations)
}

missing contains [s.id, ["house", "foundations", i, "drain_ends"]] if {
	some s in input.systems
	some i, f in input.house.foundations
	f.id in s.foundations
	not [s.id, f.id] in without_tile
	not is_string(f.drain_ends)
}

missing contains [s.id, ["house", "foundations", i, "drain_air_stop"]] if {
	some s in input.systems
	some i, f in input.house.foundations
	f.id in s.foundations
	f.drain_ends == "daylight"
	not is_string(f.drain_air_stop)
}
