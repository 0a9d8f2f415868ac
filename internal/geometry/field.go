package geometry

import (
	"errors"
	"fmt"
	"math"
)

// Reading is a pressure difference across a slab at a distance from the suction
// point.
type Reading struct {
	Distance float64 // m
	Pressure float64 // Pa, below the slab minus in the room
}

// Field is a pressure that dies away from a suction point by a constant share a
// metre, p = p0 exp(-k r): Saum, 1996 International Radon Symposium, paper 32.
type Field struct {
	P0        float64    // Pa at the suction point, with the sign of the readings
	K         float64    // 1/m; not above 0 when the readings do not die away
	R2        float64    // share of the spread of ln|p| that the line explains
	Farthest  float64    // m, the farthest reading used; beyond it is a guess
	Residuals []Residual // of the readings used, in their order
}

// Residual is how far one reading lies off a fitted field. A single large one
// tells of a footing, a duct or a hole that was not sealed.
type Residual struct {
	Index    int     // of the reading
	LogRatio float64 // ln(measured/fitted), above 0 when stronger than fitted
}

// FitField fits a field to readings by least squares of ln|p| on distance. It
// leaves out readings not stronger than noise (in Pa). It is an error if fewer
// than two distances remain, or if some of the readings used are suction and
// others are not.
func FitField(readings []Reading, noise float64) (Field, error) {
	if err := notNegative("gauge noise", noise); err != nil {
		return Field{}, err
	}
	var used []int
	var meanR, meanL float64
	for i, r := range readings {
		if err := notNegative("distance", r.Distance); err != nil {
			return Field{}, fmt.Errorf("reading %d: %w", i, err)
		}
		if !finite(r.Pressure) {
			return Field{}, fmt.Errorf("pressure of reading %d: %w", i, errNotFinite)
		}
		if math.Abs(r.Pressure) <= noise {
			continue
		}
		if len(used) > 0 && math.Signbit(r.Pressure) != math.Signbit(readings[used[0]].Pressure) {
			return Field{}, fmt.Errorf("readings %d and %d have different signs: no single field", used[0], i)
		}
		used = append(used, i)
		meanR += r.Distance
		meanL += math.Log(math.Abs(r.Pressure))
	}
	n := float64(len(used))
	meanR, meanL = meanR/n, meanL/n
	var rr, rl, ll, farthest float64
	for _, i := range used {
		dr, dl := readings[i].Distance-meanR, math.Log(math.Abs(readings[i].Pressure))-meanL
		rr, rl, ll = rr+dr*dr, rl+dr*dl, ll+dl*dl
		farthest = max(farthest, readings[i].Distance)
	}
	if len(used) < 2 || rr <= n*coincident*farthest*coincident*farthest {
		return Field{}, errors.New("pressure field: readings above gauge noise at two different distances are needed")
	}
	slope := rl / rr
	f := Field{K: -slope, P0: math.Exp(meanL - slope*meanR), R2: 1, Farthest: farthest}
	if readings[used[0]].Pressure < 0 {
		f.P0 = -f.P0
	}
	unexplained := 0.0
	for _, i := range used {
		off := math.Log(readings[i].Pressure / f.At(readings[i].Distance))
		f.Residuals = append(f.Residuals, Residual{i, off})
		unexplained += off * off
	}
	if ll > n*coincident*coincident { // else all readings are equal, and so is the line
		f.R2 = 1 - unexplained/ll
	}
	return f, nil
}

// fieldFromShare is the field of p0 (Pa) of which the share left, between 0 and
// 1, remains at each step (m) farther out.
func fieldFromShare(p0, left, step float64) (Field, error) {
	if !(left > 0 && left <= 1) || !(step > 0) || !finite(p0, step) {
		return Field{}, fmt.Errorf("pressure field: share %g left over %g m is not possible", left, step)
	}
	return Field{P0: p0, K: -math.Log(left) / step}, nil
}

// At is the pressure at a distance (m) from the suction point, in Pa.
func (f Field) At(distance float64) float64 { return f.P0 * math.Exp(-f.K*distance) }

// ShareLost is the share of the pressure, 0 to 1, lost over a length (m).
func (f Field) ShareLost(length float64) float64 { return -math.Expm1(-f.K * length) }

// Radius is the distance at which the field has fallen to a criterion pressure
// (Pa, either sign), in metres; 0 when it is not even reached at the suction
// point. A field that does not die away has no such distance: an error.
func (f Field) Radius(criterion float64) (float64, error) {
	if criterion == 0 || !finite(criterion) {
		return 0, fmt.Errorf("radius of a pressure field: criterion %g Pa", criterion)
	}
	ratio := math.Abs(f.P0 / criterion)
	switch {
	case ratio <= 1:
		return 0, nil
	case !(f.K > 0):
		return 0, errors.New("radius of a pressure field: it does not die away with distance")
	}
	return math.Log(ratio) / f.K, nil
}
