package geometry

import (
	"math"
	"testing"
)

func TestFitField(t *testing.T) {
	exact := func(r float64) Reading { return Reading{r, -20 * math.Exp(-0.3*r)} }
	f := must[Field](t)(FitField([]Reading{exact(0.5), exact(2), exact(4), exact(7), {11, -0.1}}, 0.25))
	if !near(f.P0, -20, 1e-9) || !near(f.K, 0.3, 1e-12) || !near(f.R2, 1, 1e-12) || f.Farthest != 7 || len(f.Residuals) != 4 {
		t.Errorf("exact readings: %+v", f)
	}
	// Worked by hand: ln|p| = 3, 2, 2 at 0, 1, 2 m: slope -1/2, mean 7/3 at 1 m.
	e := math.E
	f = must[Field](t)(FitField([]Reading{{0, e * e * e}, {1, e * e}, {2, e * e}}, 0))
	if !near(f.K, 0.5, 1e-12) || !near(f.P0, math.Exp(7./3+0.5), 1e-9) || !near(f.R2, 0.75, 1e-12) {
		t.Errorf("three readings: %+v", f)
	}
	for i, want := range []float64{1. / 6, -1. / 3, 1. / 6} {
		if r := f.Residuals[i]; r.Index != i || !near(r.LogRatio, want, 1e-12) {
			t.Errorf("residual %d: %+v, want %g", i, r, want)
		}
	}
	flat := must[Field](t)(FitField([]Reading{{0, -3}, {5, -3}}, 0))
	if flat.K != 0 || flat.R2 != 1 {
		t.Errorf("equal readings: %+v", flat)
	}
	if _, err := flat.Radius(1); err == nil {
		t.Error("a field that does not die away has a radius")
	}
}

func TestFitFieldRefusals(t *testing.T) {
	for name, readings := range map[string][]Reading{
		"none":              nil,
		"one":               {{1, -3}},
		"one above noise":   {{1, -3}, {2, -0.2}},
		"one distance":      {{1, -3}, {1, -4}},
		"different signs":   {{1, -3}, {2, 1}},
		"negative distance": {{-1, -3}, {2, -1}},
		"no number":         {{1, math.NaN()}, {2, -1}, {3, -1}},
	} {
		if f, err := FitField(readings, 0.2); err == nil {
			t.Errorf("%s: accepted as %+v", name, f)
		}
	}
	if _, err := FitField([]Reading{{1, -3}, {2, -2}}, -1); err == nil {
		t.Error("negative noise was accepted")
	}
}

func TestRadius(t *testing.T) {
	f := Field{P0: -8, K: 0.25}
	for _, c := range []struct{ criterion, want float64 }{{-1, 4 * math.Log(8)}, {1, 4 * math.Log(8)}, {8, 0}, {50, 0}} {
		got := must[float64](t)(f.Radius(c.criterion))
		if !near(got, c.want, 1e-12) {
			t.Errorf("radius to %g Pa: %g m, want %g m", c.criterion, got, c.want)
		}
		if c.want > 0 && !near(math.Abs(f.At(got)), math.Abs(c.criterion), 1e-12) {
			t.Errorf("at that radius %g Pa, want %g Pa", f.At(got), c.criterion)
		}
	}
	if _, err := f.Radius(0); err == nil {
		t.Error("a criterion of 0 Pa was accepted")
	}
	for _, left := range []float64{0, -0.1, 1.1, math.NaN()} {
		if _, err := fieldFromShare(-10, left, 3); err == nil {
			t.Errorf("a share of %g left was accepted", left)
		}
	}
}

// Abramowitz and Stegun, Handbook of Mathematical Functions, Table 9.8 (from
// memory); the digits here were worked out with mpmath at 25 digits.
func TestBesselK0(t *testing.T) {
	for x, want := range map[float64]float64{
		1e-8: 18.536612259610778,
		0.01: 4.721244730161095,
		0.1:  2.4270690247020166,
		0.5:  0.92441907122766586,
		1:    0.42102443824070833,
		2:    0.11389387274953344,
		5:    0.0036910983340425943,
		10:   1.7780062316167652e-5,
		20:   5.7412378153365243e-10,
		50:   3.4101677497894955e-23,
	} {
		if got := besselK0(x); !near(got, want, 1e-14*want) {
			t.Errorf("K0(%g) = %.16g, want %.16g", x, got, want)
		}
	}
}

func TestLeakyLayer(t *testing.T) {
	l := leakyLayer{Flow: 0.01, Viscosity: 1.8e-5, Permeability: 1e-8, Thickness: 0.1, LeakLength: 5}
	// 0.01 x 1.8e-5 / (2 pi x 1e-8 x 0.1) = 28.6479 Pa, times K0(1).
	if got := must[float64](t)(l.Suction(5)); !near(got, 28.647889756541*0.42102443824, 1e-8) {
		t.Errorf("suction %g Pa", got)
	}
	for _, distance := range []float64{0, -1, math.NaN(), math.Inf(1)} {
		if got, err := l.Suction(distance); err == nil {
			t.Errorf("distance %g m gave %g Pa", distance, got)
		}
	}
	l.LeakLength = 0
	if _, err := l.Suction(1); err == nil {
		t.Error("a layer without leak length was accepted")
	}
}
