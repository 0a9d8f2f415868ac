package pipeline_test

import (
	"context"
	"os"
	"slices"
	"testing"

	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/pipeline"
)

// findingOf is the finding of one requirement on one subject, by a stack over the
// edited demo job.
func findingOf(t *testing.T, p *pipeline.Pipeline, requirement, subject string, changes ...edits) finding.Finding {
	t.Helper()
	job, errs := p.Run(context.Background(), edited(t, "demo", changes...), os.DirFS("../../fixtures/demo"))
	if len(errs) > 0 {
		t.Fatal(errs)
	}
	i := slices.IndexFunc(job.Findings, func(f finding.Finding) bool { return f.Requirement == requirement && f.Subject == subject })
	if i < 0 {
		t.Fatalf("nothing is said of %s %s", requirement, subject)
	}
	return job.Findings[i]
}

// Where the letter is kept and practice knows trouble, an extra finding says so
// and holds nothing (common practice, no source).
func TestLetterIsKeptAndIntentIsNot(t *testing.T) {
	p := newPipeline(t, pipeline.Options{Profiles: []string{"us-epa-1994", "common-practice"}})
	for _, c := range []struct{ name, letter, subject, intent, flag string }{
		{"soffit vent beside the outlet", "exhaust.height_above_eave", "sys-1", "exhaust.apart_from_soffit_vent", "systems/0/discharge/under_soffit_vent"},
		{"outlet beneath a window that opens", "exhaust.height_above_grade", "sys-1", "exhaust.apart_from_window_above", "systems/0/discharge/below_operable_window"},
		{"gauge in a closed cabinet", "gauge.warning_device", "sys-1", "gauge.not_in_cabinet", ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			change := edits{c.flag: true}
			if c.flag == "" {
				change = edits{"systems/0/gauge/place": "closed-cabinet"}
			}
			if f := findingOf(t, p, c.letter, c.subject, change); f.Verdict != finding.Met {
				t.Errorf("the letter, %s, is %s", c.letter, f.Verdict)
			}
			if f := findingOf(t, p, c.intent, "sys-1", change); f.Verdict != finding.Deficient || f.Grade != finding.Recommended || f.Holds {
				t.Errorf("the intent, %s, is %s at grade %s, holds %v", c.intent, f.Verdict, f.Grade, f.Holds)
			}
			if f := findingOf(t, p, c.intent, "sys-1"); f.Verdict != finding.Met {
				t.Errorf("without it %s is %s", c.intent, f.Verdict)
			}
		})
	}
}

// A file that proves something lies in the job's folder, is the one that was
// recorded, is what it claims to be and was not made before the work.
func TestEvidenceIsLookedAt(t *testing.T) {
	p := newPipeline(t, pipeline.Options{Profiles: []string{"common-practice"}})
	const photo = "photo-outlet"
	at := "evidence/7/"
	for _, c := range []struct {
		name, requirement string
		change            edits
	}{
		{"no such file", "evidence.file_present", edits{at + "path": "evidence/nothing.jpg"}},
		{"a path out of the folder", "evidence.file_present", edits{at + "path": "../slab/evidence/outlet.jpg"}},
		{"another file", "evidence.digest_matches", edits{at + "path": "evidence/label.jpg"}},
		{"another type", "evidence.type_matches", edits{at + "media_type": "image/png"}},
		{"taken before the work", "evidence.taken_after_start", edits{"job/dates/work_started": "2026-03-18"}},
		{"shows nothing", "evidence.shows_something", edits{at + "shows": []any{}}},
		{"proves nothing", "evidence.outlet", edits{at + "media_type": "text/plain"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			subject := photo
			if c.requirement == "evidence.outlet" {
				subject = "sys-1"
			}
			if f := findingOf(t, p, c.requirement, subject); f.Verdict != finding.Met {
				t.Errorf("unchanged it is %s: %s", f.Verdict, f.Message)
			}
			if f := findingOf(t, p, c.requirement, subject, c.change); f.Verdict != finding.Deficient {
				t.Errorf("it is %s: %s", f.Verdict, f.Message)
			}
		})
	}
}

// Variances as a record holds them, against the demo job with a low outlet.
func TestVariancesOfARecord(t *testing.T) {
	variance := func(subject, expires string) map[string]any {
		return map[string]any{
			"id": "var-1", "requirement": "exhaust.height_above_grade", "subject": subject, "authority": "Township", "approver_role": "code officer",
			"reason": "roof work", "document": "photo-outlet", "granted": "2026-03-20", "expires": expires,
		}
	}
	low := edits{"systems/0/discharge/height_above_grade": "8 ft", "systems/0/discharge/grade_level": nil, "systems/0/discharge/position": nil}
	blank := edits{"systems/0/discharge/height_above_grade": nil, "systems/0/discharge/grade_level": nil, "systems/0/discharge/position": nil}
	p := onlyProfile(t, "us-epa-1994")
	for _, c := range []struct {
		name             string
		change           edits
		subject, expires string
		outlet           finding.Verdict
		against          string
	}{
		{"covers", low, "sys-1", "2027-01-01", finding.Variance, ""},
		{"expired", low, "sys-1", "2026-04-01", finding.Deficient, "variances.current"},
		{"unmatched", low, "sys-2", "2027-01-01", finding.Deficient, "variances.matched"},
		{"unneeded", edits{}, "sys-1", "2027-01-01", finding.Met, "variances.needed"},
		{"over a blank", blank, "sys-1", "2027-01-01", finding.Unrecorded, "variances.known_deficiency"},
	} {
		t.Run(c.name, func(t *testing.T) {
			with := edits{"variances": []any{variance(c.subject, c.expires)}}
			if f := findingOf(t, p, "exhaust.height_above_grade", "sys-1", c.change, with); f.Verdict != c.outlet || f.Holds != (c.outlet == finding.Deficient || c.outlet == finding.Unrecorded) {
				t.Errorf("the outlet is %s, holds %v: %s", f.Verdict, f.Holds, f.Message)
			}
			if c.against == "" {
				return
			}
			if f := findingOf(t, p, c.against, "var-1", c.change, with); f.Verdict != finding.Deficient || !f.Holds || f.At.Path != "/variances/0" {
				t.Errorf("%s is %s at %s, holds %v", c.against, f.Verdict, f.At.Path, f.Holds)
			}
		})
	}
}
