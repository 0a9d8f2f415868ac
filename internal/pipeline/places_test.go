package pipeline_test

import (
	"context"
	"os"
	"slices"
	"testing"

	"github.com/slablint/slablint/internal/finding"
)

// A finding stands at the value that is wrong, not at another that it was worked
// out from, and says in words what is not recorded or cannot be used.
func TestFindingsStandAtWhatIsWrong(t *testing.T) {
	for _, c := range []struct {
		profile, requirement, subject string
		change                        edits
		verdict                       finding.Verdict
		path, message                 string // message "" is not looked at
	}{
		{"us-epa-1994", "testing.after_fan_start", "post-1", edits{"measurements/tests/1/start": "2026-03-18T00:00:00-04:00"}, finding.Deficient, "/measurements/tests/1/start", ""},
		{"us-epa-1994", "testing.below_action_level", "measurements", edits{"measurements/tests/1/result": "4.4 pCi/L"}, finding.Deficient, "/measurements/tests/1/result", ""},
		{"common-practice", "testing.surely_below", "measurements", edits{"measurements/tests/1/result": "6 pCi/L"}, finding.Deficient, "/measurements/tests/1/result", ""},
		{"us-epa-1994", "testing.long_enough", "post-1", edits{"measurements/tests/1/end": "2026-03-20T09:00:00-04:00"}, finding.Deficient, "/measurements/tests/1/end", ""},
		{"us-consensus", "testing.closed_before", "post-1", edits{"measurements/tests/1/device": "charcoal", "measurements/tests/1/blank": false, "measurements/tests/1/closed_from": "2026-03-19T03:00:00-04:00"}, finding.Deficient, "/measurements/tests/1/closed_from", ""},
		{"us-consensus", "testing.calibrated_monitor", "post-1", edits{"measurements/tests/1/calibration_expires": "2026-03-20"}, finding.Deficient, "/measurements/tests/1/calibration_expires", ""},
		{"us-epa-1994", "pipe.no_water_trap", "rim", edits{"systems/0/pipe/1/rise": "40 ft"}, finding.Unrecorded, "/systems/0/pipe", "Cannot be used: pipe (pipe segment 1 rises 12.192 m over 3.6576 m of pipe)."},
		{"us-epa-1994", "pipe.no_water_trap", "rim", edits{"systems/0/pipe/1/length": "-12 ft", "systems/0/pipe/1/rise": nil}, finding.Unrecorded, "/systems/0/pipe/1/length", "Not recorded: rise. Cannot be used: length (a length cannot be below zero)."},
	} {
		doc := edited(t, "demo", c.change)
		job, errs := onlyProfile(t, c.profile).Run(context.Background(), doc, os.DirFS("../../fixtures/demo"))
		if len(errs) > 0 {
			t.Fatal(errs)
		}
		i := slices.IndexFunc(job.Findings, func(f finding.Finding) bool { return f.Requirement == c.requirement && f.Subject == c.subject })
		if i < 0 {
			t.Errorf("%s says nothing of %s %s", c.profile, c.requirement, c.subject)
			continue
		}
		f := job.Findings[i]
		if f.Verdict != c.verdict || f.At.Path != c.path || c.message != "" && f.Message != c.message {
			t.Errorf("%s %s is %s at %s: %s", c.requirement, c.subject, f.Verdict, f.At.Path, f.Message)
		}
	}
}
