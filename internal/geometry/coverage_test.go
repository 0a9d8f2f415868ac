package geometry

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"
)

func TestShareWithin(t *testing.T) {
	square := must[Polygon](t)(NewPolygon([]PlanPoint{{0, 0}, {30, 0}, {30, 30}, {0, 30}}))
	quarter := math.Pi * 225 / 4 / 900 // a quarter disc of radius 15
	for _, c := range []struct {
		name   string
		points []PlanPoint
		radius float64
		want   float64
	}{
		{"touching all sides", []PlanPoint{{15, 15}}, 15, math.Pi / 4},
		{"at a corner", []PlanPoint{{0, 0}}, 15, quarter},
		{"at two corners, touching", []PlanPoint{{0, 0}, {30, 0}}, 15, 2 * quarter},
		{"at all corners", []PlanPoint{{0, 0}, {30, 0}, {30, 30}, {0, 30}}, 15, 4 * quarter},
		{"same place twice", []PlanPoint{{15, 15}, {15, 15}}, 15, math.Pi / 4},
		{"reaching the far corner", []PlanPoint{{0, 0}}, 15 * math.Sqrt(8), 1},
		{"far more than enough", []PlanPoint{{3, 4}}, 1000, 1},
		{"two half overlapping inside", []PlanPoint{{12, 15}, {18, 15}}, 6,
			(2*math.Pi*36 - (2*36*math.Pi/3 - 6*math.Sqrt(27))) / 900},
		{"on a side", []PlanPoint{{15, 0}}, 10, math.Pi * 50 / 900},
		{"outside, reaching in", []PlanPoint{{15, -5}}, 10, (100*math.Pi/3 - 5*math.Sqrt(75)) / 900},
		{"outside, touching", []PlanPoint{{15, -5}}, 5, 0},
		{"no radius", []PlanPoint{{15, 15}}, 0, 0},
	} {
		if got := must[float64](t)(square.ShareWithin(c.points, c.radius)); !near(got, c.want, 1e-12) {
			t.Errorf("%s: %.15g, want %.15g", c.name, got, c.want)
		}
	}
	if _, err := square.ShareWithin(nil, 5); !errors.Is(err, errNoPoints) {
		t.Errorf("no point: %v", err)
	}
	for _, r := range []float64{-1, math.NaN(), math.Inf(1)} {
		if _, err := square.ShareWithin([]PlanPoint{{1, 1}}, r); err == nil {
			t.Errorf("radius %g was accepted", r)
		}
	}
}

// The same places of contact in feet, at any offset and turn, where rounding
// moves them off and on again.
func TestShareWithinContacts(t *testing.T) {
	rng := rand.New(rand.NewPCG(9, 10))
	for i := range 600 {
		sin, cos := math.Sincos(2 * math.Pi * rng.Float64())
		if i%2 == 0 {
			sin, cos = 0, 1
		}
		dx, dy, unit := 50*rng.NormFloat64(), 50*rng.NormFloat64(), foot*(0.5+rng.Float64())
		place := func(x, y float64) PlanPoint {
			return PlanPoint{dx + unit*(cos*x-sin*y), dy + unit*(sin*x+cos*y)}
		}
		square := must[Polygon](t)(NewPolygon([]PlanPoint{place(0, 0), place(30, 0), place(30, 30), place(0, 30)}))
		var grid []PlanPoint // nine discs touching each other and the sides
		for k := range 9 {
			grid = append(grid, place(5+10*float64(k%3), 5+10*float64(k/3)))
		}
		aslant := 2 * math.Sqrt2 // two discs of radius 4 that touch halfway between the sides' directions
		for _, c := range []struct {
			name         string
			points       []PlanPoint
			radius, want float64
		}{
			{"nine", grid, 5, math.Pi / 4},
			{"one", []PlanPoint{place(15, 15)}, 15, math.Pi / 4},
			{"corners", []PlanPoint{place(0, 0), place(30, 0), place(30, 30), place(0, 30)}, 15, math.Pi / 4},
			{"through two corners", []PlanPoint{place(0, 0)}, 30, math.Pi / 4},
			{"aslant", []PlanPoint{place(15-aslant, 15-aslant), place(15+aslant, 15+aslant)}, 4, math.Pi * 32 / 900},
		} {
			if got := must[float64](t)(square.ShareWithin(c.points, c.radius*unit)); !near(got, c.want, 1e-9) {
				t.Fatalf("try %d, %s: %.12g, want %.12g", i, c.name, got, c.want)
			}
		}
	}
}

func TestShareWithinByTrying(t *testing.T) {
	rng := rand.New(rand.NewPCG(11, 12))
	for i := range 40 {
		slab := randomSlab(t, rng)
		points := randomHoles(slab, 1+rng.IntN(6), rng)
		if i%3 == 0 {
			points = append(points, PlanPoint{20 + 14*rng.NormFloat64(), -7})
		}
		radius := 0.5 + 5*rng.Float64()
		covered := 0
		all := tried(slab, 0.05, func(p PlanPoint) {
			for _, c := range points {
				if p.Distance(c) <= radius {
					covered++
					return
				}
			}
		})
		want := float64(covered) / float64(all)
		if got := must[float64](t)(slab.ShareWithin(points, radius)); !near(got, want, 0.002) {
			t.Errorf("try %d: %g, by trying places %g", i, got, want)
		}
	}
}

func TestCoverageGrows(t *testing.T) {
	rng := rand.New(rand.NewPCG(13, 14))
	for i := range 300 {
		slab := randomSlab(t, rng)
		points := randomHoles(slab, 4, rng)
		last := 0.0
		for radius := 0.0; radius < 30; radius += 0.7 {
			got := must[float64](t)(slab.ShareWithin(points, radius))
			if got < last-1e-12 {
				t.Fatalf("try %d: coverage shrinks from %g to %g at radius %g", i, last, got, radius)
			}
			if fewer := must[float64](t)(slab.ShareWithin(points[:3], radius)); fewer > got+1e-12 {
				t.Fatalf("try %d: a point more lowers coverage from %g to %g", i, fewer, got)
			}
			last = got
		}
		if last != 1 && !near(last, 1, 1e-12) {
			t.Fatalf("try %d: a radius beyond the slab covers only %g", i, last)
		}
		// Just reaching the farthest place means covering everything.
		gap := must[Gap](t)(slab.Farthest(points))
		if got := must[float64](t)(slab.ShareWithin(points, gap.Distance)); !near(got, 1, 1e-9) {
			t.Fatalf("try %d: the farthest place reached, covered only %g", i, got)
		}
		if got := must[float64](t)(slab.ShareWithin(points, 0.97*gap.Distance)); got >= 1-1e-9 {
			t.Fatalf("try %d: the farthest place not reached, covered %g", i, got)
		}
	}
}
