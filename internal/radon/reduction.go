package radon

import (
	"errors"
	"fmt"
	"math"
)

// Reduction compares a place before and after mitigation.
type Reduction struct {
	Percent float64 // of the level before; below 0 when radon rose
	U       float64 // percentage points, standard uncertainty of Percent
	Factor  float64 // before over after; 0 when after is 0, which has no factor
	FactorU float64 // standard uncertainty of Factor
	// AtLeast says that the result after was below detection, so that Percent
	// and Factor are lower bounds.
	AtLeast bool
}

// Reduce is the reduction from one result to another. The uncertainties of the
// two are taken as independent. The result before must be above 0 and not only
// an upper bound.
func Reduce(before, after Result) (Reduction, error) {
	if err := before.check(); err != nil {
		return Reduction{}, fmt.Errorf("before: %w", err)
	}
	if err := after.check(); err != nil {
		return Reduction{}, fmt.Errorf("after: %w", err)
	}
	if before.Value == 0 || before.BelowDetection {
		return Reduction{}, errors.New("before: no reduction from a level of 0 or below detection")
	}
	left := after.Value / before.Value
	u := math.Hypot(left*before.U, after.U) / before.Value // of left
	r := Reduction{Percent: 100 * (before.Value - after.Value) / before.Value, U: 100 * u, AtLeast: after.BelowDetection}
	if left > 0 {
		r.Factor = 1 / left
		r.FactorU = r.Factor * u / left
	}
	return r, nil
}
