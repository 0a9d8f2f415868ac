# METADATA
# description: |
#   What must be recorded before a computed flow or pressure proves anything in
#   favor of a job: values that rest on a default can count against it only.
package policy.airways

import rego.v2

# Thin air lowers what a fan gives; without the altitude sea level is assumed.
sited if is_number(input.house.altitude.si)

# Systems whose flow was measured in the main pipe and not only worked out.
measured contains s.id if {
	some s in input.systems
	is_number(s.commissioning.measured_flow.si)
}

# Systems of which nothing is left out that computed losses would miss.
told contains s.id if {
	some s in input.systems
	sited
	is_boolean(s.discharge.rain_cap)
}

# Measured, with nothing left out.
proven contains id if {
	some id in measured
	id in told
}

untold contains [s.id, ["house", "altitude"]] if {
	some s in input.systems
	not sited
}

untold contains [s.id, ["systems", i, "discharge", "rain_cap"]] if {
	some i, s in input.systems
	not is_boolean(s.discharge.rain_cap)
}

# For the reason of a verdict that waits for a measured flow.
only_computed := "it would pass by a flow that was worked out; measure it, and record the altitude and whether a rain cap sits on the pipe"
