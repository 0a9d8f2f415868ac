package policy.readings_test

import data.policy.readings
import rego.v2

at(hour, traits) := object.union({"id": concat("", ["r", format_int(hour, 10)]), "at": {"si": hour * 3600}, "fan_on": true, "value": {"si": 200}}, traits)

system(gauge) := {
	"systems": [{"id": "s", "kind": "sub-slab", "powered_by": "fan", "gauge": object.union({"kind": "u-tube"}, gauge)}],
	"derived": {"systems": [{"id": "s", "at": "/systems/0", "gauge_reading": {"si": 200}}]},
}

two := {"readings": [at(1, {}), at(2, {})]}

test_known if {
	got := readings.known with input as system(two)
	got == {"s"}
}

test_one_reading_needs_no_time if {
	got := readings.known with input as system({"readings": [{"id": "r", "fan_on": true}]})
	got == {"s"}
}

test_two_readings_do if {
	job := system({"readings": [{"id": "r", "fan_on": true}, at(2, {})]})
	got := readings.known with input as job
	count(got) == 0
	gaps := readings.unsaid with input as job
	gaps == {["s", ["systems", 0, "gauge", "readings", 0, "at"]]}
}

test_aside if {
	got := readings.aside with input as system({"kind": "current"})
	got == {["s", "a gauge of this kind shows no pressure"]}
	none := readings.aside with input as system({"kind": "none"})
	none == {["s", "there is no gauge"]}
}

test_placed_behind_a_segment if {
	got := readings.placed with input as system(object.union(two, {"range": {"si": 1000}, "after_segment": "riser"}))
	got == {"s"}
}

test_placed_at_the_fan if {
	got := readings.placed with input as system(object.union(two, {"range": {"si": 1000}, "tap": "fan-inlet"}))
	got == {"s"}
}

test_says_what_is_missing if {
	got := readings.unplaced with input as {"systems": [{"id": "s"}], "derived": {"systems": [{"id": "s", "at": "/systems/0"}]}}
	got == {
		["s", ["systems", 0, "kind"]],
		["s", ["systems", 0, "powered_by"]],
		["s", ["systems", 0, "gauge", "kind"]],
		["s", ["systems", 0, "gauge", "range"]],
		["s", ["systems", 0, "gauge", "after_segment"]],
		["s", ["derived", "systems", 0, "gauge_reading"]],
	}
}

test_says_that_the_fan_may_have_been_off if {
	got := readings.unsaid with input as system({"readings": [{"id": "r"}]})
	got == {["s", ["systems", 0, "gauge", "readings", 0, "fan_on"]]}
}
