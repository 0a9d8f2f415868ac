package pipeline_test

import (
	"context"
	"slices"
	"testing"

	"github.com/slablint/slablint/internal/finding"
)

// What a finding prints never contradicts its verdict: a length that falls short
// of the limit does not read as the limit, and what the crew wrote down is given
// in their own words. The limit is the 10 ft of EPA 402-R-93-078 14.2.8(3).
func TestPrintedBesideTheLimit(t *testing.T) {
	const met, deficient = finding.Met, finding.Deficient
	for _, c := range []struct {
		name     string
		distance any // as recorded
		legs     []any
		verdict  finding.Verdict
		printed  string
	}{
		{"far off", nil, []any{"4 ft", "3.3333 ft"}, deficient, "7.33 ft"},
		{"on an eighth", nil, []any{"4 ft", "3 ft 2-1/8 in"}, deficient, "7 ft 2 1/8 in"},
		{"just short", nil, []any{"4 ft", "5.998 ft"}, deficient, "9.998 ft"},
		{"less than a hair short", nil, []any{"4 ft", "5.99999 ft"}, deficient, "9.99999 ft"},
		{"shorter than a tape shows", nil, []any{"4 ft", "5.99999999 ft"}, deficient, "9.99999999 ft"},
		{"met exactly", nil, []any{"4 ft", "72 in"}, met, "10 ft"},
		{"over by a hair", nil, []any{"4 ft", "6.002 ft"}, met, "10.002 ft"},
		{"in metres, short", nil, []any{"1 m", "2.047 m"}, deficient, "3.047 m"},
		{"in metres, met", nil, []any{"1 m", "2.049 m"}, met, "3.05 m"},
		{"as written: feet", "8.5 ft", nil, deficient, "8.5 ft"},
		{"as written: inches", "119-3/4 in", nil, deficient, "119-3/4 in"},
		{"as written: near the limit", "9.9996 ft", nil, deficient, "9.9996 ft"},
	} {
		changes := window("own", "10 ft", "1 ft")
		clearance := changes["systems/0/discharge/clearances"].([]any)[0].(map[string]any)
		delete(clearance, "distance")
		if c.distance != nil {
			clearance["distance"] = c.distance
		} else {
			clearance["legs"] = c.legs
		}
		job, errs := onlyProfile(t, "us-epa-1994").Run(context.Background(), edited(t, "demo", changes), nil)
		if len(errs) > 0 {
			t.Fatal(errs)
		}
		i := slices.IndexFunc(job.Findings, func(f finding.Finding) bool { return f.Requirement == "exhaust.clearance_to_openings" })
		if f := job.Findings[i]; f.Verdict != c.verdict || f.Measured != c.printed {
			t.Errorf("%s: %s at %q, want %s at %q: %s", c.name, f.Verdict, f.Measured, c.verdict, c.printed, f.Message)
		}
	}
}
