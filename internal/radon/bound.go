package radon

import "fmt"

// oneSided95 is the number of standard deviations that a normal value exceeds
// with a probability of 5 %.
const oneSided95 = 1.6448536269514722

// Bounds are the one-sided 95 % bounds of a result in Bq/m3: with that
// confidence the level is not above upper, or not below lower. A result below
// detection is its own upper bound, and 0 its lower one.
func (r Result) Bounds() (lower, upper float64) {
	if r.BelowDetection {
		return 0, r.Value
	}
	return max(r.Value-oneSided95*r.U, 0), r.Value + oneSided95*r.U
}

// Standing is where a result stands against an action level.
type Standing string

// The standings of compare.
const (
	Below     Standing = "below"
	AtOrAbove Standing = "at-or-above"
	TooClose  Standing = "too-close-to-call"
)

// compare says whether a level is below an action level (Bq/m3) or not, with
// 95 % confidence either way; if neither can be said it is too close to call.
// Without uncertainty the value alone decides. A result below detection is
// below when its bound is, and else too close to call.
func compare(r Result, action float64) (Standing, error) {
	if err := r.check(); err != nil {
		return "", err
	}
	if err := notNegative("action level", action); err != nil {
		return "", err
	}
	lower, upper := r.Bounds()
	switch limit := settle(action); {
	case settle(upper) < limit, r.BelowDetection && settle(upper) == limit:
		return Below, nil
	case settle(lower) >= limit:
		return AtOrAbove, nil
	}
	return TooClose, nil
}

// Device is a kind of radon detector, in the words of the job record.
type Device string

// The devices whose usual uncertainty is known.
const (
	ContinuousMonitor Device = "continuous-monitor"
	Charcoal          Device = "charcoal"
	Electret          Device = "electret"
	AlphaTrack        Device = "alpha-track"
)

// usualU is the relative standard uncertainty near 148 Bq/m3: a training table
// on precision gives under 10 % and, for alpha tracks, under 20 %.
var usualU = map[Device]float64{ContinuousMonitor: 0.10, Charcoal: 0.10, Electret: 0.10, AlphaTrack: 0.20}

// AssumedU is the standard uncertainty (Bq/m3) to take for a result (Bq/m3) that
// came without one. Below 2 pCi/L it is not taken smaller than 0.5 pCi/L (from
// memory). A device of another kind is an error.
func AssumedU(device Device, value float64) (float64, error) {
	if err := notNegative("radon result", value); err != nil {
		return 0, err
	}
	relative, ok := usualU[device]
	if !ok {
		return 0, fmt.Errorf("no usual uncertainty is known for a device of kind %q", device)
	}
	u := relative * value
	if settle(value) < 2*perPicocurie {
		u = max(u, 0.5*perPicocurie)
	}
	return u, nil
}
