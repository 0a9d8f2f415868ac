package geometry

import (
	"errors"
	"fmt"
	"math"
)

// Polygon is the outline of one slab or one floor in plan. Make one with
// NewPolygon.
type Polygon struct {
	corners []PlanPoint // left-handed way round: area positive
	size    float64     // greatest extent, in metres
}

// errNotSimple says that an outline crosses or touches itself, so that inside
// and outside are not told apart.
var errNotSimple = errors.New("the outline crosses or touches itself")

// NewPolygon is the polygon with the given corners, in metres, either way
// round; the first corner may be repeated at the end. Fewer than three corners,
// no area, and an outline that crosses or touches itself are errors, the last
// one wrapping errNotSimple.
func NewPolygon(corners []PlanPoint) (Polygon, error) {
	kept := make([]PlanPoint, 0, len(corners))
	for i, c := range corners {
		if !c.finite() {
			return Polygon{}, fmt.Errorf("outline corner %d: %w", i, errNotFinite)
		}
		if len(kept) == 0 || kept[len(kept)-1] != c {
			kept = append(kept, c)
		}
	}
	for len(kept) > 1 && kept[0] == kept[len(kept)-1] {
		kept = kept[:len(kept)-1]
	}
	if len(kept) < 3 {
		return Polygon{}, fmt.Errorf("outline: %d different corners, at least 3 are needed", len(kept))
	}
	if i, j, ok := firstCrossing(kept); ok {
		return Polygon{}, fmt.Errorf("outline: side from corner %d and side from corner %d: %w", i, j, errNotSimple)
	}
	p := Polygon{corners: kept, size: extent(kept)}
	area := signedArea(kept)
	if math.Abs(area) <= coincident*p.size*p.size {
		return Polygon{}, errors.New("outline: it encloses no area")
	}
	if area < 0 {
		for i, j := 0, len(kept)-1; i < j; i, j = i+1, j-1 {
			kept[i], kept[j] = kept[j], kept[i]
		}
	}
	return p, nil
}

// Area is the enclosed area in square metres.
func (p Polygon) Area() float64 { return signedArea(p.corners) }

// EdgeDistance is the distance in plan from a place, inside or outside, to the
// nearest side of the polygon, in metres.
func (p Polygon) EdgeDistance(x PlanPoint) float64 {
	least := math.Inf(1)
	for i, a := range p.corners {
		least = min(least, segmentDistance(x, a, p.after(i)))
	}
	return least
}

// Contains says whether a place lies inside the polygon or on its outline.
func (p Polygon) Contains(x PlanPoint) bool {
	return p.EdgeDistance(x) <= coincident*p.size || p.encloses(x)
}

// encloses counts the sides crossed by a ray; unsteady on the outline itself.
func (p Polygon) encloses(x PlanPoint) bool {
	inside := false
	for i, a := range p.corners {
		b := p.after(i)
		if (a.Y > x.Y) != (b.Y > x.Y) && x.X < a.X+(x.Y-a.Y)/(b.Y-a.Y)*(b.X-a.X) {
			inside = !inside
		}
	}
	return inside
}

func (p Polygon) after(i int) PlanPoint { return p.corners[(i+1)%len(p.corners)] }

// signedArea is the shoelace sum, taken about the first corner so that a plan
// far from its origin loses no digits.
func signedArea(corners []PlanPoint) float64 {
	twice := 0.0
	for i := 1; i+1 < len(corners); i++ {
		twice += corners[i].minus(corners[0]).cross(corners[i+1].minus(corners[0]))
	}
	return twice / 2
}

func extent(corners []PlanPoint) float64 {
	lo, hi := corners[0], corners[0]
	for _, c := range corners {
		lo = PlanPoint{min(lo.X, c.X), min(lo.Y, c.Y)}
		hi = PlanPoint{max(hi.X, c.X), max(hi.Y, c.Y)}
	}
	return max(hi.X-lo.X, hi.Y-lo.Y)
}

// firstCrossing finds two sides, not next to each other, that have a place in
// common. Where an outline folds back on the side before, one of the folded sides
// also meets the side after or before the two.
func firstCrossing(corners []PlanPoint) (i, j int, found bool) {
	n := len(corners)
	for i = range n {
		a, b := corners[i], corners[(i+1)%n]
		for j = i + 2; j < n; j++ {
			if (j+1)%n != i && meet(a, b, corners[j], corners[(j+1)%n]) {
				return i, j, true
			}
		}
	}
	return 0, 0, false
}

// meet says whether the segments ab and cd have a place in common.
func meet(a, b, c, d PlanPoint) bool {
	c1, c2, a1, a2 := side(a, b, c), side(a, b, d), side(c, d, a), side(c, d, b)
	if c1*c2 < 0 && a1*a2 < 0 {
		return true
	}
	return c1 == 0 && onSegment(a, b, c) || c2 == 0 && onSegment(a, b, d) ||
		a1 == 0 && onSegment(c, d, a) || a2 == 0 && onSegment(c, d, b)
}

// side is 1 when c lies left of the line from a to b, -1 right, 0 on it within
// rounding.
func side(a, b, c PlanPoint) int {
	ab, ac := b.minus(a), c.minus(a)
	turn := ab.cross(ac)
	switch slack := 1e-12 * math.Hypot(ab.X, ab.Y) * math.Hypot(ac.X, ac.Y); {
	case turn > slack:
		return 1
	case turn < -slack:
		return -1
	}
	return 0
}

// onSegment says whether c, known to lie on the line ab, lies between a and b.
func onSegment(a, b, c PlanPoint) bool {
	return c.minus(a).dot(c.minus(b)) <= 0
}
