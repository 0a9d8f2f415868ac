package derive_test

import (
	"slices"
	"strings"
	"testing"

	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/record"
)

// Records that cannot be true, or that say too little. Each names what must be
// undetermined for which places, and which words or figures must come out.
func TestImpossibleRecords(t *testing.T) {
	main := "- {id: stack, shape: round, nominal_size: 4 in"
	for _, c := range []struct {
		name    string
		record  []string
		lacks   map[place.Pointer]string // a place among those lacked
		words   map[place.Pointer]string
		figures map[place.Pointer]float64
	}{
		{
			name: "gauge above what the fan can do", record: []string{"value: 1.25 inH2O", "value: 2.4 inH2O"},
			words: map[place.Pointer]string{"/systems/0/gauge_plausibility": "above-shutoff"},
			lacks: map[place.Pointer]string{"/systems/0/gauge_flow": "/systems/0/gauge/readings/1/value"},
		},
		{
			name: "reading that leaves no flow", record: []string{"value: 1.25 inH2O", "value: 1.82 inH2O"},
			words: map[place.Pointer]string{"/systems/0/gauge_plausibility": "no-flow", "/systems/0/flow_agreement": "inconsistent"},
		},
		{
			name: "no suction with the fan on", record: []string{"value: 1.25 inH2O", "value: 0.01 inH2O"},
			words: map[place.Pointer]string{"/systems/0/gauge_plausibility": "no-suction"},
			lacks: map[place.Pointer]string{"/systems/0/gauge_flow": "/systems/0/gauge/readings/1/value"},
		},
		{
			name: "tube on the wrong side", record: []string{"value: 1.25 inH2O", "value: -0.4 inH2O"},
			words: map[place.Pointer]string{"/systems/0/gauge_plausibility": "reversed"},
		},
		{
			name: "no suction, fan unknown", record: []string{"value: 1.25 inH2O", "value: 0.01 inH2O", "flow: 0 cfm, pressure: 1.9 inH2O", "flow: 0 cfm, pressure: 0.9 inH2O"},
			words: map[place.Pointer]string{"/systems/0/gauge_plausibility": "no-suction"},
			lacks: map[place.Pointer]string{"/systems/0/shutoff_pressure": "/systems/0/fan/curve/1"},
		},
		{
			name: "scale too short", record: []string{"range: 4 inH2O", "range: 1.25 inH2O"},
			words: map[place.Pointer]string{"/systems/0/gauge_plausibility": "over-range"},
		},
		{
			name: "flow that contradicts reading and curve", record: []string{"measured_flow: 55 cfm", "measured_flow: 160 cfm"},
			words: map[place.Pointer]string{"/systems/0/flow_agreement": "inconsistent"},
			// The fan gives no pressure there: no share of it can be taken.
			lacks: map[place.Pointer]string{"/systems/0/pipe_loss_share": "/systems/0/commissioning/measured_flow"},
		},
		{
			name: "curve that rises", record: []string{"flow: 100 cfm, pressure: 1 inH2O", "flow: 100 cfm, pressure: 1.7 inH2O"},
			lacks: map[place.Pointer]string{"/systems/0/operating_flow": "/systems/0/fan/curve/2", "/systems/0/shutoff_pressure": "/systems/0/fan/curve/2"},
		},
		{
			name: "curve that does not reach shut-off", record: []string{"flow: 0 cfm, pressure: 1.9 inH2O", "flow: 5 cfm, pressure: 1.9 inH2O"},
			lacks: map[place.Pointer]string{"/systems/0/shutoff_pressure": "/systems/0/fan/curve/0", "/systems/0/gauge_share": "/systems/0/fan/curve/0"},
		},
		{
			name: "soil that lets everything through", record: []string{"soil_suction: 0.8 inH2O", "soil_suction: 0.001 inH2O", "flow: 150 cfm, pressure: 0 inH2O", "flow: 101 cfm, pressure: 1 inH2O", "flow: 100 cfm, pressure: 1 inH2O", "flow: 60 cfm, pressure: 1.5 inH2O", "flow: 101 cfm, pressure: 1 inH2O", "flow: 61 cfm, pressure: 1.49 inH2O"},
			words: map[place.Pointer]string{"/systems/0/operating_state": "beyond-free-delivery"},
			lacks: map[place.Pointer]string{"/systems/0/operating_flow": "/systems/0/fan/curve"},
		},
		{
			name: "exponent no ground has", record: []string{"soil_exponent: 1.5", "soil_exponent: 9"},
			lacks: map[place.Pointer]string{"/systems/0/operating_flow": "/systems/0/suction_points/0/soil_exponent"},
		},
		{
			name: "exponent not recorded", record: []string{", soil_exponent: 1.5", ""},
			lacks: map[place.Pointer]string{"/systems/0/operating_flow": "/systems/0/suction_points/0/soil_exponent"},
		},
		{
			name: "test that ends before it starts", record: []string{"start: \"2026-02-10T08:00:00-05:00\", end: \"2026-02-13T08:00:00-05:00\"", "start: \"2026-02-13T08:00:00-05:00\", end: \"2026-02-10T08:00:00-05:00\""},
			figures: map[place.Pointer]float64{"/tests/0/duration": -72 * 3600},
		},
		{
			name: "hours reported after the end", record: []string{"reported_to: \"2026-03-14T15:00:00-05:00\"", "reported_to: \"2026-03-11T15:00:00-05:00\""},
			lacks: map[place.Pointer]string{"/tests/1/valid_hours": "/measurements/tests/1/reported_to"},
		},
		{
			name: "hours left out somewhere", record: []string{"hours_left_out: 0 h", "hours_left_out: 3 h"},
			lacks: map[place.Pointer]string{"/tests/1/valid_hours": "/measurements/tests/1/hours_left_out"},
		},
		{
			name: "radon below nothing", record: []string{"result: 0.9 pCi/L", "result: -0.9 pCi/L"},
			lacks: map[place.Pointer]string{"/radon/after": "/measurements/tests/1/result", "/tests/1/reported": "/measurements/tests/1/result", "/duplicates/0/mean": "/measurements/tests/1/result"},
		},
		{
			name: "work that ended before it began", record: []string{"completed: 2026-03-10", "completed: 2026-03-08"},
			figures: map[place.Pointer]float64{"/order/work_before_completion": -2 * 86400},
		},
		{
			name: "outlet below grade", record: []string{"      height_above_grade: 20 ft\n", "", "grade_level: 0 ft", "grade_level: 22 ft"},
			figures: map[place.Pointer]float64{"/discharges/0/height_above_grade": -2 * 0.3048},
		},
		{
			name: "recorded height against positions", record: []string{"height_above_grade: 20 ft", "height_above_grade: 12 ft"},
			figures: map[place.Pointer]float64{"/discharges/0/height_above_grade": 12 * 0.3048, "/discharges/0/height_disagreement": 8 * 0.3048},
		},
		{
			name: "pipe of negative length", record: []string{"length: 16 ft", "length: -16 ft"},
			lacks: map[place.Pointer]string{"/segments/1/fall_required": "/systems/0/pipe/1/length", "/segments/1/loss": "/systems/0/pipe/1/length", "/systems/0/pipe_loss": "/systems/0/pipe/1/length"},
			// The speed rests on bore and flow alone.
			figures: map[place.Pointer]float64{"/systems/0/flow_used": 55 * 0.3048 * 0.3048 * 0.3048 / 60},
		},
		{
			name: "pipe that rises by more than its length", record: []string{"rise: 2 in", "rise: 20 ft"},
			lacks: map[place.Pointer]string{"/segments/1/slope": "/systems/0/pipe/1/rise", "/segments/1/trap_depth": "/systems/0/pipe"},
		},
		{
			name: "fittings not listed", record: []string{"run: vertical, fittings: []}", "run: vertical}"},
			lacks: map[place.Pointer]string{"/segments/2/loss": "/systems/0/pipe/2/fittings", "/systems/0/operating_flow": "/systems/0/pipe/2/fittings"},
		},
		{
			name: "valve of unknown loss", record: []string{", loss_coefficient: 0.4", ""},
			lacks: map[place.Pointer]string{"/segments/1/loss": "/systems/0/pipe/1/fittings/1/loss_coefficient"},
		},
		{
			name: "foam-core pipe", record: []string{main + ", material: pvc, schedule: sch-40, standard: astm-d1785", main + ", material: pvc, schedule: sch-40, standard: astm-f891"},
			lacks: map[place.Pointer]string{"/segments/2/inner_diameter": "/systems/0/pipe/2/inner_diameter", "/discharges/0/exit_velocity": "/systems/0/pipe/2/inner_diameter"},
		},
		{
			name: "schedule that no table defines", record: []string{main + ", material: pvc, schedule: sch-40", main + ", material: pvc, schedule: sch-20"},
			lacks: map[place.Pointer]string{"/segments/2/inner_diameter": "/systems/0/pipe/2/inner_diameter"},
		},
		{
			name: "downspout", record: []string{main + ", material: pvc, schedule: sch-40, standard: astm-d1785", "- {id: stack, shape: downspout-3x4, material: metal-downspout"},
			lacks: map[place.Pointer]string{"/segments/2/velocity": "/systems/0/pipe/2/inner_sides"},
		},
		{
			name: "guard not recorded", record: []string{"      guard: mesh\n", ""},
			lacks: map[place.Pointer]string{"/systems/0/operating_flow": "/systems/0/discharge/guard"},
		},
		{
			name: "area below nothing", record: []string{"footprint: 960 ft2", "footprint: -960 ft2"},
			lacks: map[place.Pointer]string{"/systems/0/area_treated": "/house/foundations/0/footprint"},
		},
		{
			name: "time on site below nothing", record: []string{"hours_on_site: 8 h", "hours_on_site: -8 h"},
			lacks: map[place.Pointer]string{"/crew/0/past_year": "/job/crew/0/hours_on_site"},
		},
		{
			name: "circuit of no capacity", record: []string{"circuit_rating: 15 A", "circuit_rating: 0 A"},
			lacks: map[place.Pointer]string{"/systems/0/circuit_share_fan": "/systems/0/electrical/circuit_rating"},
		},
		{
			name: "window of negative width", record: []string{"width: 3 ft", "width: -3 ft"},
			lacks:   map[place.Pointer]string{"/clearances/0/disagreement": "/house/openings/0/width"},
			figures: map[place.Pointer]float64{"/clearances/0/distance": 7 * 0.3048},
		},
		{
			name: "legs below nothing", record: []string{"legs: [4 ft, 3 ft]", "legs: [4 ft, -3 ft]"},
			lacks: map[place.Pointer]string{"/clearances/0/distance": "/systems/0/discharge/clearances/0/legs"},
		},
		{
			name: "slab that crosses itself", record: []string{"{x: 40 ft, y: 0 ft}, {x: 40 ft, y: 24 ft}", "{x: 40 ft, y: 24 ft}, {x: 40 ft, y: 0 ft}"},
			lacks: map[place.Pointer]string{"/communication/0/coverage": "/house/foundations/0/outline"},
		},
		{
			name: "height that no ground has", record: []string{"altitude: 500 ft", "altitude: 500000 ft"},
			lacks: map[place.Pointer]string{"/air/density": "/house/altitude", "/systems/0/shutoff_pressure": "/house/altitude"},
		},
		{
			name: "fireplace", record: []string{"kind: water-heater", "kind: fireplace"},
			lacks: map[place.Pointer]string{"/appliances/0/limit": "/house/combustion/0/kind"},
		},
		{
			name: "appliance of unknown flue", record: []string{", commonly_vented: false", ""},
			lacks: map[place.Pointer]string{"/appliances/0/limit": "/house/combustion/0/commonly_vented"},
		},
		{
			name: "openings not listed", record: []string{"      clearances:\n        - {id: tape-1, opening: win-1, distance: 5 ft 2 in, legs: [4 ft, 3 ft], drop: 1 ft}\n", "", "  openings:\n    - {id: win-1, kind: window, building: own, into_conditioned_space: true, operable: true, corner: {x: 6 ft, y: 24 ft, z: 15 ft}, width: 3 ft, height: 4 ft, facing: north}\n", ""},
			words: map[place.Pointer]string{"/clearances/0/id": "sys-1/openings", "/clearances/0/at": "/house/openings"},
			lacks: map[place.Pointer]string{"/clearances/0/distance": "/house/openings"},
		},
		{
			name: "mixed signs under the slab", record: []string{"pressure: -0.02 inH2O", "pressure: 0.02 inH2O"},
			words: map[place.Pointer]string{"/communication/0/seasonal_verdict": "reverses", "/holes/2/class": "fails"},
			lacks: map[place.Pointer]string{"/communication/0/decay_per_length": "/diagnostics/communication_tests/0/holes/2/pressure"},
		},
		{
			// The reach of the other holes says nothing of the part round the one that does not pull.
			name: "a hole that does not pull, and one without position", record: []string{"pressure: -0.05 inH2O", "pressure: 0.05 inH2O", "position: {x: 24 ft, y: 12 ft}, distance: 4 ft", "distance: 4 ft"},
			lacks: map[place.Pointer]string{"/communication/0/coverage": "/diagnostics/communication_tests/0/holes/0/position"},
		},
	} {
		derived := document(variant(t, c.record...), nil)
		keepsSchema(t, derived)
		for at, want := range c.lacks {
			if got := lacks(t, derived, at); !slices.Contains(got, want) {
				t.Errorf("%s: %s lacks %q, not %s: %v", c.name, at, got, want, value(t, derived, at))
			}
		}
		for at, want := range c.words {
			if got, _ := record.At(derived, at); got != want {
				t.Errorf("%s: %s is %v, want %s", c.name, at, got, want)
			}
		}
		for at, want := range c.figures {
			if got := si(t, derived, at); got < want-1e-9 || got > want+1e-9 {
				t.Errorf("%s: %s is %v, want %v", c.name, at, got, want)
			}
		}
	}
}

// Pipe that does not lead from suction points to one open end says where it goes
// wrong, and nothing of it is worked out.
func TestPipeThatLeadsNowhere(t *testing.T) {
	const leg = ", shape: round, nominal_size: 3 in, material: pvc, schedule: sch-40, standard: astm-d1785, length: 4 ft, rise: 0 ft, run: horizontal, fittings: []}\n"
	build := func(points string, segments ...string) map[string]any {
		text := "record: 1\njob: {id: J-1, stage: running, profiles: [us-epa-1994]}\nsystems:\n  - id: sys-1\n    kind: sub-slab\n    powered_by: fan\n    suction_points: [" + points +
			"]\n    commissioning: {measured_flow: 40 cfm}\n    pipe:\n"
		for _, s := range segments {
			text += "      - {" + s + leg
		}
		return canonical(t, "pipe", []byte(text))
	}
	two := "{id: p}, {id: q}"
	for _, c := range []struct {
		name string
		in   map[string]any
		want string
	}{
		{"one after the other", build("{id: p}", "id: a, starts_at: p", "id: b"), ""},
		{"the one beginning need not be named", build("{id: p}", "id: a", "id: b"), ""},
		{"two legs", build(two, "id: a, starts_at: p, flows_into: c", "id: b, starts_at: q, flows_into: c", "id: c"), ""},
		{"two legs, one without an end", build(two, "id: a, starts_at: p", "id: b, starts_at: q", "id: c"), "/systems/0/pipe/0/flows_into"},
		{"legs that join one after another", build(two, "id: a, starts_at: p, flows_into: c", "id: b, starts_at: q, flows_into: d", "id: c, flows_into: d", "id: d"), ""},
		{"a point without pipe", build(two, "id: a, starts_at: p", "id: b"), "/systems/0/suction_points/1"},
		{"a beginning without a point", build(two, "id: a, starts_at: p, flows_into: c", "id: b, flows_into: c", "id: c"), "/systems/0/pipe/1/starts_at"},
		{"a leg that may join another, or not", build(two, "id: a, starts_at: p, flows_into: c", "id: b, starts_at: q", "id: c", "id: d"), "/systems/0/pipe/1/flows_into"},
		{"no suction point", build("", "id: a"), "/systems/0/suction_points"},
		{"no pipe", build("{id: p}"), "/systems/0/pipe"},
	} {
		derived := document(c.in, nil)
		keepsSchema(t, derived)
		got := lacks(t, derived, "/systems/0/smallest_main_bore")
		switch {
		case c.want == "" && len(got) > 0:
			t.Errorf("%s: lacks %v", c.name, got)
		case c.want != "" && (len(got) == 0 || !strings.HasPrefix(got[0], c.want)):
			t.Errorf("%s: lacks %v, want %s", c.name, got, c.want)
		}
	}
}

// A fan stands where all the air passes.
func TestFanInOneLeg(t *testing.T) {
	text := strings.Replace(string(source(t, "testdata/four.yaml")), "after_segment: main\n      inlet_size", "after_segment: trunk\n      inlet_size", 1)
	derived := document(canonical(t, "four", []byte(text)), nil)
	if got := lacks(t, derived, "/systems/0/operating_flow"); !slices.Contains(got, "/systems/0/fan/after_segment") {
		t.Errorf("the operating flow lacks %v", got)
	}
}

// What the network says of pipe names it as the record does.
func TestPipeIsNamedByItsIDs(t *testing.T) {
	text := strings.Replace(string(source(t, "testdata/metric.yaml")), "inner_diameter: 78 mm", "inner_diameter: 390 mm", 1)
	derived := document(canonical(t, "metric.yaml", []byte(text)), nil)
	method, _ := value(t, derived, "/systems/1/pipe_loss")["method"].(string)
	for _, name := range []string{`"sp-1"`, `"the start of main"`} {
		if !strings.Contains(method, name) {
			t.Errorf("%s is not named: %s", name, method)
		}
	}
}
