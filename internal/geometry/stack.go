package geometry

import (
	"errors"
	"fmt"
	"math"
)

const (
	gasConstantDryAir = 287.05  // J/(kg K), as engineering texts round it
	standardGravity   = 9.80665 // m/s2, exact by definition
)

// Stack is a heated house as a column of warm air.
type Stack struct {
	Height    float64 // m from the slab up to the neutral level
	Indoor    float64 // K
	Outdoor   float64 // K
	Barometer float64 // Pa at the place itself, not reduced to sea level
}

// Pressure is by how much the house draws at the slab, in Pa: the weight of
// outdoor air over that height less that of indoor air, each by the ideal gas
// law, g h (P/R)(1/T_out - 1/T_in). It is negative when it is warmer outdoors.
func (s Stack) Pressure() (float64, error) {
	if !finite(s.Height, s.Indoor, s.Outdoor, s.Barometer) {
		return 0, fmt.Errorf("stack pressure: %w", errNotFinite)
	}
	if s.Indoor <= 0 || s.Outdoor <= 0 || s.Barometer <= 0 || s.Height < 0 {
		return 0, errors.New("stack pressure: temperatures (K) and barometer (Pa) must be above 0 and the height (m) not below")
	}
	density := s.Barometer / gasConstantDryAir // times the temperature
	return density * standardGravity * s.Height * (1/s.Outdoor - 1/s.Indoor), nil
}

// CarryToDesign is what a pressure measured under a slab in the weather of the
// test (Pa, suction negative) becomes in design weather, in Pa. The house then
// draws harder by the difference of the two stack pressures, and the fan's part
// is taken as unchanged: cautious in tight soil, about right under leaky slabs.
func CarryToDesign(measured float64, test, design Stack) (float64, error) {
	if !finite(measured) {
		return 0, fmt.Errorf("measured pressure: %w", errNotFinite)
	}
	now, err := test.Pressure()
	if err != nil {
		return 0, fmt.Errorf("weather of the test: %w", err)
	}
	then, err := design.Pressure()
	if err != nil {
		return 0, fmt.Errorf("design weather: %w", err)
	}
	return measured + (then - now), nil
}

// Hold says in a word how well a place under a slab stays in suction.
type Hold string

// The words of ClassifyHold.
const (
	HoldStrong   Hold = "strong"
	HoldAdequate Hold = "adequate"
	HoldMarginal Hold = "marginal"
	HoldFails    Hold = "fails"
)

// ClassifyHold names a pressure in design weather (Pa, suction negative): strong
// from -4 Pa, adequate from -1 Pa, marginal below 0, else it fails. The
// bounds are common practice, no standard's: a word for a person to weigh, while
// the radon test decides. What is no number fails.
func ClassifyHold(pressure float64) Hold {
	switch {
	case math.IsNaN(pressure):
		return HoldFails
	case pressure <= -4:
		return HoldStrong
	case pressure <= -1:
		return HoldAdequate
	case pressure < 0:
		return HoldMarginal
	}
	return HoldFails
}
