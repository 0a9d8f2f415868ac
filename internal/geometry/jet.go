package geometry

import (
	"fmt"
	"math"
)

// jet is a discharge seen as a straight line from its open end. Make one with
// newJet.
type jet struct{ from, direction Point }

// newJet is the jet that leaves from along direction, which may have any length
// but 0: {0, 0, 1} is straight up.
func newJet(from, direction Point) (jet, error) {
	size := direction.length()
	switch {
	case !from.finite() || !finite(size):
		return jet{}, fmt.Errorf("jet: %w", errNotFinite)
	case size == 0:
		return jet{}, fmt.Errorf("jet: %w", errNoDirection)
	}
	return jet{from, direction.times(1 / size)}, nil
}

// Tilt is the angle between the jet and straight up, in degrees: 0 up, 90 level,
// 180 straight down. ANSI/AARST RMS-MF 2018 (12/20) 6.4.9 and 25 Pa. Code
// 240.308(b)(2) limit it.
func (j jet) Tilt() float64 {
	return degrees(math.Atan2(math.Hypot(j.direction.X, j.direction.Y), j.direction.Z))
}

// Hit is how far the jet goes along its line before it meets the rectangle, in
// metres, and whether it meets it at all. ANSI/AARST SGM-SF 2017 first printing
// 7.4.8 measures along the trajectory.
func (j jet) Hit(r Rect) (distance float64, hit bool) {
	out := r.corner.minus(j.from)
	normal := r.u.cross(r.v)
	size := max(r.u.length(), r.v.length(), out.length())
	if rate := normal.dot(j.direction); math.Abs(rate) > coincident*normal.length() {
		distance = normal.dot(out) / rate
		if distance < 0 {
			return 0, false
		}
		if x := j.from.plus(j.direction.times(distance)); x.Distance(r.Nearest(x)) > coincident*size {
			return 0, false
		}
		return distance, true
	}
	// The line runs in the plane of the rectangle or beside it (or the rectangle
	// is only a line or a dot): it meets the rim first, or starts inside.
	if r.Distance(j.from) <= coincident*size {
		return 0, true
	}
	distance = math.Inf(1)
	outline := r.outline()
	for i, a := range outline {
		if d, ok := j.meets(a, outline[(i+1)%len(outline)], coincident*size); ok {
			distance, hit = min(distance, d), true
		}
	}
	if !hit {
		return 0, false
	}
	return distance, true
}

// meets is how far along the jet the segment ab is met, within a slack in metres.
func (j jet) meets(a, b Point, slack float64) (float64, bool) {
	along, from := b.minus(a), a.minus(j.from)
	// The place of the segment nearest to the line of the jet.
	acrossSegment := along.minus(j.direction.times(along.dot(j.direction)))
	acrossStart := from.minus(j.direction.times(from.dot(j.direction)))
	square := acrossSegment.dot(acrossSegment)
	if square <= slack*slack {
		square = 0
	}
	t := clampShare(-acrossStart.dot(acrossSegment), square)
	x := from.plus(along.times(t))
	distance := x.dot(j.direction)
	if square == 0 {
		distance = min(distance, from.plus(along).dot(j.direction))
	}
	off := x.minus(j.direction.times(x.dot(j.direction))).length()
	return distance, distance >= 0 && off <= slack
}

// Angle is the least angle between the jet and the line from the open end to
// any place of the rectangle not farther away than reach (in metres), in
// degrees, and whether there is such a place. The open end touching the
// rectangle gives 0.
func (j jet) Angle(r Rect, reach float64) (angle float64, within bool) {
	nearest := r.Nearest(j.from).minus(j.from)
	if !(nearest.length() <= reach) {
		return 0, false
	}
	if nearest.length() == 0 {
		return 0, true
	}
	if d, hit := j.Hit(r); hit && d <= reach {
		return 0, true
	}
	// Away from the axis the angle has no least value inside the plane, so the
	// least one lies on the rim of the part within reach: on an edge, or where
	// the sphere of that radius cuts the plane.
	angle = j.off(nearest)
	outline := r.outline()
	for i, a := range outline {
		for _, x := range j.leastOnEdge(a.minus(j.from), outline[(i+1)%len(outline)].minus(j.from), reach) {
			angle = min(angle, j.off(x))
		}
	}
	if x, ok := j.leastOnSphere(r, reach); ok {
		angle = min(angle, j.off(x))
	}
	return angle, true
}

// Clear says whether a cone of the given half angle (in degrees) round the jet
// stays off the rectangle within reach (in metres). Touching is not clear.
// ANSI/AARST CC-1000 2018 9.1.5 treats the spread of an exhaust as such a cone.
func (j jet) Clear(r Rect, halfAngle, reach float64) bool {
	angle, within := j.Angle(r, reach)
	return !within || angle > halfAngle
}

// off is the angle in degrees between the jet and x, a place relative to the
// open end.
func (j jet) off(x Point) float64 {
	return degrees(math.Atan2(x.cross(j.direction).length(), x.dot(j.direction)))
}

func degrees(radians float64) float64 { return radians * 180 / math.Pi }

// leastOnEdge is the places, relative to the open end, at which the angle can be
// least on the part of the segment ab within reach: its ends and its one
// stationary place.
func (j jet) leastOnEdge(a, b Point, reach float64) []Point {
	along := b.minus(a)
	// |a + t along|^2 = c + 2 d t + e t^2; cosine = (g + t h)/sqrt(of that).
	c, d, e := a.dot(a), a.dot(along), along.dot(along)
	lo, hi := 0.0, 1.0
	if e > 0 && !math.IsInf(reach, 1) {
		root := d*d - e*(c-reach*reach)
		if root < 0 {
			return nil
		}
		lo, hi = max(lo, (-d-math.Sqrt(root))/e), min(hi, (-d+math.Sqrt(root))/e)
	} else if math.Sqrt(c) > reach {
		return nil
	}
	if lo > hi {
		return nil
	}
	places := []Point{a.plus(along.times(lo)), a.plus(along.times(hi))}
	g, h := a.dot(j.direction), along.dot(j.direction)
	if t := (g*d - h*c) / (h*d - g*e); t > lo && t < hi {
		places = append(places, a.plus(along.times(t)))
	}
	return places
}

// leastOnSphere is the place, relative to the open end, at which the circle cut
// from the plane of the rectangle by the sphere of radius reach comes nearest to
// the jet, and whether it lies on the rectangle.
func (j jet) leastOnSphere(r Rect, reach float64) (Point, bool) {
	normal := r.u.cross(r.v)
	area := normal.length()
	if area == 0 || math.IsInf(reach, 1) {
		return Point{}, false
	}
	normal = normal.times(1 / area)
	foot := normal.times(normal.dot(r.corner.minus(j.from)))
	inPlane := j.direction.minus(normal.times(normal.dot(j.direction)))
	radius := reach*reach - foot.dot(foot)
	if radius < 0 {
		return Point{}, false
	}
	if inPlane.length() == 0 { // every place of the circle is as good
		inPlane = r.u
	}
	x := foot.plus(inPlane.times(math.Sqrt(radius) / inPlane.length()))
	place := j.from.plus(x)
	return x, place.Distance(r.Nearest(place)) <= coincident*reach
}
