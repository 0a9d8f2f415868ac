package airflow

import (
	"fmt"
	"math"
)

// Membrane is the sheet that a floor takes.
type Membrane struct {
	Strips int
	Area   float64 // m2 off the roll
}

// MembraneFor counts the strips of a roll laid along a floor, all in m: length
// and width of the floor, width of the roll, overlap of neighbouring strips and
// upturn at the walls. It returns an error when the roll is no wider than the
// overlap or a measure is not one.
func MembraneFor(length, width, roll, overlap, upturn float64) (Membrane, error) {
	ok := length > 0 && width > 0 && roll > overlap && overlap >= 0 && upturn >= 0
	if !ok || math.IsInf(length+width+roll+upturn, 1) {
		return Membrane{}, fmt.Errorf("membrane for a floor of %g m by %g m from a roll of %g m, overlap %g m, upturn %g m",
			length, width, roll, overlap, upturn)
	}
	strips := (width + 2*upturn - overlap) / (roll - overlap)
	// A floor measured to fit a whole number of strips stays that number after
	// its measures were converted.
	n := math.Max(1, math.Ceil(strips-1e-9))
	return Membrane{int(n), n * roll * (length + 2*upturn)}, nil
}

// SealantVolume returns the sealant in m3 that fills a joint of a length, a
// width and a depth in m, without waste.
func SealantVolume(length, width, depth float64) float64 { return length * width * depth }

// WaterLift returns the height in m to which a suction in Pa lifts water: a sag
// that holds more blocks the pipe.
func WaterLift(suction float64) float64 { return suction / (1000 * gravity) }

// FallOver returns the fall in m that a level run in m needs to drain: 1/8 in
// per ft (ANSI/AARST SGM-SF 2017 (12/20) 6.2.2).
func FallOver(run float64) float64 { return run / 96 }

// CondensateBound returns the most water in kg/s that can fall out of a flow in
// m3/s that leaves the soil saturated at one absolute temperature in K and the
// pipe saturated at a lower one, under a pressure in Pa. Most of it leaves as
// vapour in practice. It is zero when the pipe is no colder than the soil.
func CondensateBound(flow, soil, outlet, pressure float64) float64 {
	dryAir := (pressure - SaturationPressure(soil)) / (gasConstant * soil)
	lost := SaturationHumidity(soil, pressure) - SaturationHumidity(outlet, pressure)
	return math.Max(0, flow*dryAir*lost)
}
