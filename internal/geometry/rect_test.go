package geometry

import (
	"math"
	"math/rand/v2"
	"testing"
)

func near(a, b, slack float64) bool { return math.Abs(a-b) <= slack }

// Distances in feet, worked by hand as sqrt(h^2 + d^2).
func TestWorkedDistances(t *testing.T) {
	for _, c := range []struct {
		name                      string
		aside, bottom, top        float64 // ft; heights relative to the discharge
		wantDistance, wantTopDrop float64 // ft
		source                    string
	}{
		{"case 1: top 1.5 ft below, 8 ft aside", 8, -5, -1.5, math.Sqrt(8*8 + 1.5*1.5), 1.5, "EPA 402-R-93-078 14.2.8(3)"},
		{"case 3: sill 3 ft above, 8 ft aside", 8, 3, 6, math.Sqrt(8*8 + 3*3), -6, "EPA 402-R-93-078 14.2.8(3)"},
	} {
		t.Run(c.name, func(t *testing.T) {
			r := must[Rect](t)(newWallOpening(Point{c.aside*foot + 0.5, 0, c.bottom * foot}, PlanPoint{X: -2}, 1, (c.top-c.bottom)*foot))
			if got := r.Distance(Point{}) / foot; !near(got, c.wantDistance, 1e-9) {
				t.Errorf("distance %g ft, want %g ft (%s)", got, c.wantDistance, c.source)
			}
			if got := must[float64](t)(Drop(Point{}, r, PartTop)) / foot; !near(got, c.wantTopDrop, 1e-9) {
				t.Errorf("drop to the top %g ft, want %g ft (%s)", got, c.wantTopDrop, c.source)
			}
		})
	}
}

func TestDropByPart(t *testing.T) {
	r := must[Rect](t)(newCentredWallOpening(Point{3, 0, 10}, PlanPoint{X: 1}, 1, 2))
	for part, want := range map[Part]float64{PartTop: 1, PartCentre: 2, PartBottom: 3, PartNearest: 1} {
		if got := must[float64](t)(Drop(Point{0, 0, 12}, r, part)); !near(got, want, 1e-12) {
			t.Errorf("%s: %g m, want %g m", part, got, want)
		}
	}
	if _, err := Drop(Point{}, r, "sash"); err == nil {
		t.Error("an unknown part was accepted")
	}
}

// 25 Pa. Code 240.308(b)(3), worked case 5: 10.4 ft above the lower grade but
// 9.2 ft above the ground nearest to the outlet.
func TestHeightAboveNearestGround(t *testing.T) {
	outlet := Point{0, 0, 10.4 * foot}
	ground := []Point{{20 * foot, 0, 0}, {2 * foot, 0, 1.2 * foot}, {-2 * foot, 0, 0.5 * foot}}
	height, index, err := heightAboveNearest(outlet, ground)
	if err != nil || index != 1 || !near(height, 9.2*foot, 1e-12) {
		t.Errorf("got %g ft over point %d (%v), want 9.2 ft over point 1", height/foot, index, err)
	}
	alike := []Point{{1, 0, 0.2}, {0, 1, 0.5}, {-1, 0, 0.3}}
	if height, index, err := heightAboveNearest(outlet, alike); err != nil || index != 1 || height != outlet.Z-0.5 {
		t.Errorf("points equally near: got %g m over point %d (%v), want the highest", height, index, err)
	}
	if _, _, err := heightAboveNearest(outlet, nil); err == nil {
		t.Error("no ground point was accepted")
	}
}

func TestRectRefusals(t *testing.T) {
	for name, make := range map[string]func() (Rect, error){
		"edges not square":  func() (Rect, error) { return NewRect(Point{}, Point{X: 1}, Point{X: 0.1, Y: 1}) },
		"no number":         func() (Rect, error) { return NewRect(Point{X: math.NaN()}, Point{X: 1}, Point{Y: 1}) },
		"no wall direction": func() (Rect, error) { return newWallOpening(Point{}, PlanPoint{}, 1, 1) },
		"negative width":    func() (Rect, error) { return newWallOpening(Point{}, PlanPoint{X: 1}, -1, 1) },
		"negative height":   func() (Rect, error) { return newCentredWallOpening(Point{}, PlanPoint{X: 1}, 1, -1) },
		"endless depth":     func() (Rect, error) { return newRoofLight(Point{}, PlanPoint{X: 1}, 1, math.Inf(1)) },
	} {
		if _, err := make(); err == nil {
			t.Errorf("%s was accepted", name)
		}
	}
}

func TestDotOpening(t *testing.T) {
	r := must[Rect](t)(newWallOpening(Point{3, 4, 12}, PlanPoint{Y: 1}, 0, 0))
	if got := r.Distance(Point{}); got != 13 {
		t.Errorf("distance to an opening of no size: %g, want 13", got)
	}
}

// randomRect is any rectangle, sloped ones included.
func randomRect(rng *rand.Rand) Rect {
	u := Point{rng.NormFloat64(), rng.NormFloat64(), rng.NormFloat64()}
	v := u.cross(Point{rng.NormFloat64(), rng.NormFloat64(), rng.NormFloat64()})
	r, err := NewRect(randomPoint(rng, 4), u, v)
	if err != nil {
		panic(err)
	}
	return r
}

func randomPoint(rng *rand.Rand, size float64) Point {
	return Point{size * rng.NormFloat64(), size * rng.NormFloat64(), size * rng.NormFloat64()}
}

func TestDistanceProperties(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 2))
	mirrors := []func(Point) Point{
		func(p Point) Point { return Point{-p.X, p.Y, p.Z} },
		func(p Point) Point { return Point{p.X, -p.Y, p.Z} },
		func(p Point) Point { return Point{p.X, p.Y, -p.Z} },
		func(p Point) Point { return Point{p.Y, p.X, p.Z} },
	}
	for i := range 5000 {
		r, p := randomRect(rng), randomPoint(rng, 5)
		d := r.Distance(p)
		for k, mirror := range mirrors {
			m := Rect{mirror(r.corner), mirror(r.u), mirror(r.v)}
			if got := m.Distance(mirror(p)); !near(got, d, 1e-9) {
				t.Fatalf("try %d: mirror %d gives %g, not %g", i, k, got, d)
			}
		}
		for _, corner := range r.outline() {
			if d > p.Distance(corner)+1e-9 {
				t.Fatalf("try %d: %g is farther than the corner at %g", i, d, p.Distance(corner))
			}
		}
		if inside := r.at(rng.Float64(), rng.Float64()); r.Distance(inside) > 1e-9 {
			t.Fatalf("try %d: %g from a place of the rectangle itself", i, r.Distance(inside))
		} else if d > p.Distance(inside)+1e-9 {
			t.Fatalf("try %d: a place of the rectangle is nearer than the nearest", i)
		}
	}
}

func TestDistanceAbove(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 4))
	for i := range 300 {
		r, p := randomRect(rng), randomPoint(rng, 5)
		z := r.Bottom() + (r.Top()-r.Bottom())*rng.Float64()
		got, ok := r.DistanceAbove(p, z)
		if !ok {
			t.Fatalf("try %d: no part above a height within the opening", i)
		}
		least := math.Inf(1)
		const steps = 120
		for s := range steps + 1 {
			for u := range steps + 1 {
				if x := r.at(float64(s)/steps, float64(u)/steps); x.Z >= z {
					least = min(least, p.Distance(x))
				}
			}
		}
		if size := r.u.length() + r.v.length(); got > least+1e-9 || got < least-size/steps*1.5 {
			t.Fatalf("try %d: %g, by trying places %g", i, got, least)
		}
	}
	r := must[Rect](t)(newWallOpening(Point{3, 0, 0}, PlanPoint{X: 1}, 1, 2))
	if _, ok := r.DistanceAbove(Point{}, 2.1); ok {
		t.Error("a part above the top was found")
	}
	// EPA 402-R-93-078 14.2.8(3) does not say whether the whole opening or a part of
	// it counts. On an upright opening not wholly below the
	// waiver plane the two lie equally far away.
	p := Point{0, 0, 3}
	if part, ok := r.DistanceAbove(p, 1.5); !ok || part != r.Distance(p) {
		t.Errorf("upper part of an upright opening %g m, whole %g m", part, r.Distance(p))
	}
}
