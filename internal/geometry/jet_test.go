package geometry

import (
	"math"
	"math/rand/v2"
	"testing"
)

func TestTilt(t *testing.T) {
	for _, c := range []struct {
		direction Point
		want      float64 // degrees
	}{
		{Point{0, 0, 2}, 0},
		{Point{1, 0, 1}, 45},
		{Point{0, -3, 0}, 90},
		{Point{0, 0, -1}, 180},
		{Point{math.Sqrt(3), 0, 1}, 60}, // worked case 11: 60 degrees off vertical
	} {
		if got := must[jet](t)(newJet(Point{}, c.direction)).Tilt(); !near(got, c.want, 1e-12) {
			t.Errorf("%v: tilt %g, want %g degrees", c.direction, got, c.want)
		}
	}
	if _, err := newJet(Point{}, Point{}); err == nil {
		t.Error("a jet without direction was accepted")
	}
}

func TestHit(t *testing.T) {
	up := must[jet](t)(newJet(Point{}, Point{Z: 1}))
	aside := must[jet](t)(newJet(Point{}, Point{X: 1}))
	soffit := must[Rect](t)(newRoofLight(Point{0, 0, 5}, PlanPoint{X: 1}, 2, 2))
	wall := must[Rect](t)(newWallOpening(Point{6, 0, -1}, PlanPoint{Y: 1}, 2, 2))
	alongside := must[Rect](t)(newWallOpening(Point{6, 0, -1}, PlanPoint{X: 1}, 2, 2))
	for _, c := range []struct {
		name string
		jet  jet
		rect Rect
		want float64 // m; below 0 for a miss
	}{
		{"up at a soffit", up, soffit, 5},
		{"up past a window", up, wall, -1},
		{"level at a window", aside, wall, 6},
		{"level along a wall", aside, alongside, 5},
		{"level under a soffit", aside, soffit, -1},
		{"away from it", must[jet](t)(newJet(Point{}, Point{X: -1})), wall, -1},
		{"starting on it", must[jet](t)(newJet(Point{6, 0, 0}, Point{Y: 1})), wall, 0},
		{"at a dot", aside, must[Rect](t)(newRoofLight(Point{4, 0, 0}, PlanPoint{X: 1}, 0, 0)), 4},
	} {
		got, hit := c.jet.Hit(c.rect)
		if hit != (c.want >= 0) || hit && !near(got, c.want, 1e-9) {
			t.Errorf("%s: %g m, hit %t; want %g m", c.name, got, hit, c.want)
		}
	}
}

func TestClear(t *testing.T) {
	up := must[jet](t)(newJet(Point{}, Point{Z: 1}))
	window := must[Rect](t)(newWallOpening(Point{3, 0, 3}, PlanPoint{Y: 1}, 2, 1)) // top at 4 m, 3 m aside
	least := degrees(math.Atan2(3, 4))
	touching, ok := up.Angle(window, math.Inf(1))
	if got := touching; !ok || !near(got, least, 1e-9) {
		t.Errorf("angle to the top of the window %g, want %g degrees", got, least)
	}
	for _, c := range []struct {
		name             string
		halfAngle, reach float64
		want             bool
	}{
		{"45 degree cone meets it", 45, 10, false},
		{"11 degree cone does not", 11, 10, true},
		{"out of reach", 45, 4, true},
		{"only its sill in reach, at 45 degrees", 44, math.Sqrt(18), true},
		{"touching", touching, 10, false},
	} {
		if got := up.Clear(window, c.halfAngle, c.reach); got != c.want {
			t.Errorf("%s: clear %t, want %t", c.name, got, c.want)
		}
	}
	// A jet straight away from the middle of a plate: the sphere of reach cuts a
	// circle from it, all of whose places lie equally far off the jet.
	plate := must[Rect](t)(newRoofLight(Point{0, 0, -3}, PlanPoint{X: 1}, 20, 20))
	if got, ok := up.Angle(plate, 5); !ok || !near(got, 180-degrees(math.Atan2(4, 3)), 1e-9) {
		t.Errorf("angle to the plate behind %g, want %g degrees", got, 180-degrees(math.Atan2(4, 3)))
	}
}

func TestAngleByTrying(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 8))
	for i := range 400 {
		r := randomRect(rng)
		j := must[jet](t)(newJet(randomPoint(rng, 3), randomPoint(rng, 1)))
		reach := 1 + 8*rng.Float64()
		least, any := math.Inf(1), false
		const steps = 100
		for s := range steps + 1 {
			for u := range steps + 1 {
				x := r.at(float64(s)/steps, float64(u)/steps).minus(j.from)
				if x.length() <= reach {
					least, any = min(least, j.off(x)), true
				}
			}
		}
		got, ok := j.Angle(r, reach)
		if any && !ok {
			t.Fatalf("try %d: places within reach, none reported", i)
		}
		if !any {
			continue // a sliver within reach may fall between the places tried
		}
		slack := degrees(3 * (r.u.length() + r.v.length()) / steps / max(r.Distance(j.from), 0.01))
		if got > least+1e-9 || got < least-slack-1 {
			t.Fatalf("try %d: %g degrees, by trying places %g (slack %g)", i, got, least, slack)
		}
	}
}
