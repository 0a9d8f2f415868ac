package derive_test

import (
	"math"
	"slices"
	"testing"

	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/quantity"
)

// A worked case is one line of a job as people argue about it, with the figures
// that follow from it. Whether they meet a limit is not decided here.
func TestWorkedCases(t *testing.T) {
	noTape := "      clearances:\n        - {id: tape-1, opening: win-1, distance: 5 ft 2 in, legs: [4 ft, 3 ft], drop: 1 ft}\n"
	window := "corner: {x: 6 ft, y: 24 ft, z: 15 ft}, width: 3 ft, height: 4 ft, facing: north"
	outlet := "position: {x: 14 ft, y: 25 ft, z: 20 ft}"
	for _, c := range []struct {
		name   string
		record []string
		want   map[place.Pointer]float64 // SI
		within float64                   // of the figure, relative
		source string
	}{
		{
			"window 8 ft aside, top 1.5 ft below the outlet",
			[]string{noTape, "", outlet, "position: {x: 14 ft, y: 24 ft, z: 20 ft}", window, "corner: {x: 3 ft, y: 24 ft, z: 14.5 ft}, width: 3 ft, height: 4 ft, facing: north"},
			map[place.Pointer]float64{"/clearances/0/drop": 1.5 * 0.3048, "/clearances/0/distance": math.Hypot(8, 1.5) * 0.3048},
			1e-11, "EPA 402-R-93-078 (1994) 14.2.8(3): nearer than 10 ft and less than 2 ft below",
		},
		{
			"window 8 ft aside, 3 ft above the outlet",
			[]string{noTape, "", outlet, "position: {x: 14 ft, y: 24 ft, z: 20 ft}", window, "corner: {x: 3 ft, y: 24 ft, z: 23 ft}, width: 3 ft, height: 4 ft, facing: north"},
			map[place.Pointer]float64{"/clearances/0/drop": -7 * 0.3048, "/clearances/0/distance": math.Hypot(8, 3) * 0.3048},
			1e-11, "EPA 402-R-93-078 (1994) 14.2.8(3): an opening above the outlet is not 2 ft below it",
		},
		{
			"exactly ten feet",
			[]string{noTape, "", outlet, "position: {x: 12 ft, y: 32 ft, z: 17 ft}", window, "corner: {x: 3 ft, y: 24 ft, z: 15 ft}, width: 3 ft, height: 4 ft, facing: north"},
			map[place.Pointer]float64{"/clearances/0/distance": 3.048},
			0, "geometry: 6 ft along the wall, 8 ft off it",
		},
		{
			"sloped lot: the ground nearest to the outlet counts",
			[]string{"      height_above_grade: 20 ft\n", "", "grade_level: 0 ft", "grade_level: 10 ft 9 5/8 in"},
			map[place.Pointer]float64{"/discharges/0/height_above_grade": parse(t, quantity.Length, "9 ft 2 3/8 in")},
			1e-11, "25 Pa. Code 240.308(b)(3)",
		},
		{
			"round a corner: 4.5 ft and 6 ft, though 7 ft through the wall",
			[]string{"distance: 5 ft 2 in, legs: [4 ft, 3 ft]", "distance: 7 ft, legs: [4.5 ft, 6 ft]"},
			map[place.Pointer]float64{"/clearances/0/distance": 10.5 * 0.3048, "/clearances/0/straight_distance": 7 * 0.3048},
			1e-11, "EPA 402-R-93-078 (1994) 14.2.8; 25 Pa. Code 240.308(b)(4)",
		},
		{
			"monitor from hour 2 after the fan, reported from hour 24 to 74, house closed 12 h before",
			[]string{
				"started: 2026-03-10T15:00:00-05:00", "started: 2026-03-12T07:00:00-05:00",
				"device: continuous-monitor, start: \"2026-03-12T09:00:00-05:00\", end: \"2026-03-14T15:00:00-05:00\", closed_from: \"2026-03-11T18:00:00-05:00\"",
				"device: continuous-monitor, start: \"2026-03-12T09:00:00-05:00\", end: \"2026-03-15T11:00:00-05:00\", closed_from: \"2026-03-11T21:00:00-05:00\"",
				"reported_from: \"2026-03-12T09:00:00-05:00\", reported_to: \"2026-03-14T15:00:00-05:00\"",
				"reported_from: \"2026-03-13T09:00:00-05:00\", reported_to: \"2026-03-15T11:00:00-05:00\"",
			},
			map[place.Pointer]float64{"/tests/1/valid_hours": 50 * 3600, "/tests/1/lead_out": 24 * 3600, "/tests/1/after_fan_start": 2 * 3600, "/tests/1/closed_lead": 12 * 3600},
			0, "ANSI/AARST MAH 2019 7.3.2(b): 50 contiguous hours",
		},
		{
			"120 h test in a house closed 10 h before",
			[]string{"end: \"2026-02-13T08:00:00-05:00\", closed_from: \"2026-02-09T18:00:00-05:00\"", "end: \"2026-02-15T08:00:00-05:00\", closed_from: \"2026-02-09T22:00:00-05:00\""},
			map[place.Pointer]float64{"/tests/0/duration": 120 * 3600, "/tests/0/closed_lead": 10 * 3600},
			0, "25 Pa. Code 240.310(a)(4)(iv); ANSI/AARST MAH 2019 7.3.2",
		},
		{
			"duplicates 4.4 and 3.5 pCi/L",
			[]string{"result: 0.9 pCi/L", "result: 4.4 pCi/L", "result: 0.8 pCi/L", "result: 3.5 pCi/L"},
			map[place.Pointer]float64{
				"/duplicates/0/mean": 3.95 * 37, "/duplicates/0/reported_mean": 4.0 * 37,
				"/duplicates/0/relative_percent_difference": 100 * 0.9 / 3.95,
				// On both sides of 4.0 pCi/L they are not averaged: the higher counts.
				"/radon/after": 4.4 * 37,
			},
			1e-11, "ANSI/AARST MAH 2019 7.2.1, 8.5.2; MS-QA 2019 Table 7.1",
		},
		{
			"fan of 90 W and 1,400 W beside it on 15 A at 120 V",
			[]string{"power: 60 W", "power: 90 W", "circuit_other_load: 600 W", "circuit_other_load: 1400 W"},
			map[place.Pointer]float64{"/systems/0/circuit_share_fan": 90.0 / 1800, "/systems/0/circuit_share_total": 1490.0 / 1800},
			1e-11, "EPA 402-R-93-078 (1994) 14.6.6, from memory: 82.8 % of the circuit, 5 % by the fan",
		},
		{
			"16 ft of level pipe that falls 2 in", nil,
			map[place.Pointer]float64{"/segments/1/fall_required": 2 * 0.0254, "/segments/1/fall": 2 * 0.0254, "/segments/1/slope": 1.0 / 96},
			1e-11, "ANSI/AARST SGM-SF 2017 (12/20) 6.2.2: 1/8 in per ft",
		},
		{
			"reduction from 12.4 to 0.9 pCi/L", []string{"result: 0.8 pCi/L, uncertainty: 12 %, duplicate_of: post-1, spacing: 6 in", "result: 0.8 pCi/L, uncertainty: 12 %"},
			map[place.Pointer]float64{"/radon/before": 12.4 * 37, "/radon/after": 0.9 * 37, "/radon/reduction": 92.7419354839, "/radon/reduction_uncertainty": 1.3085},
			1e-4, "100 (C0 - C1)/C0 and 100 (C1/C0) sqrt(u0^2 + u1^2), relative standard uncertainties 10 % and 15 %",
		},
		{
			"one day at 20 pCi/L", nil,
			map[place.Pointer]float64{"/crew/0/exposure": 0.00470588235, "/crew/0/exposure_unit_ratio": 0.0094117647, "/crew/0/past_year": 0.40470588235},
			1e-8, "32 Ill. Adm. Code 422.70(e) with 170 h; ANSI/AARST SGM-SF 2017 (12/20) 11.3",
		},
		{
			"spike of 11.0 pCi/L read as 9.1", nil,
			map[place.Pointer]float64{"/spikes/0/relative_error": -17.2727272727},
			1e-11, "ANSI/AARST MS-QA 2019 5.3.3",
		},
		{
			"water heater alone on its flue, 40 °F outdoors", nil,
			map[place.Pointer]float64{"/appliances/0/limit": -2, "/appliances/0/draft_minimum": -1.75, "/appliances/0/depressurization": -1.2},
			1e-11, "tables on a public weatherization form",
		},
		{
			"fan of 60 W all year", nil,
			map[place.Pointer]float64{"/systems/0/yearly_energy": 60 * 8760 * 3600},
			0, "365 days",
		},
		{
			"retest two years on", nil,
			map[place.Pointer]float64{"/retest_due": parse(t, quantity.Date, "2028-03-14")},
			0, "ANSI/AARST MAH 2019 8.5.9.2",
		},
		{
			"air at 1,000 ft", []string{"altitude: 500 ft", "altitude: 1000 ft"},
			map[place.Pointer]float64{"/air/station_pressure": parse(t, quantity.Pressure, "14.175 psi")},
			5e-4, "ASHRAE Handbook Fundamentals 2017 chapter 1 Table 1",
		},
		{
			"reading of -8 Pa carried from 15 °C to -15 °C",
			[]string{
				"neutral_level: 10 ft", "neutral_level: 3 m", "altitude: 500 ft", "altitude: 0 m",
				"  indoor_temperature: 70 F\n  winter_design_temperature: 5 F", "  indoor_temperature: 21 °C\n  winter_design_temperature: -15 °C",
				"      outdoor_temperature: 40 F\n      indoor_temperature: 70 F", "      outdoor_temperature: 15 °C\n      indoor_temperature: 21 °C",
				"pressure: -0.05 inH2O", "pressure: -8 Pa",
			},
			map[place.Pointer]float64{"/holes/1/design_pressure": -3.81},
			0.06 / 3.81, "stack pressure g h (P/R)(1/T_out - 1/T_in), worked out beside this code",
		},
		{
			"speed in 3 in Schedule 40 pipe at 55 cfm", nil,
			map[place.Pointer]float64{"/segments/0/velocity": 55 * 0.3048 * 0.3048 * 0.3048 / 60 / (math.Pi / 4 * 3.068 * 0.0254 * 3.068 * 0.0254)},
			1e-5, "flow over area; bore 3.068 in by ASTM D1785",
		},
	} {
		derived := document(variant(t, c.record...), nil)
		for at, want := range c.want {
			if got := si(t, derived, at); math.Abs(got-want) > c.within*math.Abs(want) {
				t.Errorf("%s: %s is %v, want %v within %g (%s)", c.name, at, got, want, c.within, c.source)
			}
		}
	}
}

// Losses of the pipe between pit and fan by hand: Darcy and Weisbach with the
// bore of 3.068 in, Churchill's factor for smooth plastic and the fittings of the
// record, ANSI/AARST CC-1000 2018 companion guidance 8.6 (sweep 3 ft, sharp 11 ft).
func TestLossByHand(t *testing.T) {
	derived := document(variant(t), nil)
	const (
		bore, rough = 3.068 * 0.0254, 1.5e-6
		flow        = 55 * 0.3048 * 0.3048 * 0.3048 / 60
	)
	density, viscosity := si(t, derived, "/air/density"), si(t, derived, "/air/viscosity")
	speed := flow / (math.Pi / 4 * bore * bore)
	re := density * speed * bore / viscosity
	a := math.Pow(2.457*math.Log(1/(math.Pow(7/re, 0.9)+0.27*rough/bore)), 16)
	f := 8 * math.Pow(math.Pow(8/re, 12)+math.Pow(a+math.Pow(37530/re, 16), -1.5), 1.0/12)
	dynamic := density * speed * speed / 2
	for at, want := range map[place.Pointer]float64{
		"/segments/0/reynolds":        re,
		"/segments/0/friction_factor": f,
		"/segments/0/loss":            dynamic * (f*(8+3)*0.3048/bore + 0.5 + 1.2), // flush inlet and balancing valve
		"/segments/1/loss":            dynamic * (f*(16+11)*0.3048/bore + 0.4),
	} {
		if got := si(t, derived, at); math.Abs(got-want) > 1e-4*want {
			t.Errorf("%s is %v, by hand %v", at, got, want)
		}
	}
	// The suction in the pit: the gauge at the riser's end, less the speed gained
	// and the loss of the riser.
	shown := 1.25 * 249.08891
	want := shown - dynamic - dynamic*(f*11*0.3048/bore+0.5+1.2)
	if got := si(t, derived, "/suction_points/0/pit_suction"); math.Abs(got-want) > 1e-4*want {
		t.Errorf("suction in the pit is %v, by hand %v", got, want)
	}
}

// A downspout by its measured sides: speed by the true area, friction by the
// hydraulic diameter, 4 times area over girth (every text), the wall as rough as
// galvanized duct, 0.0003 ft.
func TestDownspoutByHand(t *testing.T) {
	derived := document(downspout(t, ", inner_sides: [3-1/4 in, 2-3/8 in]"), nil)
	const (
		width, depth, rough = 3.25 * 0.0254, 2.375 * 0.0254, 0.0003 * 0.3048
		flow                = 55 * 0.3048 * 0.3048 * 0.3048 / 60
	)
	bore := 4 * width * depth / (2 * (width + depth))
	density, viscosity := si(t, derived, "/air/density"), si(t, derived, "/air/viscosity")
	speed := flow / (width * depth)
	re := density * speed * bore / viscosity
	a := math.Pow(2.457*math.Log(1/(math.Pow(7/re, 0.9)+0.27*rough/bore)), 16)
	f := 8 * math.Pow(math.Pow(8/re, 12)+math.Pow(a+math.Pow(37530/re, 16), -1.5), 1.0/12)
	for at, want := range map[place.Pointer]float64{
		"/segments/2/inner_diameter":  bore,
		"/segments/2/velocity":        speed,
		"/segments/2/reynolds":        re,
		"/segments/2/friction_factor": f,
		"/segments/2/loss":            density * speed * speed / 2 * (f*18*0.3048/bore + 0.65), // mesh guard
		"/discharges/0/exit_velocity": speed,
	} {
		if got := si(t, derived, at); math.Abs(got-want) > 1e-4*want {
			t.Errorf("%s is %v, by hand %v", at, got, want)
		}
	}
	if assumed := value(t, derived, "/segments/2/loss")["assumed"].([]any); !slices.Contains(assumed, any("sheet-metal")) {
		t.Errorf("how rough the metal was taken to be is not said: %v", assumed)
	}
}

// The size that a downspout is sold by is not that of its opening.
func TestDownspoutWithoutSides(t *testing.T) {
	for _, c := range []struct{ sides, lacks string }{
		{"", "/systems/0/pipe/2/inner_sides"},
		{", inner_sides: [3 in, 0 in]", "/systems/0/pipe/2/inner_sides/1"},
		{", inner_sides: [3 in, 2 in, 3 in, 2 in]", "/systems/0/pipe/2/inner_sides"},
	} {
		derived := document(downspout(t, c.sides), nil)
		for _, at := range []place.Pointer{"/segments/2/inner_diameter", "/segments/2/velocity", "/systems/0/pipe_loss", "/discharges/0/exit_velocity"} {
			if got := lacks(t, derived, at); !slices.Contains(got, c.lacks) {
				t.Errorf("%s: %s lacks %v", c.sides, at, got)
			}
		}
	}
}

// downspout is testdata/one.yaml with a downspout for its stack.
func downspout(t testing.TB, sides string) map[string]any {
	return variant(t, "- {id: stack, shape: round, nominal_size: 4 in, material: pvc, schedule: sch-40, standard: astm-d1785",
		"- {id: stack, shape: downspout-3x4, material: metal-downspout"+sides)
}
