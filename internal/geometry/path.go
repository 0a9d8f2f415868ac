package geometry

import (
	"errors"
	"fmt"
	"math"
)

// pathRound is the length of a string stretched from p round upright convex
// corners of a building, in the order given, to the nearest place of an opening
// behind the last of them, in metres. The walls are unfolded into one plane, so
// that height is gained evenly along the way. Without a corner it is the
// straight line. EPA 402-R-93-078 14.2.8 and 25 Pa. Code 240.308(b)(4) measure
// round solid obstacles.
func pathRound(p Point, corners []PlanPoint, opening Rect) float64 {
	if len(corners) == 0 {
		return opening.Distance(p)
	}
	before, here := 0.0, p.Plan()
	for _, c := range corners {
		before += here.Distance(c)
		here = c
	}
	length := func(x Point) float64 { return math.Hypot(before+here.Distance(x.Plan()), p.Z-x.Z) }
	// Seen from the last corner at the height of p, the nearest place of an
	// upright or a level rectangle is nearest both in plan and in height.
	if opening.upright() || opening.level() {
		return length(opening.Nearest(Point{here.X, here.Y, p.Z}))
	}
	return leastOn(func(s float64) float64 {
		return leastOn(func(t float64) float64 { return length(opening.at(s, t)) })
	})
}

// leastOn is the least value of a convex function between 0 and 1, by golden
// section.
func leastOn(f func(float64) float64) float64 {
	lo, hi := 0.0, 1.0
	a, b := hi-(hi-lo)/math.Phi, lo+(hi-lo)/math.Phi
	fa, fb := f(a), f(b)
	least := min(f(lo), f(hi), fa, fb)
	for range 75 {
		if fa <= fb {
			hi, b, fb = b, a, fa
			a = hi - (hi-lo)/math.Phi
			fa = f(a)
		} else {
			lo, a, fa = a, b, fb
			b = lo + (hi-lo)/math.Phi
			fb = f(b)
		}
		least = min(least, fa, fb)
	}
	return least
}

// SumLegs is the length of a way round obstacles recorded as straight legs, in
// metres. No leg, or a leg below zero, is an error.
func SumLegs(legs []float64) (float64, error) {
	if len(legs) == 0 {
		return 0, errors.New("path: no leg recorded")
	}
	sum := 0.0
	for i, leg := range legs {
		if err := notNegative("length", leg); err != nil {
			return 0, fmt.Errorf("leg %d of the path: %w", i, err)
		}
		sum += leg
	}
	return sum, nil
}
