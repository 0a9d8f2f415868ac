package radon

import (
	"cmp"
	"fmt"
	"slices"
)

// Yearly limits for workers in WLM, for where a profile names none.
const (
	// yearlyLimit is for any 12 months: 32 Ill. Adm. Code 422.70(e).
	yearlyLimit = 4.0
	// recommendedYearlyLimit is NIOSH criteria document 88-101 (from memory).
	recommendedYearlyLimit = 1.0
)

const workingMonth = 170 * hour // s

// WorkingLevel is the level of decay products, in WL, of radon (Bq/m3) at an
// equilibrium ratio, 0 to 1: pCi/L times the ratio over 100, the US convention.
// 32 Ill. Adm. Code 422.70(e) takes a ratio of 0.5; ANSI/AARST SGM-SF 2017
// (12/20) 11.3 prints the formula without one, which is a ratio of 1.
func WorkingLevel(concentration, equilibriumRatio float64) (float64, error) {
	if err := notNegative("radon concentration", concentration); err != nil {
		return 0, err
	}
	if !(equilibriumRatio >= 0 && equilibriumRatio <= 1) {
		return 0, fmt.Errorf("equilibrium ratio %g is not between 0 and 1", equilibriumRatio)
	}
	return concentration / perPicocurie * equilibriumRatio / 100, nil
}

// WorkingLevelMonths is the exposure, in WLM, of a time (s) at a working level:
// a month is 170 h (ANSI/AARST SGM-SF 2017 (12/20) 11.3).
func WorkingLevelMonths(workingLevel, duration float64) (float64, error) {
	if err := notNegative("working level", workingLevel); err != nil {
		return 0, err
	}
	if err := notNegative("time on site", duration); err != nil {
		return 0, err
	}
	return workingLevel * duration / workingMonth, nil
}

// workerDay is what one worker got on one day.
type workerDay struct {
	Worker string
	Date   float64 // start of the day in UTC, seconds since 1970
	WLM    float64
}

// twelveMonths is for every worker and every day with an exposure the sum over
// the 12 months that end with that day, in order of worker and day. The day a
// year earlier no longer counts; for a year that ends on 29 February that is
// 28 February.
func twelveMonths(log []workerDay) ([]workerDay, error) {
	days, err := byDay(log)
	if err != nil {
		return nil, err
	}
	sums := slices.Clone(days)
	first := 0 // of the days that count
	for i, day := range days {
		yearAgo, err := yearsAfter(day.Date, -1)
		if err != nil {
			return nil, err
		}
		for days[first].Worker != day.Worker || days[first].Date <= yearAgo {
			first++
		}
		// Added up anew each time: a running sum would keep its rounding.
		for _, earlier := range days[first:i] {
			sums[i].WLM += earlier.WLM
		}
	}
	return sums, nil
}

// byDay adds up what each worker got on each day, in order of worker and day.
func byDay(log []workerDay) ([]workerDay, error) {
	sorted := slices.Clone(log)
	for i := range sorted {
		e := &sorted[i]
		if err := notNegative(fmt.Sprintf("exposure %d", i), e.WLM); err != nil {
			return nil, err
		}
		start, err := yearsAfter(e.Date, 0)
		if err != nil {
			return nil, fmt.Errorf("exposure %d: %w", i, err)
		}
		e.Date = start
	}
	slices.SortStableFunc(sorted, func(a, b workerDay) int {
		return cmp.Or(cmp.Compare(a.Worker, b.Worker), cmp.Compare(a.Date, b.Date))
	})
	var days []workerDay
	for _, e := range sorted {
		if last := len(days) - 1; last >= 0 && days[last].Worker == e.Worker && days[last].Date == e.Date {
			days[last].WLM += e.WLM
		} else {
			days = append(days, e)
		}
	}
	return days, nil
}
