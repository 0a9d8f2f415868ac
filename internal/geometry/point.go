package geometry

import (
	"errors"
	"fmt"
	"math"
)

// coincident is the share of the size of a thing below which two of its places
// count as one: far above rounding noise, far below a tape measure.
const coincident = 1e-9

// Point is a place in space, in metres, Z up.
type Point struct{ X, Y, Z float64 }

// PlanPoint is a place seen from above, in metres.
type PlanPoint struct{ X, Y float64 }

// Plan drops the height.
func (p Point) Plan() PlanPoint { return PlanPoint{p.X, p.Y} }

// Distance is the straight line between two points, in metres.
func (p Point) Distance(q Point) float64 { return p.minus(q).length() }

// Distance is the straight line between two places in plan, in metres.
func (p PlanPoint) Distance(q PlanPoint) float64 { return math.Hypot(p.X-q.X, p.Y-q.Y) }

func (p Point) plus(q Point) Point              { return Point{p.X + q.X, p.Y + q.Y, p.Z + q.Z} }
func (p Point) minus(q Point) Point             { return Point{p.X - q.X, p.Y - q.Y, p.Z - q.Z} }
func (p Point) times(k float64) Point           { return Point{k * p.X, k * p.Y, k * p.Z} }
func (p Point) dot(q Point) float64             { return p.X*q.X + p.Y*q.Y + p.Z*q.Z }
func (p Point) length() float64                 { return math.Hypot(math.Hypot(p.X, p.Y), p.Z) }
func (p Point) finite() bool                    { return finite(p.X, p.Y, p.Z) }
func (p PlanPoint) finite() bool                { return finite(p.X, p.Y) }
func (p PlanPoint) minus(q PlanPoint) PlanPoint { return PlanPoint{p.X - q.X, p.Y - q.Y} }

func (p Point) cross(q Point) Point {
	return Point{p.Y*q.Z - p.Z*q.Y, p.Z*q.X - p.X*q.Z, p.X*q.Y - p.Y*q.X}
}

// cross is twice the signed area of the triangle at the origin, positive when q
// lies to the left of p.
func (p PlanPoint) cross(q PlanPoint) float64 { return p.X*q.Y - p.Y*q.X }

func (p PlanPoint) dot(q PlanPoint) float64 { return p.X*q.X + p.Y*q.Y }

// toward is the place a share t of the way from p to q.
func (p PlanPoint) toward(q PlanPoint, t float64) PlanPoint {
	return PlanPoint{p.X + t*(q.X-p.X), p.Y + t*(q.Y-p.Y)}
}

// segmentDistance is the distance from p to the nearest place of the segment ab.
func segmentDistance(p, a, b PlanPoint) float64 {
	along := b.minus(a)
	return p.Distance(a.toward(b, clampShare(p.minus(a).dot(along), along.dot(along))))
}

// clampShare is part/whole held within 0 and 1; 0 when there is no whole.
func clampShare(part, whole float64) float64 {
	if whole == 0 {
		return 0
	}
	return min(max(part/whole, 0), 1)
}

func finite(values ...float64) bool {
	for _, v := range values {
		if math.IsNaN(v) || math.IsInf(v, 0) {
			return false
		}
	}
	return true
}

var errNotFinite = errors.New("a coordinate or figure is not a finite number")

// notNegative refuses lengths and the like that cannot be below zero.
func notNegative(what string, value float64) error {
	if !finite(value) {
		return fmt.Errorf("%s: %w", what, errNotFinite)
	}
	if value < 0 {
		return fmt.Errorf("%s is negative: %g", what, value)
	}
	return nil
}
