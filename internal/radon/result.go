package radon

import (
	"errors"
	"fmt"
	"math"
	"strconv"

	"github.com/slablint/slablint/internal/quantity"
)

// perPicocurie is how many Bq/m3 make one pCi/L: 1 Ci is 3.7e10 Bq, exactly.
const perPicocurie = 37

// significant is how many digits count when two figures are compared.
const significant = 12

// Result is what one device or the mean of several says.
type Result struct {
	Value          float64 // Bq/m3
	U              float64 // Bq/m3, standard uncertainty of Value; 0 when taken as exact
	BelowDetection bool    // Value is then only an upper bound
}

var errNotFinite = errors.New("a figure is not a finite number")

func (r Result) check() error {
	if err := notNegative("radon result", r.Value); err != nil {
		return err
	}
	return notNegative("uncertainty of a radon result", r.U)
}

// ReportPicocuries writes a concentration (Bq/m3) in pCi/L with one decimal, a
// half going up, as ANSI/AARST MAH 2019 8.5.2 and MALB 2014 (1/21) 8.1.1 report
// it: 3.95 as 4.0, 3.94 as 3.9.
func ReportPicocuries(concentration float64) string {
	return quantity.RoundHalfUp(concentration/perPicocurie, 1)
}

// ReportBecquerels writes a concentration (Bq/m3) as a whole number of Bq/m3, a
// half going up.
func ReportBecquerels(concentration float64) string {
	return quantity.RoundHalfUp(concentration, 0)
}

// settle drops the digits of a float that are only noise of its arithmetic.
func settle(x float64) float64 {
	settled, err := strconv.ParseFloat(strconv.FormatFloat(x, 'e', significant-1, 64), 64)
	if err != nil {
		return x
	}
	return settled
}

func finite(values ...float64) bool {
	for _, v := range values {
		if math.IsNaN(v) || math.IsInf(v, 0) {
			return false
		}
	}
	return true
}

// notNegative refuses what cannot be below zero.
func notNegative(what string, value float64) error {
	if !finite(value) {
		return fmt.Errorf("%s: %w", what, errNotFinite)
	}
	if value < 0 {
		return fmt.Errorf("%s is negative: %g", what, value)
	}
	return nil
}
