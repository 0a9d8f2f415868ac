package derive_test

import (
	"slices"
	"strings"
	"testing"

	"github.com/slablint/slablint/internal/place"
)

// Which reading is the first and which the last takes the times of all that were
// taken with the fan on: leaving one out does not choose another.
func TestReadingsWithoutATimeOrAFan(t *testing.T) {
	const (
		off   = `{id: off, at: "2026-03-10T15:00:00-05:00", value: 0 inH2O, fan_on: false}`
		early = `{id: early, at: "2026-03-10T15:10:00-05:00", value: 1.2 inH2O, fan_on: true}`
		late  = `{id: late, at: "2026-03-20T10:00:00-05:00", value: 0.9 inH2O, fan_on: true}`
	)
	timeless := func(reading string) string {
		return strings.Split(reading, " at: ")[0] + strings.SplitAfterN(reading, `",`, 2)[1]
	}
	for _, c := range []struct {
		name     string
		readings []string
		last     string // "" when it is not known
		differ   string // mark and first reading
		lacks    place.Pointer
	}{
		{"in order", []string{off, early, late}, "0.9 inH2O", "0 inH2O", ""},
		{"out of order", []string{late, early, off}, "0.9 inH2O", "0 inH2O", ""},
		{"one only", []string{timeless(early)}, "1.2 inH2O", "0 inH2O", ""},
		{"the first has no time", []string{timeless(early), late}, "", "", "/systems/0/gauge/readings/0/at"},
		{"the last has no time", []string{early, timeless(late)}, "", "", "/systems/0/gauge/readings/1/at"},
		{"one with the fan off needs none", []string{timeless(off), early, late}, "0.9 inH2O", "0 inH2O", ""},
		{"the last may be one with the fan on", []string{early, strings.Replace(late, ", fan_on: true", "", 1)}, "", "", "/systems/0/gauge/readings/1/fan_on"},
		{"none with the fan on", []string{off}, "", "", "/systems/0/gauge/readings"},
	} {
		text := "record: 1\njob: {id: J-1, stage: running, profiles: [us-epa-1994]}\nsystems:\n  - id: s\n    powered_by: fan\n    gauge: {kind: u-tube, start_mark: 1.2 inH2O, readings: [" + strings.Join(c.readings, ", ") + "]}\n"
		derived := document(canonical(t, c.name, []byte(text)), nil)
		for at, want := range map[place.Pointer]string{"/systems/0/gauge_reading": c.last, "/systems/0/start_mark_difference": c.differ} {
			got, _ := value(t, derived, at)["text"].(string)
			if got != want {
				t.Errorf("%s: %s is %q, want %q", c.name, at, got, want)
			}
			if want == "" && !slices.Contains(lacks(t, derived, at), string(c.lacks)) {
				t.Errorf("%s: %s lacks %v, want %s", c.name, at, lacks(t, derived, at), c.lacks)
			}
		}
	}
}

// Common practice: what tells of a part of the slab is a hole away from the one
// that suction is drawn from, where there is suction whatever lies beyond.
func TestTheSuctionHoleTestsNothing(t *testing.T) {
	const slab = `record: 1
job: {id: J-1, stage: running, profiles: [us-epa-1994]}
house: {foundations: [{id: slab, outline: [{x: 0 m, y: 0 m}, {x: 12 m, y: 0 m}, {x: 12 m, y: 5 m}, {x: 0 m, y: 5 m}]}]}
diagnostics:
  communication_tests:
    - {id: t, foundation: slab, source: {x: 12 m, y: 0 m}, holes: [HOLES]}
`
	const (
		left   = "{id: left, position: {x: 0 m, y: 0 m}, pressure: 1 Pa}"
		source = "{id: source, position: {x: 12 m, y: 0 m}, pressure: -90 Pa}"
		zero   = "{id: source, position: {x: 12 m, y: 0 m}, distance: 0 m, pressure: -90 Pa}"
	)
	for _, c := range []struct{ name, holes, farthest, coverage string }{
		{"one hole", left, "13 m", "0 %"},
		{"and the suction hole by its place", left + ", " + source, "13 m", "0 %"},
		{"and the suction hole by its distance", zero + ", " + left, "13 m", "0 %"},
		{"the suction hole alone", source, "", "0 %"},
	} {
		derived := document(canonical(t, c.name, []byte(strings.Replace(slab, "HOLES", c.holes, 1))), nil)
		for at, want := range map[place.Pointer]string{"/communication/0/farthest_untested": c.farthest, "/communication/0/coverage": c.coverage} {
			if got, _ := value(t, derived, at)["text"].(string); got != want {
				t.Errorf("%s: %s is %q, want %q", c.name, at, got, want)
			}
		}
	}
}
