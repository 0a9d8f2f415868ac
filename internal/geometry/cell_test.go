package geometry

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"
)

func TestFarthest(t *testing.T) {
	slab := must[Polygon](t)(NewPolygon([]PlanPoint{{0, 0}, {40, 0}, {40, 24}, {0, 24}}))
	for _, c := range []struct {
		name  string
		holes []PlanPoint
		want  float64
	}{
		{"one corner", []PlanPoint{{0, 0}}, math.Hypot(40, 24)},
		{"middle", []PlanPoint{{20, 12}}, math.Hypot(20, 12)},
		{"two opposite corners", []PlanPoint{{0, 0}, {40, 24}}, 27.2}, // on a long side: x^2 = (40-x)^2 + 24^2
		{"four corners", []PlanPoint{{0, 0}, {40, 0}, {40, 24}, {0, 24}}, math.Hypot(20, 12)},
		{"one place twice", []PlanPoint{{20, 12}, {20, 12}}, math.Hypot(20, 12)},
	} {
		gap := must[Gap](t)(slab.Farthest(c.holes))
		if !near(gap.Distance, c.want, 1e-9) || !near(gap.At.Distance(c.holes[gap.Nearest]), gap.Distance, 1e-9) {
			t.Errorf("%s: %+v, want %g", c.name, gap, c.want)
		}
	}
}

// A slab like a U. The part nearest to the hole at the right end reaches into
// both legs, and cutting it leaves a corner in the gap between them, 5.59 away.
// The farthest place of the slab itself lies on its left side, where it is as far
// to (1, 0) as to (2, 10): 1 + y^2 = 4 + (10 - y)^2.
func TestFarthestAcrossGap(t *testing.T) {
	slab := must[Polygon](t)(NewPolygon([]PlanPoint{{0, 0}, {10, 0}, {10, 8}, {8, 5}, {8, 1}, {2, 1}, {2, 10}, {0, 8}}))
	gap := must[Gap](t)(slab.Farthest([]PlanPoint{{10, 5}, {1, 0}, {7, 0}, {2, 10}}))
	if want := math.Hypot(1, 5.15); !near(gap.Distance, want, 1e-12) || gap.At.Distance(PlanPoint{0, 5.15}) > 1e-12 {
		t.Errorf("%+v, want %g", gap, want)
	}
}

func TestPassingShare(t *testing.T) {
	slab := must[Polygon](t)(NewPolygon([]PlanPoint{{0, 0}, {40, 0}, {40, 24}, {0, 24}}))
	for _, c := range []struct {
		name  string
		holes []Hole
		want  float64
	}{
		{"all pass", []Hole{{PlanPoint{1, 1}, true}, {PlanPoint{30, 20}, true}}, 1},
		{"none passes", []Hole{{PlanPoint{1, 1}, false}}, 0},
		{"border at a quarter", []Hole{{PlanPoint{5, 12}, true}, {PlanPoint{15, 12}, false}}, 0.25},
		{"two readings at one place, the first bad", []Hole{{PlanPoint{5, 12}, false}, {PlanPoint{5, 12}, true}, {PlanPoint{15, 12}, true}}, 0.75},
		{"two readings at one place", []Hole{{PlanPoint{5, 12}, true}, {PlanPoint{15, 12}, true}, {PlanPoint{5, 12}, false}}, 0.75},
	} {
		if got := must[float64](t)(slab.PassingShare(c.holes)); !near(got, c.want, 1e-12) {
			t.Errorf("%s: %g, want %g", c.name, got, c.want)
		}
	}
	// A slab shaped like a U: the hole in one leg is nearest to a piece of the other.
	u := must[Polygon](t)(NewPolygon([]PlanPoint{{0, 0}, {10, 0}, {10, 10}, {6, 10}, {6, 2}, {4, 2}, {4, 10}, {0, 10}}))
	if got := must[float64](t)(u.PassingShare([]Hole{{PlanPoint{5, 1}, false}, {PlanPoint{5 - 3, 9}, true}, {PlanPoint{5 + 3, 9}, true}})); !(got > 0.5 && got < 0.7) {
		t.Errorf("U: %g passes", got)
	}
}

func TestHoleRefusals(t *testing.T) {
	slab := must[Polygon](t)(NewPolygon(ell))
	if _, err := slab.Farthest(nil); !errors.Is(err, errNoPoints) {
		t.Errorf("no hole: %v", err)
	}
	if _, err := slab.PassingShare(nil); !errors.Is(err, errNoPoints) {
		t.Errorf("no hole: %v", err)
	}
	for name, at := range map[string]PlanPoint{"in the notch": {30, 30}, "no number": {math.NaN(), 1}} {
		if _, err := slab.Farthest([]PlanPoint{at}); err == nil {
			t.Errorf("%s: accepted", name)
		}
		if _, err := slab.PassingShare([]Hole{{at, true}}); err == nil {
			t.Errorf("%s: accepted", name)
		}
	}
}

func TestCellsByTrying(t *testing.T) {
	rng := rand.New(rand.NewPCG(15, 16))
	for i := range 40 {
		slab := randomSlab(t, rng)
		places := randomHoles(slab, 1+rng.IntN(8), rng)
		holes := make([]Hole, len(places))
		for k, p := range places {
			holes[k] = Hole{p, rng.IntN(2) == 0}
		}
		const step = 0.05
		passing, worst := 0, 0.0
		all := tried(slab, step, func(p PlanPoint) {
			nearest := 0
			for k := range places {
				if p.Distance(places[k]) < p.Distance(places[nearest]) {
					nearest = k
				}
			}
			worst = max(worst, p.Distance(places[nearest]))
			if holes[nearest].Passes {
				passing++
			}
		})
		if got, want := must[float64](t)(slab.PassingShare(holes)), float64(passing)/float64(all); !near(got, want, 0.003) {
			t.Errorf("try %d: %g passes, by trying places %g", i, got, want)
		}
		// Every corner of the slab stands within a few steps of a place tried,
		// except in the sharpest ones.
		gap := must[Gap](t)(slab.Farthest(places))
		if gap.Distance < worst-1e-9 || gap.Distance > worst+12*step {
			t.Errorf("try %d: farthest %g, by trying places %g", i, gap.Distance, worst)
		}
		if !slab.Contains(gap.At) {
			t.Errorf("try %d: the farthest place %v is not on the slab", i, gap.At)
		}
		total := 0.0
		var room cells // of all of them, as in use
		for k := range places {
			total += signedArea(room.cell(slab, places, k))
		}
		if !near(total, slab.Area(), 1e-9*slab.Area()) {
			t.Errorf("try %d: parts sum to %g of %g", i, total, slab.Area())
		}
	}
}
