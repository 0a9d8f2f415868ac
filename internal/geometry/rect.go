package geometry

import (
	"errors"
	"fmt"
	"math"
)

// Rect is a flat closed rectangle in space: a window, door, intake or roof
// light. One or both edges may have no length, for an opening whose size is not
// known. Make one with NewRect, newWallOpening, newCentredWallOpening or
// newRoofLight.
type Rect struct{ corner, u, v Point }

var errNoDirection = errors.New("a direction without length")

// NewRect is the rectangle at corner with the edges u and v, in metres. It
// refuses edges that are not square to each other.
func NewRect(corner, u, v Point) (Rect, error) {
	if !corner.finite() || !u.finite() || !v.finite() {
		return Rect{}, fmt.Errorf("rectangle: %w", errNotFinite)
	}
	if math.Abs(u.dot(v)) > coincident*u.length()*v.length() {
		return Rect{}, errors.New("rectangle: the two edges are not perpendicular")
	}
	return Rect{corner, u, v}, nil
}

// newWallOpening is an upright opening whose sill has its middle at sill. The
// wall runs along the plan direction along, which may have any length but 0.
// Width and height are in metres.
func newWallOpening(sill Point, along PlanPoint, width, height float64) (Rect, error) {
	side, err := edge(along, "opening width", width)
	if err != nil {
		return Rect{}, err
	}
	if err := notNegative("opening height", height); err != nil {
		return Rect{}, err
	}
	return NewRect(sill.minus(side.times(0.5)), side, Point{Z: height})
}

// newCentredWallOpening is newWallOpening with the middle of the opening given
// in place of the middle of its sill.
func newCentredWallOpening(centre Point, along PlanPoint, width, height float64) (Rect, error) {
	centre.Z -= height / 2
	return newWallOpening(centre, along, width, height)
}

// newRoofLight is a level opening round centre: width along the plan direction
// along, depth square to it, in metres.
func newRoofLight(centre Point, along PlanPoint, width, depth float64) (Rect, error) {
	u, err := edge(along, "roof light width", width)
	if err != nil {
		return Rect{}, err
	}
	v, err := edge(PlanPoint{-along.Y, along.X}, "roof light depth", depth)
	if err != nil {
		return Rect{}, err
	}
	return NewRect(centre.minus(u.plus(v).times(0.5)), u, v)
}

// edge is a level vector of the given length.
func edge(along PlanPoint, what string, length float64) (Point, error) {
	if err := notNegative(what, length); err != nil {
		return Point{}, err
	}
	size := math.Hypot(along.X, along.Y)
	if size == 0 || !finite(size) {
		return Point{}, fmt.Errorf("%s: %w", what, errNoDirection)
	}
	return Point{X: along.X / size * length, Y: along.Y / size * length}, nil
}

// Nearest is the place of the rectangle nearest to p.
func (r Rect) Nearest(p Point) Point {
	from := p.minus(r.corner)
	return r.at(clampShare(from.dot(r.u), r.u.dot(r.u)), clampShare(from.dot(r.v), r.v.dot(r.v)))
}

// Distance is the straight line from p to the nearest place of the rectangle,
// in metres; 0 on the rectangle itself.
func (r Rect) Distance(p Point) float64 { return p.Distance(r.Nearest(p)) }

// DistanceAbove is the straight line from p to the nearest place of that part
// of the rectangle which is not below the height z, in metres, and whether
// there is such a part. On an upright opening it equals Distance as long as the
// part exists and p is not below z; on a sloped one it may be longer.
func (r Rect) DistanceAbove(p Point, z float64) (float64, bool) {
	outline := r.outline()
	part := make([]Point, 0, len(outline)+1)
	for i, a := range outline {
		b := outline[(i+1)%len(outline)]
		if a.Z >= z {
			part = append(part, a)
		}
		if (a.Z >= z) != (b.Z >= z) {
			part = append(part, a.plus(b.minus(a).times((z-a.Z)/(b.Z-a.Z))))
		}
	}
	if len(part) == 0 {
		return 0, false
	}
	// The nearest place of the whole serves if it lies in the part; if not, the
	// nearest of the part lies on its rim, because the part is convex.
	if nearest := r.Nearest(p); nearest.Z >= z {
		return p.Distance(nearest), true
	}
	least := math.Inf(1)
	for i, a := range part {
		along := part[(i+1)%len(part)].minus(a)
		t := clampShare(p.minus(a).dot(along), along.dot(along))
		least = min(least, p.Distance(a.plus(along.times(t))))
	}
	return least, true
}

// Top is the greatest height of the rectangle, in metres.
func (r Rect) Top() float64 { return r.corner.Z + max(r.u.Z, 0) + max(r.v.Z, 0) }

// Bottom is the least height of the rectangle, in metres.
func (r Rect) Bottom() float64 { return r.corner.Z + min(r.u.Z, 0) + min(r.v.Z, 0) }

// Centre is the middle of the rectangle.
func (r Rect) Centre() Point { return r.at(0.5, 0.5) }

func (r Rect) at(s, t float64) Point { return r.corner.plus(r.u.times(s)).plus(r.v.times(t)) }

// outline is the four corners in order round the rectangle.
func (r Rect) outline() [4]Point {
	return [4]Point{r.corner, r.at(1, 0), r.at(1, 1), r.at(0, 1)}
}

// upright or level rectangles let plan and height be treated apart.
func (r Rect) level() bool { return r.u.Z == 0 && r.v.Z == 0 }
func (r Rect) upright() bool {
	return r.u.Z == 0 && r.v.Plan() == PlanPoint{} || r.v.Z == 0 && r.u.Plan() == PlanPoint{}
}
