package geometry

import (
	"math"
	"testing"
)

func TestStackPressure(t *testing.T) {
	winter := Stack{Height: 3, Indoor: 294, Outdoor: 264, Barometer: 101325}
	p := must[float64](t)(winter.Pressure())
	// The same from the two densities by the ideal gas law.
	want := (101325/(287.05*264) - 101325/(287.05*294)) * 9.80665 * 3
	if !near(p, want, 1e-12*want) || p <= 0 {
		t.Errorf("winter: %g Pa, want %g Pa", p, want)
	}
	summer := winter
	summer.Indoor, summer.Outdoor = winter.Outdoor, winter.Indoor
	if got := must[float64](t)(summer.Pressure()); got != -p {
		t.Errorf("warmer outdoors: %g Pa, want %g Pa", got, -p)
	}
	high := winter
	high.Barometer *= 0.83205 // at 5,000 ft
	if got := must[float64](t)(high.Pressure()); !near(got, 0.83205*p, 1e-12) {
		t.Errorf("at altitude: %g Pa, want %g Pa", got, 0.83205*p)
	}
	for name, s := range map[string]Stack{
		"absolute zero": {3, 294, 0, 101325},
		"celsius given": {3, 21, -10, 101325},
		"no barometer":  {3, 294, 264, 0},
		"below ground":  {-1, 294, 264, 101325},
		"no number":     {math.NaN(), 294, 264, 101325},
	} {
		if _, err := s.Pressure(); err == nil {
			t.Errorf("%s: accepted", name)
		}
		if _, err := CarryToDesign(-5, s, winter); err == nil {
			t.Errorf("%s: carried from", name)
		}
		if _, err := CarryToDesign(-5, winter, s); err == nil {
			t.Errorf("%s: carried to", name)
		}
	}
	if got := must[float64](t)(CarryToDesign(-5, winter, winter)); got != -5 {
		t.Errorf("same weather: %g Pa, want -5 Pa", got)
	}
}

// Common practice, no source.
func TestClassifyHold(t *testing.T) {
	for p, want := range map[float64]Hold{
		-20: HoldStrong, -4: HoldStrong, -3.99: HoldAdequate, -1: HoldAdequate,
		-0.99: HoldMarginal, -0.01: HoldMarginal, 0: HoldFails, 3: HoldFails,
		math.NaN(): HoldFails,
	} {
		if got := ClassifyHold(p); got != want {
			t.Errorf("%g Pa: %s, want %s", p, got, want)
		}
	}
}
