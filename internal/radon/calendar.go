package radon

import (
	"errors"
	"math"
	"time"
)

// yearsAfter is the same day of the calendar some years later (or earlier, when
// years is negative): the start of that day in UTC, in seconds since 1970. An
// instant within a day counts as that day in UTC. 29 February becomes
// 28 February in a year that has none, so that a deadline is never late. A day
// outside the years 1 to 9999 is an error.
func yearsAfter(day float64, years int) (float64, error) {
	const span = 9999 * 366 * 24 * hour // s, more than any such day is away
	if !finite(day) || math.Abs(day) > span || years < -9999 || years > 9999 {
		return 0, errors.New("date: not a day of the calendar")
	}
	from := time.Unix(int64(math.Floor(day)), 0).UTC()
	year, month, date := from.Year()+years, from.Month(), from.Day()
	if year < 1 || year > 9999 {
		return 0, errors.New("date: not a day of the calendar")
	}
	to := time.Date(year, month, date, 0, 0, 0, 0, time.UTC)
	if to.Month() != month {
		to = to.AddDate(0, 0, -to.Day())
	}
	return float64(to.Unix()), nil
}

// RetestDue is the day by which a house is tested again: two years after the
// day of the last test (ANSI/AARST MAH 2019 8.5.9.2, SGM-SF 2017 (12/20)
// 8.4.2.1; EPA 402-R-93-078 17.5 from memory), in the terms of yearsAfter.
func RetestDue(lastTest float64) (float64, error) { return yearsAfter(lastTest, 2) }
