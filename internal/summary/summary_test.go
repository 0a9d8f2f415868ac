package summary

import (
	"bytes"
	"encoding/csv"
	"fmt"
	"strings"
	"testing"
	"time"

	"github.com/slablint/slablint/internal/finding"
)

func counted() Summary {
	day := func(s string) time.Time { d, _ := time.Parse(time.DateOnly, s); return d }
	c := NewCounter(day("2028-03-21"))
	c.Add(Facts{Job: "J-1", Ready: true, Profiles: []string{"a"}, Month: "2026-03", Crew: []string{"RM-1"}, Reduction: 95, Reduced: true, RetestDue: day("2028-03-21")})
	c.Add(Facts{Job: "J-2", Profiles: []string{"a", "b"}, Month: "2026-04", Crew: []string{"RM-1", "=2+2"}, Open: []Held{{"x.b", "B holds"}, {"x.a", "A holds"}}, Reduction: 94.99, Reduced: true, RetestDue: day("2028-03-22")})
	c.Add(Facts{Job: "J-3", Profiles: []string{"b"}, Open: []Held{{"x.a", "A holds"}}, Reduction: -3, Reduced: true})
	c.Add(Facts{Job: "J-4", Profiles: []string{"b"}, Open: []Held{{"x.a", "A holds"}}})
	c.Fail([]finding.Error{{File: "e.yaml", Line: 1, Column: 1, Message: "broken"}})
	return c.Summary()
}

func TestCounts(t *testing.T) {
	s := counted()
	if s.Jobs != 4 || s.Ready != 1 || s.Hold != 3 || s.NotJudged != 1 {
		t.Errorf("%+v", s)
	}
	if len(s.Requirements) != 2 || s.Requirements[0] != (Count{"x.a", "A holds", 3}) || s.Requirements[1] != (Count{"x.b", "B holds", 1}) {
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

// Bars are in proportion, requirements carry their titles, and what is beyond
// the most frequent is folded.
func TestPage(t *testing.T) {
	c := NewCounter(time.Time{})
	for i := range 20 {
		f := Facts{Job: "J"}
		for k := range i + 1 {
			f.Open = append(f.Open, Held{fmt.Sprintf("x.r%02d", k), fmt.Sprintf("Rule <%02d>", k)})
		}
		c.Add(f)
	}
	var out bytes.Buffer
	if err := Write(&out, c.Summary(), "html"); err != nil {
		t.Fatal(err)
	}
	page := out.String()
	for _, want := range []string{
		`<bdi>Rule &lt;00&gt;</bdi> <code>x.r00</code></span><span class="bar" style="width:80%"></span><b>20</b>`,
		`<code>x.r10</code></span><span class="bar" style="width:40%"></span><b>10</b>`,
		`<summary>5 more</summary><ol start="16">`,
	} {
		if !strings.Contains(page, want) {
			t.Errorf("the page lacks %s", want)
		}
	}
	if strings.Index(page, "x.r14") > strings.Index(page, "<details>") || strings.Index(page, "x.r15") < strings.Index(page, "<details>") {
		t.Error("the fold is not after the fifteenth")
	}
}
