package geometry

import (
	"errors"
	"math"
)

// leakyLayer is the physical counterpart of a Field: air drawn to one suction
// point through a permeable layer under a slab that leaks everywhere.
type leakyLayer struct {
	Flow         float64 // m3/s drawn at the suction point
	Viscosity    float64 // Pa s
	Permeability float64 // m2, of the layer
	Thickness    float64 // m, of the layer
	LeakLength   float64 // m; the longer, the tighter the slab
}

// Suction is the pressure below that of the room at a distance (m) from the
// suction point, in Pa, as a positive number: Q mu/(2 pi k b) K0(r/B), which is
// the steady well in a leaky aquifer (Hantush and Jacob, from memory). All
// members and the distance must be above 0.
func (l leakyLayer) Suction(distance float64) (float64, error) {
	for _, v := range []float64{l.Flow, l.Viscosity, l.Permeability, l.Thickness, l.LeakLength, distance} {
		if !(v > 0) || math.IsInf(v, 1) {
			return 0, errors.New("leaky layer: every figure must be above 0")
		}
	}
	suction := l.Flow * l.Viscosity / (2 * math.Pi * l.Permeability * l.Thickness) * besselK0(distance/l.LeakLength)
	if !finite(suction) {
		return 0, errors.New("leaky layer: the figures give no finite pressure")
	}
	return suction, nil
}

// besselK0 is the modified Bessel function of the second kind, order 0, for
// x > 0: the integral of exp(-x cosh t) over t from 0 (Abramowitz and Stegun
// 9.6.24, from memory). The trapezium rule is exact to rounding here, because
// the integrand is even, analytic and falls off doubly exponentially.
func besselK0(x float64) float64 {
	if !(x > 0) {
		return math.Inf(1)
	}
	// The integrand is a bell about 1/sqrt(x) wide when x is large.
	step := 0.5 / math.Sqrt(max(x, 16))
	sum := 0.5
	for i := 1; ; i++ {
		// cosh t - 1 written so that a large x loses no digits.
		half := math.Sinh(step * float64(i) / 2)
		term := math.Exp(-2 * x * half * half)
		sum += term
		if term < 1e-18*sum {
			return step * math.Exp(-x) * sum
		}
	}
}
