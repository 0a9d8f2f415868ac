package report

import (
	"bytes"
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/santhosh-tekuri/jsonschema/v5"

	"github.com/slablint/slablint/internal/finding"
)

// Section numbers are those of OASIS SARIF 2.1.0.

func sarifSchemaOf(t *testing.T) *jsonschema.Schema {
	t.Helper()
	data, err := os.ReadFile(filepath.Join("testdata", "schema", "sarif-2.1.0.json"))
	if err != nil {
		t.Fatal(err)
	}
	c := jsonschema.NewCompiler()
	c.AssertFormat = true
	if err := c.AddResource(sarifSchema, bytes.NewReader(data)); err != nil {
		t.Fatal(err)
	}
	s, err := c.Compile(sarifSchema)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

func TestSARIFFollowsItsSchema(t *testing.T) {
	schema := sarifSchemaOf(t)
	for _, s := range samples() {
		for _, all := range []bool{false, true} {
			if err := schema.Validate(decode(t, render(t, SARIF, s.report, Options{All: all}))); err != nil {
				t.Errorf("%s, all %v: %#v", s.name, all, err)
			}
		}
	}
	good := render(t, SARIF, several(), Options{All: true})
	for name, change := range map[string][2]string{
		"another level":   {`"level": "error"`, `"level": "severe"`},
		"line zero":       {`"startLine": 80`, `"startLine": 0`},
		"another version": {`"version": "2.1.0"`, `"version": "2.0.0"`},
		"no message":      {`"message": {`, `"massage": {`},
	} {
		bad := strings.Replace(good, change[0], change[1], 1)
		if bad == good {
			t.Fatalf("%s: the sample has no %s", name, change[0])
		}
		if schema.Validate(decode(t, bad)) == nil {
			t.Errorf("%s: the schema takes it", name)
		}
	}
}

func readSARIF(t *testing.T, r finding.Report, o Options) sarifRun {
	t.Helper()
	var log sarifLog
	if err := json.Unmarshal([]byte(render(t, SARIF, r, o)), &log); err != nil {
		t.Fatal(err)
	}
	if len(log.Runs) != 1 {
		t.Fatalf("%d runs, want 1", len(log.Runs))
	}
	return log.Runs[0]
}

// 3.27.6: ruleIndex is the place of the rule in the driver's list. 3.27.9 and
// 3.27.10: whatever is no failure has level none.
func TestSARIFResultsFitTheirRules(t *testing.T) {
	for _, s := range samples() {
		run := readSARIF(t, s.report, Options{All: true})
		for _, result := range run.Results {
			if got := run.Tool.Driver.Rules[result.RuleIndex].ID; got != result.RuleID {
				t.Errorf("%s: result of %s points to the rule %s", s.name, result.RuleID, got)
			}
			if (result.Kind == "fail") == (result.Level == "none") {
				t.Errorf("%s: %s has kind %s and level %s", s.name, result.RuleID, result.Kind, result.Level)
			}
			if place := result.Locations[0].Physical.Artifact; run.Artifacts[*place.Index].Location.URI != place.URI {
				t.Errorf("%s: %s points to artifact %d", s.name, result.RuleID, *place.Index)
			}
		}
	}
}

// What is missing or undecided is as visible as what is wrong: never a pass.
func TestSARIFStandings(t *testing.T) {
	for _, c := range []struct {
		f           finding.Finding
		kind, level string
	}{
		{finding.Finding{Verdict: finding.Met, Grade: finding.Hazard, Due: true}, "pass", "none"},
		{finding.Finding{Verdict: finding.NotApplicable, Grade: finding.Hazard, Due: true}, "notApplicable", "none"},
		{finding.Finding{Verdict: finding.Deficient, Grade: finding.Hazard, Due: true, Holds: true}, "fail", "error"},
		{finding.Finding{Verdict: finding.Unrecorded, Grade: finding.Required, Due: true, Holds: true}, "fail", "error"},
		{finding.Finding{Verdict: finding.Undetermined, Grade: finding.Required, Due: true}, "fail", "warning"},
		{finding.Finding{Verdict: finding.Deficient, Grade: finding.Recommended, Due: true}, "fail", "warning"},
		{finding.Finding{Verdict: finding.Deficient, Grade: finding.Hazard}, "fail", "note"},
		{finding.Finding{Verdict: finding.Variance, Grade: finding.Hazard, Due: true}, "fail", "error"},
		{finding.Finding{Verdict: finding.Variance, Grade: finding.Recommended, Due: true}, "fail", "warning"},
	} {
		if kind, level := sarifStanding(c.f); kind != c.kind || level != c.level {
			t.Errorf("%s %s due %v holds %v: got %s %s, want %s %s", c.f.Verdict, c.f.Grade, c.f.Due, c.f.Holds, kind, level, c.kind, c.level)
		}
	}
}

// 3.27.23 and 3.35: a suppression only where somebody allowed it, with his
// reason.
func TestSARIFSuppressesWhatAVarianceCovers(t *testing.T) {
	for _, result := range readSARIF(t, reportOf(heldJob()), Options{All: true}).Results {
		covered := result.Properties["verdict"] == string(finding.Variance)
		if covered != (len(result.Suppressions) == 1) {
			t.Errorf("%s: verdict %v and %d suppressions", result.RuleID, result.Properties["verdict"], len(result.Suppressions))
		}
		if covered {
			want := sarifSuppression{Kind: "external", Status: "accepted", Justification: variance().Reason}
			if diff := cmp.Diff(want, result.Suppressions[0]); diff != "" {
				t.Errorf("(-want +got):\n%s", diff)
			}
		}
	}
}

// 3.27.17 and appendix B: a fingerprint survives what happens to a record every
// day, and two results never share one.
func TestSARIFFingerprints(t *testing.T) {
	prints := func(j finding.Job) map[string]bool {
		out := map[string]bool{}
		run := readSARIF(t, reportOf(j), Options{All: true})
		for _, result := range run.Results {
			out[result.Fingerprints["requirementAndSubject/v1"]] = true
		}
		if len(out) != len(run.Results) {
			t.Errorf("%d fingerprints for %d results", len(out), len(run.Results))
		}
		return out
	}
	before, after := heldJob(), heldJob()
	after.File, after.SHA256, after.Title = "archive/2026/held.yaml", strings.Repeat("0", 64), "Other words"
	for i := range after.Findings {
		f := &after.Findings[i]
		f.At.Line, f.At.Column, f.At.Path = f.At.Line+100, 1, "/systems/9"
		f.Title, f.Message, f.Measured, f.Limit, f.Why, f.Remedy = "t", "m", "1 ft", "2 ft", "w", "r"
	}
	if diff := cmp.Diff(prints(before), prints(after)); diff != "" {
		t.Errorf("changed by an edit (-before +after):\n%s", diff)
	}
	after.ID = "J-9999"
	for print := range prints(after) {
		if prints(before)[print] {
			t.Errorf("two jobs share %s", print)
		}
	}
}

// RFC 3986: a path with anything in it is a reference that leads back to it.
// Relative names stay relative, so that a code host finds them.
func TestFileURI(t *testing.T) {
	for name, want := range map[string]string{
		"jobs/J-0107.yaml":       "jobs/J-0107.yaml",
		"jobs/a b#c?d%.yaml":     "jobs/a%20b%23c%3Fd%25.yaml",
		"/srv/jobs/J 1.yaml":     "file:///srv/jobs/J%201.yaml",
		"Straße/Röhre.yaml":      "Stra%C3%9Fe/R%C3%B6hre.yaml",
		"a:b.yaml":               "./a:b.yaml",
		"-":                      "-",
		"bad\xffbyte\x1b.yaml":   "bad%EF%BF%BDbyte%1B.yaml",
		"../up/one level.ndjson": "../up/one%20level.ndjson",
	} {
		if got := fileURI(name); got != want {
			t.Errorf("fileURI(%q) = %q, want %q", name, got, want)
		}
	}
}

// 3.14.23: a run that found nothing has an empty array of results, and an input
// that could not be judged is no success (3.20.14).
func TestSARIFOfNothing(t *testing.T) {
	got := render(t, SARIF, reportOf(readyJob()), Options{})
	if !strings.Contains(got, `"results": []`) || !strings.Contains(got, `"executionSuccessful": true`) {
		t.Errorf("no empty results, or no success, in:\n%s", got)
	}
	run := readSARIF(t, errorsOnly(), Options{})
	if run.Invocations[0].Successful || len(run.Invocations[0].Notifications) != 2 {
		t.Errorf("got %+v, want a failed run with two notifications", run.Invocations[0])
	}
	if at := run.Invocations[0].Notifications[0].Locations[0].Physical.Region; at == nil || *at != (sarifRegion{12, 3}) {
		t.Errorf("the first notification stands at %v, want 12:3", at)
	}
	if at := run.Invocations[0].Notifications[1].Locations[0].Physical.Region; at != nil {
		t.Errorf("a line that is not known is given as %v", at)
	}
}
