package summary

import (
	"bytes"
	"encoding/csv"
	"strings"
	"testing"
	"time"

	"github.com/slablint/slablint/internal/finding"
)

func counted() Summary {
	day := func(s string) time.Time { d, _ := time.Parse(time.DateOnly, s); return d }
	c := NewCounter(day("2028-03-21"))
	c.Add(Facts{Job: "J-1", Ready: true, Profiles: []string{"a"}, Month: "2026-03", Crew: []string{"RM-1"}, Reduction: 95, Reduced: true, RetestDue: day("2028-03-21")})
	c.Add(Facts{Job: "J-2", Profiles: []string{"a", "b"}, Month: "2026-04", Crew: []string{"RM-1", "=2+2"}, Open: []string{"x.b", "x.a"}, Reduction: 94.99, Reduced: true, RetestDue: day("2028-03-22")})
	c.Add(Facts{Job: "J-3", Profiles: []string{"b"}, Open: []string{"x.a"}, Reduction: -3, Reduced: true})
	c.Add(Facts{Job: "J-4", Profiles: []string{"b"}, Open: []string{"x.a"}})
	c.Fail([]finding.Error{{File: "e.yaml", Line: 1, Column: 1, Message: "broken"}})
	return c.Summary()
}

func TestCounts(t *testing.T) {
	s := counted()
	if s.Jobs != 4 || s.Ready != 1 || s.Hold != 3 || s.NotJudged != 1 {
		t.Errorf("%+v", s)
	}
	if len(s.Requirements) != 2 || s.Requirements[0] != (Count{"x.a", 3}) || s.Requirements[1] != (Count{"x.b", 1}) {
		t.Errorf("requirements %v", s.Requirements)
	}
	if s.Profiles[0] != (Split{"a", 1, 1}) || s.Profiles[1] != (Split{"b", 0, 3}) {
		t.Errorf("profiles %v", s.Profiles)
	}
	if len(s.Months) != 3 || s.Months[2] != (Split{"not recorded", 0, 2}) {
		t.Errorf("months %v", s.Months)
	}
	want := map[string]int{"95 % or more": 1, "90 to 95 %": 1, "went up": 1, "not computable": 1}
	for _, b := range s.Reduction {
		if b.Jobs != want[b.Reduction] {
			t.Errorf("reduction %s: %d", b.Reduction, b.Jobs)
		}
	}
	if len(s.RetestDue) != 1 || s.RetestDue[0].Job != "J-1" {
		t.Errorf("due on the very day counts, later does not: %v", s.RetestDue)
	}
}

func TestFormats(t *testing.T) {
	for _, format := range formats() {
		var first, second bytes.Buffer
		if err := Write(&first, counted(), format); err != nil {
			t.Fatal(err)
		}
		if err := Write(&second, counted(), format); err != nil || first.String() != second.String() {
			t.Errorf("%s: not the same bytes twice", format)
		}
		if !strings.Contains(first.String(), "x.a") || !strings.Contains(first.String(), "broken") && format != "csv" {
			t.Errorf("%s: %s", format, first.String())
		}
	}
	if Write(&bytes.Buffer{}, counted(), "xml") == nil {
		t.Error("an unknown format was written")
	}
}

// A credential that looks like a formula stays a text in a spreadsheet.
func TestCSVIsHarmless(t *testing.T) {
	var out bytes.Buffer
	if err := Write(&out, counted(), "csv"); err != nil {
		t.Fatal(err)
	}
	rows, err := csv.NewReader(&out).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	found := false
	for _, row := range rows {
		found = found || row[1] == "'=2+2"
	}
	if !found {
		t.Error("the formula was not made harmless")
	}
}
