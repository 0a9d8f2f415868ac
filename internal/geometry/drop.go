package geometry

import (
	"errors"
	"fmt"
	"math"
)

// Part names the place of an opening from which its depth below a discharge is
// taken. Published texts differ: 25 Pa. Code 240.308(b)(4) says the top, EPA
// 402-R-93-078 14.2.8(3) does not say.
type Part string

// The parts of an opening.
const (
	PartTop     Part = "top"
	PartCentre  Part = "centre"
	PartBottom  Part = "bottom"
	PartNearest Part = "nearest" // the place nearest to the discharge
)

// Drop is how far the named part of an opening lies below a discharge, in
// metres; negative when it lies above. An unknown part is an error.
func Drop(discharge Point, opening Rect, part Part) (float64, error) {
	switch part {
	case PartTop:
		return discharge.Z - opening.Top(), nil
	case PartCentre:
		return discharge.Z - opening.Centre().Z, nil
	case PartBottom:
		return discharge.Z - opening.Bottom(), nil
	case PartNearest:
		return discharge.Z - opening.Nearest(discharge).Z, nil
	}
	return 0, fmt.Errorf("drop to an opening: no part of it is called %q", part)
}

// heightAboveNearest is how far p stands above the ground nearest to it in plan,
// in metres, and which of the given ground points that is: on a slope the
// height is not the greatest one that can be found (25 Pa. Code 240.308(b)(3)).
// Of points equally near the highest counts. No ground point is an error.
func heightAboveNearest(p Point, ground []Point) (height float64, index int, err error) {
	if len(ground) == 0 {
		return 0, 0, errors.New("height above ground: no ground point")
	}
	least := math.Inf(1)
	for i, g := range ground {
		if !g.finite() {
			return 0, 0, fmt.Errorf("height above ground: point %d: %w", i, errNotFinite)
		}
		away := p.Plan().Distance(g.Plan())
		if away < least || away == least && g.Z > ground[index].Z {
			least, index = away, i
		}
	}
	return p.Z - ground[index].Z, index, nil
}
