package pipeline_test

import (
	"testing"

	"github.com/slablint/slablint/internal/finding"
)

// Records whose parts cannot all be true, or whose figures tell a fault that no
// box on a checklist does, are each caught by name. That they are worth catching
// is common practice; no document demands it.
func TestImpossibleRecordsAreCaught(t *testing.T) {
	const (
		lastReading = "systems/0/gauge/readings/1/value"
		flow        = "systems/0/commissioning/measured_flow"
		hole        = "diagnostics/communication_tests/0/holes/3/pressure"
	)
	hilly := edits{"systems/0/pipe/1/rise": "-3 in", "systems/0/pipe/1/slope": nil}
	farAway := map[string]any{"id": "to-bed", "opening": "win-bed", "building": "own", "distance": "40 ft"}
	for _, c := range []struct {
		name                 string
		changes              edits
		requirement, subject string
	}{
		{"gauge above what the fan can do", edits{lastReading: "2.6 inH2O"}, "physics.gauge_below_shutoff", "sys-1"},
		{"reading that leaves no flow: pipe blocked or full of water", edits{lastReading: "1.65 inH2O"}, "physics.gauge_not_blocked", "sys-1"},
		{"reading near zero with the fan on", edits{lastReading: "0.01 inH2O"}, "physics.gauge_above_natural_draft", "sys-1"},
		{"reading of an open pipe", edits{lastReading: "0.05 inH2O"}, "physics.gauge_not_open_pipe", "sys-1"},
		{"tube on the wrong limb", edits{lastReading: "-0.8 inH2O"}, "physics.gauge_not_reversed", "sys-1"},
		{"flow that contradicts reading and curve", edits{flow: "8 cfm"}, "physics.flow_possible", "sys-1"},
		{"more flow than the fan moves in free air", edits{flow: "300 cfm"}, "physics.flow_within_fan", "sys-1"},
		{"high-flow fan on narrow pipe", edits{"systems/0/fan/class": "high-flow", "systems/0/fan/inlet_size": "6 in"}, "physics.fan_inlet", "sys-1"},
		{"large slab on gravel with a general fan", edits{"house/foundations/0/footprint": "2,900 ft2", "house/foundations/0/fill": "gravel"}, "physics.large_footprint", "sys-1"},
		{"outlet below the ground", edits{"systems/0/discharge/height_above_grade": "-2 ft"}, "physics.outlet_height", "sys-1"},
		{"recorded distance far from the one by positions", edits{"systems/0/discharge/clearances": []any{farAway}}, "physics.outlet_distances", "sys-1"},
		{"test that ends before it starts", edits{"measurements/tests/1/end": "2026-03-01T08:00:00-05:00"}, "physics.test_ends_after_start", "post-1"},
		{"summer pass that fails in winter", edits{hole: "-0.001 inH2O", "diagnostics/communication_tests/0/outdoor_temperature": "85 F"}, "diagnostics.holds_in_winter", "cp-1"},
		{"level run with a sag", hilly, "pipe.no_water_trap", "rim"},
		{"rise, length and slope that do not fit", edits{"systems/0/pipe/1/slope": "1 in/ft"}, "physics.pipe_shape", "sys-1"},
	} {
		t.Run(c.name, func(t *testing.T) {
			expect(t, edited(t, "demo", c.changes), "demo", []expected{
				{"common-practice", c.requirement, c.subject, finding.Deficient, "", finding.CommonPractice},
			})
		})
	}
}
