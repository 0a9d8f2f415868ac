package geometry

import (
	"math"
	"math/rand/v2"
	"testing"
)

// EPA 402-R-93-078 14.2.8 and 25 Pa. Code 240.308(b)(4), worked case 7: 7.5 ft
// through the house, 4.5 + 6.0 ft round its corner.
func TestRoundCorner(t *testing.T) {
	outlet := Point{X: -4.5 * foot}
	window := must[Rect](t)(newWallOpening(Point{0, 7 * foot, -foot}, PlanPoint{Y: 1}, 2*foot, 2*foot))
	if got := pathRound(outlet, []PlanPoint{{}}, window) / foot; !near(got, 10.5, 1e-9) {
		t.Errorf("round the corner %g ft, want 10.5 ft", got)
	}
	if got := pathRound(outlet, nil, window) / foot; !near(got, 7.5, 1e-9) {
		t.Errorf("straight %g ft, want 7.5 ft", got)
	}
	if got := must[float64](t)(SumLegs([]float64{4.5 * foot, 6 * foot})) / foot; !near(got, 10.5, 1e-9) {
		t.Errorf("legs sum to %g ft, want 10.5 ft", got)
	}
	// Three sides of a house 4 by 3, climbing 24 on 7 + 3 in plan: a 10-24-26 triangle.
	light := must[Rect](t)(newRoofLight(Point{0, 3, 24}, PlanPoint{X: 1}, 0, 0))
	if got := pathRound(Point{}, []PlanPoint{{4, 0}, {4, 3}}, light); !near(got, math.Hypot(11, 24), 1e-12) {
		t.Errorf("round two corners %g m, want %g m", got, math.Hypot(11, 24))
	}
}

func TestSumLegsRefusals(t *testing.T) {
	for name, legs := range map[string][]float64{"none": nil, "negative": {1, -1}, "no number": {math.NaN()}} {
		if _, err := SumLegs(legs); err == nil {
			t.Errorf("%s: accepted", name)
		}
	}
}

func TestPathProperties(t *testing.T) {
	rng := rand.New(rand.NewPCG(5, 6))
	for i := range 200 {
		r, p := randomRect(rng), randomPoint(rng, 5)
		switch i % 3 { // sloped, upright, level
		case 1:
			r = must[Rect](t)(newWallOpening(r.corner, PlanPoint{r.u.X, r.u.Y}, 1, 2))
		case 2:
			r = must[Rect](t)(newRoofLight(r.corner, PlanPoint{r.u.X, r.u.Y}, 1, 2))
		}
		c := randomPoint(rng, 5).Plan()
		got := pathRound(p, []PlanPoint{c}, r)
		if got < r.Distance(p)-1e-9 {
			t.Fatalf("try %d: the way round, %g, is shorter than the straight line, %g", i, got, r.Distance(p))
		}
		least := math.Inf(1)
		const steps = 150
		for s := range steps + 1 {
			for u := range steps + 1 {
				x := r.at(float64(s)/steps, float64(u)/steps)
				least = min(least, math.Hypot(p.Plan().Distance(c)+c.Distance(x.Plan()), p.Z-x.Z))
			}
		}
		if size := r.u.length() + r.v.length(); got > least+1e-9 || got < least-size/steps {
			t.Fatalf("try %d: %g, by trying places %g", i, got, least)
		}
	}
}
