package main

import (
	"fmt"
	"strings"
	"testing"

	"github.com/slablint/slablint/internal/record"
	"github.com/slablint/slablint/schema"
)

// Readings come with the id of what they are of and with what was noted beside
// them; what was not measured has none.
func TestReadings(t *testing.T) {
	doc, err := record.ReadYAML("job.yaml", []byte(`
record: 1
job: {id: J-1, stage: running}
systems:
  - id: sys-1
    gauge:
      start_mark: 0.9 inH2O
      readings:
        - {id: start-up, at: "2026-03-17T15:45:00-04:00", value: 0.9 inH2O, fan_on: true}
        - {id: hand-over, value: 0.8 inH2O}
        - {id: never, fan_on: true}
    suction_points: [{id: sp-1, suction: 0.8 inH2O}, {id: sp-2}]
diagnostics:
  communication_tests:
    - {id: cp-1, applied_suction: 8 inH2O, on: 2026-03-02, holes: [{id: hole-1, pressure: -0.04 inH2O, distance: 22 ft, smoke: down}]}
  backdraft_tests:
    - {id: bd-1, appliance: heater, pressure: -1.6 Pa, baseline: -0.4 Pa, spillage: none}
measurements:
  tests:
    - {id: post-1, phase: after, device: continuous-monitor, result: 0.9 pCi/L, uncertainty: 10 %}
`), record.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	shape, err := record.ParseShape(schema.Job())
	if err != nil {
		t.Fatal(err)
	}
	input, errs := doc.Canonical(shape)
	if len(errs) > 0 {
		t.Fatal(errs)
	}
	var got []string
	for _, r := range readings(input) {
		got = append(got, fmt.Sprintf("%s: %s %s: %s (%s) %s", r.Group, r.Subject, r.Title, r.Text, r.Note, r.Path))
	}
	want := []string{
		"Radon: post-1 Radon: 0.9 pCi/L (after, continuous-monitor, uncertainty 10 %) /measurements/tests/0/result",
		"Gauge: sys-1 Start mark: 0.9 inH2O () /systems/0/gauge/start_mark",
		"Gauge: start-up Reading: 0.9 inH2O (2026-03-17 15:45 -04:00) /systems/0/gauge/readings/0/value",
		"Gauge: hand-over Reading: 0.8 inH2O () /systems/0/gauge/readings/1/value",
		"Air and suction: sp-1 Suction in the pit: 0.8 inH2O () /systems/0/suction_points/0/suction",
		"Suction below the slab: cp-1 Suction applied: 8 inH2O (2026-03-02) /diagnostics/communication_tests/0/applied_suction",
		"Suction below the slab: hole-1 Below the slab against the room: -0.04 inH2O (22 ft away, smoke down) /diagnostics/communication_tests/0/holes/0/pressure",
		"Combustion: bd-1 Room against outdoors: -1.6 Pa (heater, before: -0.4 Pa, spillage: none) /diagnostics/backdraft_tests/0/pressure",
	}
	if strings.Join(got, "\n") != strings.Join(want, "\n") {
		t.Errorf("got\n%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
}

// Every place where the program looks for a measurement is one of the record.
func TestMeasuredPlacesExist(t *testing.T) {
	shape, err := record.ParseShape(schema.Job())
	if err != nil {
		t.Fatal(err)
	}
	for _, m := range measured {
		at := shape
		for _, step := range strings.Split(m.below, "/") {
			if step == "*" {
				at = at.Items()
			} else {
				at = at.Field(step)
			}
		}
		for _, name := range append(strings.Fields(m.notes), m.value) {
			if at.Field(name) == nil {
				t.Errorf("records have no %s at %s", name, m.below)
			}
		}
	}
}

// The requirements that the drawings and the radon chart take limits from are
// those of the rulebook.
func TestDrawnRequirementsExist(t *testing.T) {
	var f ruleFlags
	rb, err := f.rulebook()
	if err != nil {
		t.Fatal(err)
	}
	known := map[string]bool{}
	for _, r := range rb.Requirements() {
		known[r.Name] = true
	}
	names := []string{clearance, neighbors, steady}
	for _, l := range radonLevels {
		names = append(names, l.requirement)
	}
	for _, name := range names {
		if !known[name] {
			t.Errorf("the rulebook has no %s", name)
		}
	}
}
