package radon

import (
	"math"
	"testing"
)

func TestAverage(t *testing.T) {
	// Four equal devices: the random part halves, the calibration part stays.
	u := math.Hypot(8, 6)
	four := []Result{{Value: 100, U: u}, {Value: 100, U: u}, {Value: 100, U: u}, {Value: 100, U: u}}
	if m := must[Result](t)(Average(four, 0.06)); m.Value != 100 || !near(m.U, math.Hypot(4, 6), 1e-9) {
		t.Errorf("%+v", m)
	}
	if m := must[Result](t)(Average(four, 0)); !near(m.U, u/2, 1e-12) {
		t.Errorf("without calibration part: %+v", m)
	}
	bounds := []Result{{Value: 20, BelowDetection: true}, {Value: 10, BelowDetection: true}}
	if m := must[Result](t)(Average(bounds, 0)); m.Value != 15 || !m.BelowDetection {
		t.Errorf("both below detection: %+v", m)
	}
	for name, results := range map[string][]Result{
		"none":      nil,
		"mixture":   {{Value: 20, BelowDetection: true}, {Value: 30}},
		"no number": {{Value: math.NaN()}},
		"negative":  {{Value: 20}, {Value: -20}},
	} {
		if m, err := Average(results, 0); err == nil {
			t.Errorf("%s: %+v", name, m)
		}
	}
	if m, err := Average(four, -1); err == nil {
		t.Errorf("negative calibration uncertainty: %+v", m)
	}
}

func TestWorst(t *testing.T) {
	rooms := []room{{"den", Result{Value: 90}}, {"basement", Result{Value: 110}}, {"study", Result{Value: 110 + 1e-12}}}
	if got := must[room](t)(worst(rooms)); got.Name != "basement" {
		t.Errorf("%+v", got)
	}
	if got, err := worst(nil); err == nil {
		t.Errorf("no room: %+v", got)
	}
	if got, err := worst([]room{{"den", Result{Value: 90}}, {"attic", Result{Value: math.NaN()}}}); err == nil {
		t.Errorf("no number: %+v", got)
	}
}

func TestCountingURefusals(t *testing.T) {
	for _, n := range []float64{0, -4, math.NaN(), math.Inf(1)} {
		if u, err := countingU(n); err == nil {
			t.Errorf("%g counts: %g", n, u)
		}
	}
}
