package airflow

import (
	"fmt"
	"math"
)

const inchOfWater = 1000 * gravity * inch // Pa, conventional

// GaugeVerdict is what a gauge reading looks like next to the fan's shut-off
// pressure. It asks someone to look again; it is no finding of fault by itself.
type GaugeVerdict string

// The verdicts, in the order in which they are tried (common practice).
const (
	GaugeReversed     GaugeVerdict = "reversed"      // below zero: tube reversed or on the discharge side
	GaugeNoSuction    GaugeVerdict = "no-suction"    // under 0.03 in of water: fan or tube off, gauge dry
	GaugeAboveShutOff GaugeVerdict = "above-shutoff" // over 1.05 of shut-off: other fan, wrong unit, zero off, altitude
	GaugeOverRange    GaugeVerdict = "over-range"    // at the end of the scale: the reading is a lower bound
	GaugeNoFlow       GaugeVerdict = "no-flow"       // from 0.95: tight soil, water, ice, closed damper
	GaugeOpenPipe     GaugeVerdict = "open-pipe"     // up to 0.05: open or broken pipe, sump lid missing
	GaugeUsable       GaugeVerdict = "usable"        // between: fit to infer flow from
)

const (
	leastSuction    = 0.03 * inchOfWater // natural draft of a stack alone reaches about this
	openPipeShare   = 0.05               // of shut-off pressure
	noFlowShare     = 0.95
	impossibleShare = 1.05
)

// UsableShares are the shares of the shut-off pressure between which a reading
// is fit to infer flow from.
func UsableShares() (low, high float64) { return openPipeShare, noFlowShare }

// JudgeGauge compares a reading in Pa, taken while the fan is recorded as
// running, with the fan's shut-off pressure in Pa at the site's density. The
// end of the gauge's scale in Pa may be 0 when it is not recorded.
func JudgeGauge(reading, shutOff, scaleEnd float64) (GaugeVerdict, error) {
	if math.IsNaN(reading) || math.IsInf(reading, 0) || !(shutOff > 0) || math.IsInf(shutOff, 1) || !(scaleEnd >= 0) {
		return "", fmt.Errorf("gauge reading %g Pa against shut-off %g Pa on a scale to %g Pa", reading, shutOff, scaleEnd)
	}
	switch {
	case reading < 0:
		return GaugeReversed, nil
	case reading < leastSuction:
		return GaugeNoSuction, nil
	case reading > impossibleShare*shutOff:
		return GaugeAboveShutOff, nil
	case scaleEnd > 0 && reading >= scaleEnd:
		return GaugeOverRange, nil
	case reading >= noFlowShare*shutOff:
		return GaugeNoFlow, nil
	case reading <= openPipeShare*shutOff:
		return GaugeOpenPipe, nil
	default:
		return GaugeUsable, nil
	}
}

// Agreement is how well two ways to the same flow agree (common practice).
type Agreement string

// The grades of agreement.
const (
	Consistent   Agreement = "consistent"   // within 25 % or 10 cfm, whichever is more
	LookAgain    Agreement = "look-again"   // within 50 %
	Inconsistent Agreement = "inconsistent" // beyond
)

const cfm = foot * foot * foot / 60 // m3/s

// CompareFlows grades a flow read off the fan's curve against a measured one,
// both in m3/s, by their difference over the measured flow.
func CompareFlows(fromCurve, measured float64) (Agreement, error) {
	if !(fromCurve >= 0 && measured >= 0) || math.IsInf(fromCurve+measured, 1) {
		return "", fmt.Errorf("flows of %g and %g m3/s", fromCurve, measured)
	}
	switch off := math.Abs(fromCurve - measured); {
	case off <= math.Max(0.25*measured, 10*cfm):
		return Consistent, nil
	case off <= 0.5*measured:
		return LookAgain, nil
	default:
		return Inconsistent, nil
	}
}

// StackDraft returns the pressure in Pa by which a pipe of a height in m, full
// of gas at one absolute temperature in K, draws on its own when the air around
// it is at another, under a station pressure in Pa. It is below zero when the
// gas is the colder.
func StackDraft(height, inside, outside, pressure float64) float64 {
	return gravity * height * (Density(pressure, outside, 0) - Density(pressure, inside, 0))
}

// VelocityFromPitot returns the speed in m/s of air of a density in kg/m3 from
// the velocity pressure in Pa that a pitot tube shows.
func VelocityFromPitot(velocityPressure, density float64) float64 {
	return math.Sqrt(2 * velocityPressure / density)
}

// CentreFactor returns the mean speed over the speed on the axis of a round
// pipe whose profile is a power law with exponent 1/n; n is about 7 in
// turbulent flow (textbook, from memory).
func CentreFactor(n float64) float64 {
	return 2 * n * n / ((n + 1) * (2*n + 1))
}

// TraversePoints returns where to hold a pitot tube along a diameter, as shares
// of the diameter from one wall, so that each of an even number of points
// stands for an equal area and their plain mean is the mean speed (the rule
// behind EPA Method 1, Table 1-2, from memory). Other counts give nil.
func TraversePoints(count int) []float64 {
	if count < 2 || count%2 != 0 {
		return nil
	}
	points := make([]float64, count)
	for i := range count / 2 {
		radius := math.Sqrt(float64(count-1-2*i) / float64(count))
		points[i] = (1 - radius) / 2
		points[count-1-i] = (1 + radius) / 2
	}
	return points
}
