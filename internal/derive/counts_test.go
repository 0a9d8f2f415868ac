package derive_test

import (
	"math"
	"slices"
	"testing"

	"github.com/slablint/slablint/internal/place"
)

// How many suction points send their air through each segment, and the largest
// pipe behind a junction.
func TestFeeds(t *testing.T) {
	derived := document(load(t, "testdata/four.yaml"), nil)
	var feeds []float64
	for i := range derived["segments"].([]any) {
		feeds = append(feeds, si(t, derived, place.Root.Append("segments", i, "feeds")))
	}
	if want := []float64{1, 1, 1, 1, 2, 1, 1, 3, 1, 1, 4, 4}; !slices.Equal(feeds, want) {
		t.Errorf("feeds %v, want %v", feeds, want)
	}
	if got := si(t, derived, "/systems/0/largest_manifold_bore"); got != 4*0.0254 {
		t.Errorf("largest pipe behind a junction %v m", got)
	}
	alone := document(variant(t), nil)
	if got := lacks(t, alone, "/systems/0/largest_manifold_bore"); !slices.Contains(got, "/systems/0/suction_points") {
		t.Errorf("a single suction point has a manifold: lacks %v", got)
	}
}

// A sag of 60 mm is lifted by a column of water as high: 0.06 m of the
// conventional 9806.65 Pa/m (NIST SP 811 App. B.8).
func TestTrap(t *testing.T) {
	derived := document(load(t, "testdata/metric.yaml"), nil)
	if depth, lift := si(t, derived, "/segments/2/trap_depth"), si(t, derived, "/segments/2/trap_suction"); depth != 0.06 || math.Abs(lift-588.399) > 1e-9 {
		t.Errorf("trap of %v m and %v Pa", depth, lift)
	}
	if depth := si(t, derived, "/segments/1/trap_depth"); depth != 0 {
		t.Errorf("trap of %v m in pipe that drains", depth)
	}
}

// Differences that a person would look for between what is written down twice.
func TestDifferences(t *testing.T) {
	reading := "value: 1.2 inH2O, fan_on: true"
	duplicate := "start: \"2026-03-12T09:00:00-05:00\", end: \"2026-03-14T09:00:00-05:00\""
	for _, c := range []struct {
		name   string
		record []string
		at     place.Pointer
		want   float64 // SI
		lacks  string
	}{
		{"mark against first reading", []string{"start_mark: 1.2 inH2O", "start_mark: 1.1 inH2O"}, "/systems/0/start_mark_difference", 0.1 * 249.08891, ""},
		{"first reading with the fan off", []string{reading, "value: 0 inH2O, fan_on: false"}, "/systems/0/start_mark_difference", 0.05 * 249.08891, ""},
		{"an earlier reading that does not say", []string{reading, "value: 0 inH2O"}, "/systems/0/start_mark_difference", 0, "/systems/0/gauge/readings/0/fan_on"},
		{"suction in the pit against shut-off", []string{"soil_flow: 60 cfm", "suction: 0.95 inH2O, soil_flow: 60 cfm"}, "/suction_points/0/shutoff_share", 0.5 * 1.2013849 / si(t, document(variant(t), nil), "/air/density"), ""}, // standard air 0.075 lb/ft3
		{"suction in the pit, gauge reversed", []string{"soil_flow: 60 cfm", "suction: 0.95 inH2O, soil_flow: 60 cfm", "value: 1.25 inH2O", "value: -1.25 inH2O"}, "/suction_points/0/suction_difference", 0, "/systems/0/gauge/readings/1/value"},
		{"slope written beside rise and length", []string{"rise: 2 in, run: horizontal", "rise: 2 in, slope: 1/4 in per ft, run: horizontal"}, "/segments/1/slope_disagreement", 1.0 / 96, ""},
		{"duplicates that ended 6 h apart", nil, "/duplicates/0/end_difference", 6 * 3600, ""},
		{"duplicates that started 2 h apart", []string{duplicate, "start: \"2026-03-12T07:00:00-05:00\", end: \"2026-03-14T09:00:00-05:00\""}, "/duplicates/0/start_difference", 2 * 3600, ""},
		{"two devices in one place", []string{"  altitude: 500 ft\n", "  altitude: 500 ft\n  floor_area_tested: 900 ft2\n"}, "/radon/area_per_place", 900 * 0.09290304, ""},
		{"two places", []string{"  altitude: 500 ft\n", "  altitude: 500 ft\n  floor_area_tested: 900 ft2\n", ", duplicate_of: post-1, spacing: 6 in", ""}, "/radon/area_per_place", 450 * 0.09290304, ""},
		{"hours dropped at the end", []string{"reported_to: \"2026-03-14T15:00:00-05:00\"", "reported_to: \"2026-03-14T12:00:00-05:00\""}, "/tests/1/tail_left_out", 3 * 3600, ""},
		{"calibration that had expired", []string{"device: continuous-monitor,", "device: continuous-monitor, calibration_expires: 2026-03-10,"}, "/tests/1/calibration_left", -4 * 86400, ""},
		{"new house", []string{"  altitude: 500 ft\n", "  altitude: 500 ft\n  occupied_since: 2026-03-01\n"}, "/tests/1/days_after_occupancy", 11 * 86400, ""},
		{"plan looked at a year before", []string{"hours_on_site: 8 h", "hours_on_site: 8 h, plan_reviewed: 2025-03-10"}, "/crew/0/plan_age", 365 * 86400, ""},
		{"credential that ran out", []string{"hours_on_site: 8 h", "hours_on_site: 8 h, credential_expires: 2026-03-09"}, "/crew/0/credential_margin", -86400, ""},
		{"work of one day", nil, "/order/work_span", 86400, ""},
		{"vapor sample two weeks on", []string{"measurements:\n", "measurements:\n  vapor_first_sampled: 2026-03-24T15:00:00-05:00\n"}, "/order/fan_start_before_vapor_sample", 14 * 86400, ""},
		{"ventilation that pulls", []string{"    runs_continuously: true\n", "    runs_continuously: true\n    ventilation: {supply_flow: 90 cfm, exhaust_flow: 100 cfm}\n"}, "/systems/0/ventilation_imbalance", -0.1, ""},
	} {
		derived := document(variant(t, c.record...), nil)
		keepsSchema(t, derived)
		if c.lacks != "" {
			if got := lacks(t, derived, c.at); !slices.Contains(got, c.lacks) {
				t.Errorf("%s: %s lacks %v, not %s", c.name, c.at, got, c.lacks)
			}
			continue
		}
		if got := si(t, derived, c.at); math.Abs(got-c.want) > 1e-5*math.Abs(c.want) {
			t.Errorf("%s: %s is %v, want %v", c.name, c.at, got, c.want)
		}
	}
}
