package radon

import (
	"math"
	"testing"
)

func TestYearsAfter(t *testing.T) {
	for _, c := range []struct {
		from  string
		years int
		want  string
	}{
		{"2026-03-21", 2, "2028-03-21"},
		{"2024-02-29", 2, "2026-02-28"},
		{"2024-02-29", 4, "2028-02-29"},
		{"2026-02-28", 2, "2028-02-28"},
		{"2024-02-29", -1, "2023-02-28"},
		{"2096-02-29", 4, "2100-02-28"}, // 2100 is no leap year
		{"1969-12-31", 1, "1970-12-31"},
		{"2025-12-31", 0, "2025-12-31"},
	} {
		if got := must[float64](t)(yearsAfter(day(t, c.from), c.years)); got != day(t, c.want) {
			t.Errorf("%s and %d years: %g, want %s", c.from, c.years, got, c.want)
		}
	}
	if got := must[float64](t)(yearsAfter(day(t, "2026-03-21")+86399.5, 0)); got != day(t, "2026-03-21") {
		t.Errorf("late in a day: %g", got)
	}
	for name, v := range map[string]struct {
		day   float64
		years int
	}{"no day": {math.NaN(), 1}, "far away": {1e18, 1}, "before the year 1": {0, -1970}, "after 9999": {0, 8030}, "no such years": {0, math.MaxInt}} {
		if got, err := yearsAfter(v.day, v.years); err == nil {
			t.Errorf("%s: %g", name, got)
		}
	}
}

// ANSI/AARST MAH 2019 8.5.9.2 and SGM-SF 2017 (12/20) 8.4.2.1.
func TestRetestDue(t *testing.T) {
	if got := must[float64](t)(RetestDue(day(t, "2024-02-29"))); got != day(t, "2026-02-28") {
		t.Errorf("due %g", got)
	}
}
