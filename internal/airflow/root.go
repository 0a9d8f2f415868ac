package airflow

import "math"

// crossingTolerance is where the last step, over the larger end of the bracket,
// counts as the end. The error left is about its square.
const crossingTolerance = 1e-9

// crossing finds where a falling function is zero between lo, where it is not
// below zero, and hi, where it is not above: Newton's steps, and halving
// whenever a step would leave the bracket or shrinks too slowly.
func crossing(lo, hi float64, f func(x float64) (value, slope float64, err error)) (float64, error) {
	x := lo + (hi-lo)/2
	previous := hi - lo // length of the step before
	tolerance := crossingTolerance * max(math.Abs(lo), math.Abs(hi))
	for range maxRounds {
		value, slope, err := f(x)
		switch {
		case err != nil:
			return 0, err
		case math.IsNaN(value):
			return 0, ErrNoConvergence
		case value == 0:
			return x, nil
		case value > 0:
			lo = x
		default:
			hi = x
		}
		next := x - value/slope
		if !(next >= lo && next <= hi) || math.Abs(next-x) > previous/2 {
			next = lo + (hi-lo)/2
		}
		previous = math.Abs(next - x)
		x = next
		if previous <= tolerance {
			return x, nil
		}
	}
	return 0, ErrNoConvergence
}
