package pipeline_test

import (
	"testing"

	"github.com/slablint/slablint/internal/finding"
)

// A limit that no source established decides nothing, also not on a job that
// is ready by other profiles.
func TestUnknownLimitsAreNeverMet(t *testing.T) {
	for _, profile := range builtin(t).ProfileNames() {
		s, err := builtin(t).Select(profile)
		if err != nil {
			t.Fatal(err)
		}
		unknown := map[string]bool{}
		for _, name := range s.Asked() {
			row, _ := s.Row(name)
			for _, v := range row.Limits {
				unknown[name] = unknown[name] || v.Unknown
			}
		}
		seen := 0
		for _, file := range fixtures(t, "ready") {
			for _, f := range judged(t, onlyProfile(t, profile), file).Findings {
				if !unknown[f.Requirement] {
					continue
				}
				seen++
				if f.Verdict == finding.Met || f.Verdict == finding.Deficient {
					t.Errorf("%s %s: %s %s is %s with an unknown limit", file, profile, f.Requirement, f.Subject, f.Verdict)
				}
			}
		}
		if (profile == "canada" || profile == "us-consensus") && seen == 0 {
			t.Errorf("%s: no finding rests on an unknown limit", profile)
		}
	}
}
