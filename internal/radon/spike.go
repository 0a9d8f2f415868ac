package radon

import (
	"fmt"
	"math"
)

// What a device exposed to a known level may be off by, in percent: ANSI/AARST
// MS-QA 2019 5.3.3.
const (
	spikeWarning = 20
	spikeControl = 30
)

// Spike is how a device did that was exposed to a known level.
type Spike struct {
	Error     float64 // percent of the known level, negative when it read low
	Agreement Agreement
}

// CheckSpike compares what a device measured with the known level, both in
// Bq/m3. It leaves control when the limit is passed, not when it is reached.
func CheckSpike(measured, reference float64) (Spike, error) {
	if err := notNegative("spike result", measured); err != nil {
		return Spike{}, err
	}
	if !(reference > 0) || !finite(reference) {
		return Spike{}, fmt.Errorf("spike: a known level of %g Bq/m3", reference)
	}
	s := Spike{Error: 100 * (measured - reference) / reference, Agreement: InControl}
	switch off := settle(math.Abs(s.Error)); {
	case off > spikeControl:
		s.Agreement = Control
	case off > spikeWarning:
		s.Agreement = Warning
	}
	return s, nil
}

// blanksAbove lists those blanks, by index, that read above the lowest level a
// device can report (both in Bq/m3): devices that were never opened should not
// (EPA 402-R-92-004, from memory).
func blanksAbove(blanks []float64, lowest float64) ([]int, error) {
	if err := notNegative("lowest reportable level", lowest); err != nil {
		return nil, err
	}
	var above []int
	for i, b := range blanks {
		if !finite(b) {
			return nil, fmt.Errorf("blank %d: %w", i, errNotFinite)
		}
		if settle(b) > settle(lowest) {
			above = append(above, i)
		}
	}
	return above, nil
}
