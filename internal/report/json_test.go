package report

import (
	"encoding/json"
	"errors"
	"strings"
	"testing"
	"testing/iotest"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"

	"github.com/slablint/slablint/internal/finding"
)

func TestJSONLosesNothing(t *testing.T) {
	for _, s := range samples() {
		if s.name == "hostile" {
			continue // JSON text is UTF-8 (RFC 8259, 8.1), so its stray bytes are replaced
		}
		got, err := Read(strings.NewReader(render(t, JSON, s.report, Options{All: true})))
		if err != nil {
			t.Fatalf("%s: %v", s.name, err)
		}
		if diff := cmp.Diff(s.report, got, cmpopts.EquateEmpty()); diff != "" {
			t.Errorf("%s (-saved +read):\n%s", s.name, diff)
		}
	}
}

func TestJSONShowsMetOnlyWhenAskedFor(t *testing.T) {
	quiet := func(v finding.Verdict) bool { return v == finding.Met || v == finding.NotApplicable }
	for _, all := range []bool{false, true} {
		got, err := Read(strings.NewReader(render(t, JSON, reportOf(heldJob()), Options{All: all})))
		if err != nil {
			t.Fatal(err)
		}
		var want []string
		for _, f := range heldJob().Findings {
			if all || !quiet(f.Verdict) {
				want = append(want, f.Requirement)
			}
		}
		var have []string
		for _, f := range got.Jobs[0].Findings {
			have = append(have, f.Requirement)
		}
		if diff := cmp.Diff(want, have); diff != "" {
			t.Errorf("all %v (-want +got):\n%s", all, diff)
		}
	}
}

// A list is a list, also when it is empty: programs count on it.
func TestJSONHasNoNull(t *testing.T) {
	for _, r := range []finding.Report{{}, {Jobs: []finding.Job{{}}}} {
		if got := render(t, JSON, r, Options{}); strings.Contains(got, "null") {
			t.Errorf("null in:\n%s", got)
		}
	}
}

func TestReadRefuses(t *testing.T) {
	good := render(t, JSON, several(), Options{All: true})
	swap := func(old, new string) string {
		t.Helper()
		if !strings.Contains(good, old) {
			t.Fatalf("the sample has no %s", old)
		}
		return strings.Replace(good, old, new, 1)
	}
	for _, c := range []struct{ name, input, want string }{
		{"empty", "", "unexpected end"},
		{"no JSON", "jobs: []", "invalid character"},
		{"other JSON", `{"jobs": []}`, "not a saved report"},
		{"list", `[]`, "cannot unmarshal"},
		{"later version", swap(`"report": 1`, `"report": 2`), "version 2: this program reads version 1"},
		{"version in words", swap(`"report": 1`, `"report": "1"`), "cannot unmarshal"},
		{"cut off", good[:len(good)/2], "unexpected end"},
		{"two reports", good + good, "after top-level value"},
		{"unknown field", swap(`"outcome"`, `"outcomes"`), `unknown field "outcomes"`},
		{"outcome", swap(`"outcome": "ready"`, `"outcome": "fine"`), `/jobs/0/outcome: "fine" is not one of`},
		{"stage", swap(`"stage": "closeout"`, `"stage": "done"`), `/jobs/0/stage: "done" is not one of`},
		{"verdict", swap(`"verdict": "met"`, `"verdict": "passed"`), `/jobs/0/findings/0/verdict: "passed" is not one of`},
		{"grade", swap(`"grade": "hazard"`, `"grade": ""`), `/jobs/0/findings/0/grade: "" is not one of`},
		{"finding's stage", swap(`"stage": "roughed-in"`, `"stage": "later"`), `/jobs/0/findings/0/stage: "later" is not one of`},
		{"basis", swap(`"basis": "published"`, `"basis": "hearsay"`), `/jobs/0/findings/0/source/basis: "hearsay" is not one of`},
	} {
		_, err := Read(strings.NewReader(c.input))
		if err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%s: got %v, want an error with %q", c.name, err, c.want)
		}
	}
	broken := errors.New("disk on fire")
	if _, err := Read(iotest.ErrReader(broken)); !errors.Is(err, broken) {
		t.Errorf("got %v, want %v", err, broken)
	}
}

// Whatever is read without error can be written again and stays the same.
func FuzzRead(f *testing.F) {
	for _, s := range samples() {
		var b strings.Builder
		if err := JSON(&b, s.report, Options{All: true}); err != nil {
			f.Fatal(err)
		}
		f.Add(b.String())
	}
	f.Fuzz(func(t *testing.T, input string) {
		first, err := Read(strings.NewReader(input))
		if err != nil {
			return
		}
		if !json.Valid([]byte(input)) {
			t.Fatalf("read as a report though it is no JSON: %q", input)
		}
		text := render(t, JSON, first, Options{All: true})
		second, err := Read(strings.NewReader(text))
		if err != nil {
			t.Fatalf("%v in what was written:\n%s", err, text)
		}
		if diff := cmp.Diff(first, second, cmpopts.EquateEmpty()); diff != "" {
			t.Errorf("(-first +second):\n%s", diff)
		}
		render(t, Text, first, Options{Width: 40, All: true})
	})
}
