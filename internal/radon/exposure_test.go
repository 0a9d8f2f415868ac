package radon

import (
	"math"
	"testing"
	"time"
)

func day(t testing.TB, text string) float64 {
	t.Helper()
	d, err := time.Parse(time.DateOnly, text)
	if err != nil {
		t.Fatal(err)
	}
	return float64(d.Unix())
}

// The US convention, 4 pCi/L as 0.02 WL at an equilibrium ratio of 0.5, and the
// 30 pCi/L or 0.3 WL of 32 Ill. Adm. Code 422.70(e), which agree at a ratio of 1.
func TestWorkingLevel(t *testing.T) {
	for _, c := range []struct{ picocuries, ratio, want float64 }{{4, 0.5, 0.02}, {10, 0.5, 0.05}, {30, 1, 0.3}, {30, 0.5, 0.15}, {100, 0, 0}} {
		if got := must[float64](t)(WorkingLevel(c.picocuries*perPicocurie, c.ratio)); !near(got, c.want, 1e-12) {
			t.Errorf("%g pCi/L at %g: %g WL, want %g", c.picocuries, c.ratio, got, c.want)
		}
	}
	if got := must[float64](t)(WorkingLevelMonths(1, 170*hour)); got != 1 {
		t.Errorf("1 WL for 170 h: %g WLM", got)
	}
	for name, v := range map[string][2]float64{"ratio over 1": {1, 1.1}, "no ratio": {1, math.NaN()}, "negative": {-1, 0.5}} {
		if got, err := WorkingLevel(v[0], v[1]); err == nil {
			t.Errorf("%s: %g", name, got)
		}
	}
	for name, v := range map[string][2]float64{"negative time": {1, -1}, "no level": {math.NaN(), 1}} {
		if got, err := WorkingLevelMonths(v[0], v[1]); err == nil {
			t.Errorf("%s: %g", name, got)
		}
	}
}

func TestTwelveMonths(t *testing.T) {
	log := []workerDay{
		{"reyes", day(t, "2025-06-01"), 0.5},
		{"okafor", day(t, "2025-03-10"), 1},
		{"okafor", day(t, "2024-03-10"), 2}, // a year before: no longer counts
		{"okafor", day(t, "2024-03-11"), 4},
		{"okafor", day(t, "2025-03-10") + 8*hour, 8},
		{"reyes", day(t, "2023-06-01"), 16},
	}
	want := []workerDay{
		{"okafor", day(t, "2024-03-10"), 2},
		{"okafor", day(t, "2024-03-11"), 6},
		{"okafor", day(t, "2025-03-10"), 13},
		{"reyes", day(t, "2023-06-01"), 16},
		{"reyes", day(t, "2025-06-01"), 0.5},
	}
	got := must[[]workerDay](t)(twelveMonths(log))
	for i := range max(len(got), len(want)) {
		if i >= len(got) || i >= len(want) || got[i] != want[i] {
			t.Fatalf("%+v, want %+v", got, want)
		}
	}
	if log[0].Worker != "reyes" || log[4].WLM != 8 {
		t.Error("the log itself was changed")
	}
	for _, c := range []struct {
		earlier, later string
		counts         bool
	}{
		{"2024-02-28", "2025-02-28", false},
		{"2024-02-29", "2025-02-28", true},
		{"2024-02-29", "2025-03-01", false},
		{"2023-02-28", "2024-02-29", false},
		{"2023-03-01", "2024-02-29", true},
		{"2023-03-01", "2024-03-01", false},
	} {
		got := must[[]workerDay](t)(twelveMonths([]workerDay{{"reyes", day(t, c.earlier), 1}, {"reyes", day(t, c.later), 1}}))
		if counts := got[1].WLM == 2; counts != c.counts {
			t.Errorf("%s counts on %s: %t, want %t", c.earlier, c.later, counts, c.counts)
		}
	}
	if got, err := twelveMonths([]workerDay{{"reyes", math.NaN(), 1}}); err == nil {
		t.Errorf("no date: %+v", got)
	}
	if got, err := twelveMonths([]workerDay{{"reyes", 0, -1}}); err == nil {
		t.Errorf("negative exposure: %+v", got)
	}
}
