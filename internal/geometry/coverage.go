package geometry

import (
	"cmp"
	"errors"
	"fmt"
	"math"
	"slices"
)

// errNoPoints says that nothing was recorded on a slab: its coverage is not
// known, which is not the same as none.
var errNoPoints = errors.New("no point given")

// ShareWithin is the share of the polygon, 0 to 1, that lies within radius (in
// metres) of at least one of the points. Distances are straight in plan, also
// across a notch of the outline; what a footing parts belongs into polygons of
// its own. The result is exact but for rounding: the outline of the covered
// part is made of arcs and pieces of sides, and its area follows from them.
// Points may lie outside. No point gives errNoPoints.
func (p Polygon) ShareWithin(points []PlanPoint, radius float64) (float64, error) {
	if len(points) == 0 {
		return 0, fmt.Errorf("coverage: %w", errNoPoints)
	}
	if err := notNegative("coverage radius", radius); err != nil {
		return 0, err
	}
	// Areas are summed about the first corner, to keep digits.
	origin := p.corners[0]
	local := Polygon{corners: make([]PlanPoint, len(p.corners)), size: p.size}
	for i, c := range p.corners {
		local.corners[i] = c.minus(origin)
	}
	var centres []PlanPoint
	for i, c := range points {
		if !c.finite() {
			return 0, fmt.Errorf("coverage: point %d: %w", i, errNotFinite)
		}
		c = c.minus(origin)
		if !slices.ContainsFunc(centres, func(o PlanPoint) bool { return o.Distance(c) <= coincident*p.size }) {
			centres = append(centres, c)
		}
	}
	d := discs{centres, radius, coincident * 1e-3 * max(p.size, radius)}
	for _, c := range centres {
		d.slack = max(d.slack, coincident*1e-3*math.Hypot(c.X, c.Y))
	}
	covered := 0.0
	for i, a := range local.corners {
		b := local.after(i)
		covered += a.cross(b) * d.shareOf(a, b)
	}
	for i := range centres {
		covered += d.arcs(local, i)
	}
	return min(max(covered/2/p.Area(), 0), 1), nil
}

// discs are equal discs about different centres.
type discs struct {
	centres []PlanPoint
	radius  float64 // m
	// slack is a depth, in metres, by which things that only touch may seem to
	// overlap. Without it a mere contact could be cut on one side of the
	// outline and not on the other, which would leave the outline open.
	slack float64
}

// chord is where circle i cuts the line ab: at the shares foot-half and
// foot+half of the way from a to b. With half 0 it only touches or stays off.
func (d discs) chord(i int, a, b PlanPoint) (foot, half float64) {
	c, along := d.centres[i], b.minus(a)
	square := along.dot(along)
	foot = c.minus(a).dot(along) / square
	if off := c.Distance(a.toward(b, foot)); d.radius-off > d.slack {
		half = math.Sqrt((d.radius - off) * (d.radius + off) / square)
	}
	return foot, half
}

// shareOf is the share of the segment ab that lies in at least one disc. The
// line integral over a part of a segment goes with its length, so the share is
// all that is needed.
func (d discs) shareOf(a, b PlanPoint) float64 {
	type stretch struct{ from, to float64 }
	var inside []stretch
	for i := range d.centres {
		foot, half := d.chord(i, a, b)
		if from, to := max(foot-half, 0), min(foot+half, 1); from < to {
			inside = append(inside, stretch{from, to})
		}
	}
	slices.SortFunc(inside, func(s, t stretch) int { return cmp.Compare(s.from, t.from) })
	share, end := 0.0, 0.0
	for _, s := range inside {
		if s.to > end {
			share += s.to - max(s.from, end)
			end = s.to
		}
	}
	return share
}

// arcs is the line integral (twice the area) along those arcs of circle i which
// lie inside the polygon and outside all other discs.
func (d discs) arcs(p Polygon, i int) float64 {
	c, r := d.centres[i], d.radius
	if r == 0 {
		return 0
	}
	// A cut too many does no harm. Cutting at mere contacts too keeps the middle
	// of an arc from falling on the very line it is tested against.
	cuts := []float64{0, 2 * math.Pi}
	for k, a := range p.corners {
		b := p.after(k)
		foot, half := d.chord(i, a, b)
		for _, t := range [2]float64{foot - half, foot + half} {
			if t >= -coincident && t <= 1+coincident {
				cuts = append(cuts, bearing(a.toward(b, t).minus(c)))
			}
		}
	}
	for k, o := range d.centres {
		if k == i {
			continue
		}
		toward := bearing(o.minus(c))
		cuts = append(cuts, toward)
		if apart := c.Distance(o); 2*r-apart > d.slack {
			half := math.Acos(apart / 2 / r)
			cuts = append(cuts, turn(toward-half), turn(toward+half))
		}
	}
	slices.Sort(cuts)
	sum := 0.0
	for k := 1; k < len(cuts); k++ {
		from, to := cuts[k-1], cuts[k]
		if from == to {
			continue
		}
		sin, cos := math.Sincos((from + to) / 2)
		if middle := (PlanPoint{c.X + r*cos, c.Y + r*sin}); !p.encloses(middle) || d.inOther(middle, i) {
			continue
		}
		sin0, cos0 := math.Sincos(from)
		sin1, cos1 := math.Sincos(to)
		sum += r*r*(to-from) + c.X*r*(sin1-sin0) - c.Y*r*(cos1-cos0)
	}
	return sum
}

// inOther says whether x lies in a disc other than disc i.
func (d discs) inOther(x PlanPoint, i int) bool {
	for k, o := range d.centres {
		if k != i && x.Distance(o) < d.radius {
			return true
		}
	}
	return false
}

func bearing(p PlanPoint) float64 { return turn(math.Atan2(p.Y, p.X)) }

// turn brings an angle into one turn from 0.
func turn(angle float64) float64 {
	if angle = math.Mod(angle, 2*math.Pi); angle < 0 {
		angle += 2 * math.Pi
	}
	return angle
}
