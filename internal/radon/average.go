package radon

import (
	"errors"
	"fmt"
	"math"
)

// Average is the mean of results of devices that stood side by side. Of the
// uncertainties the share calibration (relative, common to all, 0 when not
// known) does not shrink by averaging; the rest does. It is below detection
// only if all are, and then a bound as each of them is; a mixture is an error.
func Average(results []Result, calibration float64) (Result, error) {
	if len(results) == 0 {
		return Result{}, errors.New("average: no result")
	}
	if err := notNegative("calibration uncertainty", calibration); err != nil {
		return Result{}, err
	}
	n := float64(len(results))
	mean := Result{BelowDetection: results[0].BelowDetection}
	random := 0.0
	for i, r := range results {
		if err := r.check(); err != nil {
			return Result{}, fmt.Errorf("average, result %d: %w", i, err)
		}
		if r.BelowDetection != mean.BelowDetection {
			return Result{}, errors.New("average: some results are below detection and others are not")
		}
		mean.Value += r.Value / n
		common := calibration * r.Value
		random += max(r.U*r.U-common*common, 0)
	}
	mean.U = math.Hypot(math.Sqrt(random)/n, calibration*mean.Value)
	return mean, nil
}

// room is one place of a house and what was found there.
type room struct {
	Name   string
	Result Result
}

// worst is the room with the highest result. Only devices side by side are
// averaged (ANSI/AARST MAH 2019 8.5.2(d)); of different places the worst governs,
// which is common practice. Of equal rooms the first counts. No room is an error.
func worst(rooms []room) (room, error) {
	if len(rooms) == 0 {
		return room{}, errors.New("worst room: no room was tested")
	}
	worst := rooms[0]
	for _, r := range rooms {
		if err := r.Result.check(); err != nil {
			return room{}, fmt.Errorf("room %q: %w", r.Name, err)
		}
		if settle(r.Result.Value) > settle(worst.Result.Value) {
			worst = r
		}
	}
	return worst, nil
}

// countingU is the relative standard uncertainty, a share of 1, of a number of
// net counts: 1/sqrt(N). No counts have none: an error.
func countingU(netCounts float64) (float64, error) {
	if !(netCounts > 0) || !finite(netCounts) {
		return 0, fmt.Errorf("counting uncertainty: %g net counts", netCounts)
	}
	return 1 / math.Sqrt(netCounts), nil
}
