package radon

import (
	"math"
	"testing"
)

// ANSI/AARST MAH 2019 8.5.2 and MALB 2014 (1/21) 8.1.1: one decimal, a half up.
func TestReport(t *testing.T) {
	for typed, want := range map[float64]string{
		3.95: "4.0", 3.949: "3.9", 3.9499999: "3.9", 3.94: "3.9", 4: "4.0", 0: "0.0", 0.05: "0.1", 0.25: "0.3", 12.449: "12.4",
	} {
		if got := ReportPicocuries(typed * perPicocurie); got != want {
			t.Errorf("%g pCi/L reported as %s, want %s", typed, got, want)
		}
	}
	for level, want := range map[float64]string{147.5: "148", 147.49: "147", 148: "148", 0.5: "1", 0: "0"} {
		if got := ReportBecquerels(level); got != want {
			t.Errorf("%g Bq/m3 reported as %s, want %s", level, got, want)
		}
	}
}

// The means of neighbouring tenths are exact halves, which binary floats miss
// about every other time.
func TestReportedMeansOfNeighbours(t *testing.T) {
	for tenths := 1; tenths < 200; tenths++ {
		a, b := float64(tenths)/10, float64(tenths+1)/10
		mean := must[Result](t)(Average([]Result{{Value: a * perPicocurie}, {Value: b * perPicocurie}}, 0))
		want := ReportPicocuries(b * perPicocurie)
		if got := ReportPicocuries(mean.Value); got != want {
			t.Errorf("mean of %g and %g reported as %s, want %s", a, b, got, want)
		}
	}
}

func TestReduce(t *testing.T) {
	r := must[Reduction](t)(Reduce(Result{Value: 400, U: 40}, Result{Value: 100, U: 15}))
	if r.Percent != 75 || r.Factor != 4 || r.AtLeast {
		t.Errorf("%+v", r)
	}
	relative := math.Hypot(0.1, 0.15)
	if !near(r.U, 25*relative, 1e-12) || !near(r.FactorU, 4*relative, 1e-12) {
		t.Errorf("uncertainties %g and %g", r.U, r.FactorU)
	}
	if r := must[Reduction](t)(Reduce(Result{Value: 100}, Result{Value: 150})); r.Percent != -50 || !near(r.Factor, 2./3, 1e-15) {
		t.Errorf("radon that rose: %+v", r)
	}
	if r := must[Reduction](t)(Reduce(Result{Value: 100}, Result{Value: 10, BelowDetection: true})); r.Percent != 90 || !r.AtLeast {
		t.Errorf("after below detection: %+v", r)
	}
	if r := must[Reduction](t)(Reduce(Result{Value: 100, U: 10}, Result{U: 4})); r.Percent != 100 || r.Factor != 0 || !near(r.U, 4, 1e-12) {
		t.Errorf("nothing left: %+v", r)
	}
	for name, pair := range map[string][2]Result{
		"nothing before":         {{}, {Value: 1}},
		"before below detection": {{Value: 20, BelowDetection: true}, {Value: 1}},
		"negative":               {{Value: 20}, {Value: -1}},
		"no number":              {{Value: math.NaN()}, {Value: 1}},
		"negative uncertainty":   {{Value: 20, U: -1}, {Value: 1}},
	} {
		if r, err := Reduce(pair[0], pair[1]); err == nil {
			t.Errorf("%s: %+v", name, r)
		}
	}
}

func TestCompare(t *testing.T) {
	const action = 4 * perPicocurie
	for _, c := range []struct {
		name   string
		result Result
		want   Standing
	}{
		{"far below", Result{Value: 37, U: 4}, Below},
		{"far above", Result{Value: 400, U: 40}, AtOrAbove},
		{"3.6 pCi/L at 10 %: bound 4.19", Result{Value: 3.6 * perPicocurie, U: 0.36 * perPicocurie}, TooClose},
		{"4.4 pCi/L at 10 %", Result{Value: 4.4 * perPicocurie, U: 0.44 * perPicocurie}, TooClose},
		{"exact, at it", Result{Value: action}, AtOrAbove},
		{"exact, noisy at it", Result{Value: action * (1 - 1e-15)}, AtOrAbove},
		{"exact, under it", Result{Value: 147.9}, Below},
		{"less than it", Result{Value: action, BelowDetection: true}, Below},
		{"less than more", Result{Value: 160, BelowDetection: true}, TooClose},
	} {
		if got := must[Standing](t)(compare(c.result, action)); got != c.want {
			t.Errorf("%s: %s, want %s", c.name, got, c.want)
		}
	}
	for name, r := range map[string]Result{"no number": {Value: math.NaN()}, "no uncertainty": {Value: 1, U: math.NaN()}} {
		if got, err := compare(r, action); err == nil {
			t.Errorf("%s: %s", name, got)
		}
	}
	if got, err := compare(Result{}, math.NaN()); err == nil {
		t.Errorf("no action level: %s", got)
	}
	lower, upper := (Result{Value: 10, U: 9}).Bounds()
	if lower != 0 || !near(upper, 10+9*1.6448536269514722, 1e-12) {
		t.Errorf("bounds %g and %g", lower, upper)
	}
}

func TestAssumedU(t *testing.T) {
	for _, c := range []struct {
		device      Device
		value, want float64 // pCi/L
	}{{ContinuousMonitor, 4, 0.4}, {AlphaTrack, 4, 0.8}, {Charcoal, 2, 0.2}, {Electret, 1.9, 0.5}, {AlphaTrack, 0, 0.5}} {
		if got := must[float64](t)(AssumedU(c.device, c.value*perPicocurie)) / perPicocurie; !near(got, c.want, 1e-12) {
			t.Errorf("%s at %g pCi/L: %g, want %g", c.device, c.value, got, c.want)
		}
	}
	if u, err := AssumedU("other", 100); err == nil {
		t.Errorf("unknown device: %g", u)
	}
	if u, err := AssumedU(Charcoal, math.NaN()); err == nil {
		t.Errorf("no value: %g", u)
	}
}
