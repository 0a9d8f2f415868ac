package geometry

import (
	"fmt"
	"slices"
)

// Hole is a test hole through a slab and whether what was read there passes.
type Hole struct {
	At     PlanPoint
	Passes bool
}

// Gap is the place of a slab that is farthest from any test hole.
type Gap struct {
	At       PlanPoint
	Distance float64 // to the nearest hole, in metres
	Nearest  int     // index of that hole
}

// Farthest is the place of the polygon farthest from its nearest test hole, by
// straight lines in plan. It is exact: such a place is a corner of the part of
// the polygon nearest to one hole. No hole gives errNoPoints; a hole outside the
// polygon is an error, because it says nothing about this slab.
func (p Polygon) Farthest(holes []PlanPoint) (Gap, error) {
	if err := p.holds(holes); err != nil {
		return Gap{}, err
	}
	worst := Gap{Distance: -1}
	var room cells
	for i, h := range holes {
		for _, corner := range room.cell(p, holes, i) {
			// A part cut in two keeps a bridge of no width between its halves; a
			// later cut may leave a corner on it that is no place of the slab.
			if d := h.Distance(corner); d > worst.Distance*(1+1e-12) && p.Contains(corner) {
				worst = Gap{corner, d, i}
			}
		}
	}
	return worst, nil
}

// PassingShare is the share of the polygon, 0 to 1, that lies nearest to a hole
// that passes. Of several holes at one place all must pass. Errors are those of
// Farthest.
func (p Polygon) PassingShare(holes []Hole) (float64, error) {
	var places []PlanPoint
	var passes []bool
	for _, h := range holes {
		same := slices.IndexFunc(places, func(o PlanPoint) bool { return o.Distance(h.At) <= coincident*p.size })
		if same >= 0 {
			passes[same] = passes[same] && h.Passes
			continue
		}
		places, passes = append(places, h.At), append(passes, h.Passes)
	}
	if err := p.holds(places); err != nil {
		return 0, err
	}
	passing := 0.0
	var room cells
	for i := range places {
		if passes[i] {
			passing += signedArea(room.cell(p, places, i))
		}
	}
	return min(passing/p.Area(), 1), nil
}

// holds refuses an empty list and holes that are not in the polygon.
func (p Polygon) holds(holes []PlanPoint) error {
	if len(holes) == 0 {
		return fmt.Errorf("test holes: %w", errNoPoints)
	}
	for i, h := range holes {
		if !h.finite() {
			return fmt.Errorf("test hole %d: %w", i, errNotFinite)
		}
		if !p.Contains(h) {
			return fmt.Errorf("test hole %d lies outside the slab", i)
		}
	}
	return nil
}

// cells is room for a part that is cut and for what is left of it.
type cells [2][]PlanPoint

// cell is the part of the polygon that lies nearest to hole i: the polygon cut
// at the line halfway to every other hole. The next call overwrites it.
func (room *cells) cell(p Polygon, holes []PlanPoint, i int) []PlanPoint {
	part := p.corners
	for k, o := range holes {
		toward := o.minus(holes[i])
		if k == i || toward.dot(toward) == 0 {
			continue
		}
		halfway := holes[i].toward(o, 0.5)
		room[0], room[1] = room[1], room[0]
		room[0] = cut(room[0], part, func(x PlanPoint) float64 { return x.minus(halfway).dot(toward) })
		part = room[0]
		if len(part) == 0 {
			break
		}
	}
	return part
}

// cut keeps what lies where beyond is not positive; beyond must be linear. It
// writes over kept.
func cut(kept, corners []PlanPoint, beyond func(PlanPoint) float64) []PlanPoint {
	kept = slices.Grow(kept[:0], len(corners)+2)
	for i, a := range corners {
		b := corners[(i+1)%len(corners)]
		da, db := beyond(a), beyond(b)
		if da <= 0 {
			kept = append(kept, a)
		}
		if (da <= 0) != (db <= 0) {
			kept = append(kept, a.toward(b, da/(da-db)))
		}
	}
	return kept
}
