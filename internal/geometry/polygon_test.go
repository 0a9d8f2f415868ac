package geometry

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"
)

// An L of 40 by 36 with a 20 by 12 notch.
var ell = []PlanPoint{{0, 0}, {40, 0}, {40, 24}, {20, 24}, {20, 36}, {0, 36}}

func TestPolygonRefusals(t *testing.T) {
	for _, c := range []struct {
		name      string
		corners   []PlanPoint
		notSimple bool
	}{
		{"nothing", nil, false},
		{"two corners", []PlanPoint{{0, 0}, {1, 0}, {0, 0}}, false},
		{"no number", []PlanPoint{{0, 0}, {1, 0}, {math.NaN(), 1}}, false},
		{"bow tie", []PlanPoint{{0, 0}, {2, 2}, {2, 0}, {0, 2}}, true},
		{"five-pointed star", []PlanPoint{{0, 3}, {2, -3}, {-3, 1}, {3, 1}, {-2, -3}}, true},
		{"corner on another side", []PlanPoint{{0, 0}, {4, 0}, {4, 4}, {2, 0}, {0, 4}}, true},
		{"spike", []PlanPoint{{0, 0}, {4, 0}, {2, 0}, {2, 3}}, true},
		{"there and back", []PlanPoint{{0, 0}, {2, 0}, {4, 0}, {1, 0}}, true},
		{"corner used twice", []PlanPoint{{0, 0}, {2, 2}, {4, 0}, {4, 4}, {2, 2}, {0, 4}}, true},
	} {
		_, err := NewPolygon(c.corners)
		if err == nil || errors.Is(err, errNotSimple) != c.notSimple {
			t.Errorf("%s: %v; outline not simple: %t", c.name, err, c.notSimple)
		}
	}
}

// However a plan lies, rounding must not part what touches.
func TestTouchingAtAnyTurn(t *testing.T) {
	rng := rand.New(rand.NewPCG(25, 26))
	for range 1000 {
		sin, cos := math.Sincos(2 * math.Pi * rng.Float64())
		var corners []PlanPoint
		for _, c := range []PlanPoint{{0, 0}, {4, 0}, {4, 4}, {2, 0}, {0, 4}} {
			corners = append(corners, PlanPoint{foot * (cos*c.X - sin*c.Y), foot * (sin*c.X + cos*c.Y)})
		}
		if _, err := NewPolygon(corners); !errors.Is(err, errNotSimple) {
			t.Fatalf("%v: %v", corners, err)
		}
	}
}

func TestPolygonArea(t *testing.T) {
	backward := make([]PlanPoint, 0, 7)
	for i := range ell {
		backward = append(backward, ell[len(ell)-1-i])
	}
	far := make([]PlanPoint, 0, 6)
	for _, c := range ell {
		far = append(far, PlanPoint{c.X + 4e6, c.Y - 5e5})
	}
	for name, corners := range map[string][]PlanPoint{
		"as given":         ell,
		"other way round":  backward,
		"first repeated":   append(backward[:6:6], backward[0]),
		"far from origin":  far,
		"corner in a line": {{0, 0}, {20, 0}, {40, 0}, {40, 24}, {20, 24}, {20, 36}, {0, 36}},
		"a corner doubled": {{0, 0}, {0, 0}, {40, 0}, {40, 24}, {20, 24}, {20, 36}, {0, 36}},
	} {
		if got := must[Polygon](t)(NewPolygon(corners)).Area(); got != 1200 {
			t.Errorf("%s: area %g, want 1200", name, got)
		}
	}
}

func TestContainsAndEdgeDistance(t *testing.T) {
	slab := must[Polygon](t)(NewPolygon(ell))
	for _, c := range []struct {
		at     PlanPoint
		inside bool
		edge   float64
	}{
		{PlanPoint{10, 10}, true, 10},
		{PlanPoint{30, 30}, false, 6},
		{PlanPoint{17, 28}, true, 3},
		{PlanPoint{20, 24}, true, 0},
		{PlanPoint{0, 0}, true, 0},
		{PlanPoint{33, 24}, true, 0},
		{PlanPoint{43, 40}, false, math.Hypot(3, 16)},
		{PlanPoint{-3, -4}, false, 5},
		{PlanPoint{-1, 24}, false, 1}, // level with a corner
	} {
		if got := slab.Contains(c.at); got != c.inside {
			t.Errorf("%v inside: %t, want %t", c.at, got, c.inside)
		}
		if got := slab.EdgeDistance(c.at); !near(got, c.edge, 1e-12) {
			t.Errorf("%v: %g from the nearest side, want %g", c.at, got, c.edge)
		}
	}
}

// randomSlab is a polygon of 5 to 12 corners seen from one middle: never
// crossing itself, often with notches.
func randomSlab(t testing.TB, rng *rand.Rand) Polygon {
	n := 5 + rng.IntN(8)
	corners := make([]PlanPoint, n)
	for i := range corners {
		sin, cos := math.Sincos(2 * math.Pi * (float64(i) + 0.8*rng.Float64()) / float64(n))
		r := 3 + 9*rng.Float64()
		corners[i] = PlanPoint{20 + r*cos, -7 + r*sin}
	}
	return must[Polygon](t)(NewPolygon(corners))
}

func randomHoles(slab Polygon, n int, rng *rand.Rand) []PlanPoint {
	var holes []PlanPoint
	for len(holes) < n {
		if h := (PlanPoint{20 + 24*(rng.Float64()-0.5), -7 + 24*(rng.Float64()-0.5)}); slab.Contains(h) {
			holes = append(holes, h)
		}
	}
	return holes
}

// tried calls f for the places of a square grid that lie in the slab and returns
// how many there are.
func tried(slab Polygon, step float64, f func(PlanPoint)) int {
	n := 0
	for x := 7 + step/2; x < 33; x += step {
		for y := -20 + step/2; y < 6; y += step {
			if p := (PlanPoint{x, y}); slab.encloses(p) {
				f(p)
				n++
			}
		}
	}
	return n
}
