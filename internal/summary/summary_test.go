package summary

import (
	"bytes"
	"encoding/csv"
	"encoding/json"
	"fmt"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/slablint/slablint/internal/finding"
)

func counted() Summary {
	day := func(s string) time.Time { d, _ := time.Parse(time.DateOnly, s); return d }
	c := NewCounter(day("2028-03-21"))
	c.Add(Facts{Job: "J-1", Ready: true, Profiles: []string{"a"}, Month: "2026-03", Crew: []string{"RM-1"}, Reduction: 95, Reduced: true, RetestDue: day("2028-03-21")})
	c.Add(Facts{Job: "J-2", Profiles: []string{"a", "b"}, Month: "2026-04", Crew: []string{"RM-1", "=2+2"}, Open: []Open{{"x.b", "B holds", finding.Required}, {"x.a", "A holds", finding.Hazard}, {"x.a", "A holds", finding.Hazard}}, Reduction: 94.99, Reduced: true, RetestDue: day("2028-03-22")})
	c.Add(Facts{Job: "J-3", Profiles: []string{"b"}, Open: []Open{{"x.a", "A holds", finding.Hazard}}, Reduction: -3, Reduced: true})
	c.Add(Facts{Job: "J-4", Profiles: []string{"b"}, Open: []Open{{"x.a", "A holds", finding.Hazard}}})
	c.Fail([]finding.Error{{File: "e.yaml", Line: 1, Column: 1, Message: "broken"}})
	return c.Summary()
}

func TestCounts(t *testing.T) {
	s := counted()
	if s.Jobs != 4 || s.Ready != 1 || s.Hold != 3 || s.NotJudged != 1 {
		t.Errorf("%+v", s)
	}
	if len(s.Requirements) != 2 || s.Requirements[0] != (Count{"x.a", "A holds", 3, 4}) || s.Requirements[1] != (Count{"x.b", "B holds", 1, 1}) {
		t.Errorf("requirements %v", s.Requirements)
	}
	if len(s.Grades) != 2 || s.Grades[0] != (Count{"hazard", "", 3, 4}) || s.Grades[1] != (Count{"required", "", 1, 1}) {
		t.Errorf("grades %v", s.Grades)
	}
	if s.Profiles[0] != (Split{"a", 1, 1, 3}) || s.Profiles[1] != (Split{"b", 0, 3, 5}) {
		t.Errorf("profiles %v", s.Profiles)
	}
	if len(s.Months) != 3 || s.Months[2] != (Split{"not recorded", 0, 2, 2}) {
		t.Errorf("months %v", s.Months)
	}
	if want := []Split{{"=2+2", 0, 1, 3}, {"RM-1", 1, 1, 3}, {"not recorded", 0, 2, 2}}; !slices.Equal(s.Crew, want) {
		t.Errorf("crew %v", s.Crew)
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
		if !strings.Contains(first.String(), "x.a") || !strings.Contains(first.String(), "broken") {
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

// What FactsOf reads stands where the pipeline puts it; the test of the command
// reads real records.
func TestFacts(t *testing.T) {
	n := func(s string) map[string]any { return map[string]any{"si": json.Number(s)} }
	input := map[string]any{
		"job": map[string]any{
			"dates": map[string]any{"completed": n("1773705600")}, // 2026-03-17
			"crew":  []any{map[string]any{"id": "c", "credential": "RM-1"}, map[string]any{"id": "d"}, map[string]any{"id": "e", "credential": "RM-1"}},
		},
		"derived": map[string]any{"retest_due": n("1836777600"), "radon": map[string]any{"reduction": n("87.5")}},
	}
	job := finding.Job{ID: "J-1", File: "j.yaml", Outcome: finding.Ready, Profiles: []string{"a"}, Findings: []finding.Finding{
		{Requirement: "x.a", Grade: finding.Hazard, Holds: true}, {Requirement: "x.b", Grade: finding.Hazard},
	}}
	f := FactsOf(job, input)
	if f.Month != "2026-03" || !slices.Equal(f.Crew, []string{"RM-1", "d"}) || f.Reduction != 87.5 || !f.Reduced ||
		f.RetestDue.Format(time.DateOnly) != "2028-03-16" || !slices.Equal(f.Open, []Open{{"x.a", "", finding.Hazard}}) || !f.Ready {
		t.Errorf("%+v", f)
	}
	if f := FactsOf(job, map[string]any{}); f.Month != "" || f.Reduced || !f.RetestDue.IsZero() || f.Crew != nil {
		t.Errorf("of nothing: %+v", f)
	}
}

// An empty archive has empty lists, no missing ones, in every format.
func TestNothing(t *testing.T) {
	for _, format := range formats() {
		var out bytes.Buffer
		if err := Write(&out, NewCounter(time.Time{}).Summary(), format); err != nil || strings.Contains(out.String(), "null") {
			t.Errorf("%s: %v\n%s", format, err, out.String())
		}
	}
}

// Nothing in a record can become markup or move the cursor of a terminal.
func TestHostileNames(t *testing.T) {
	const evil = "<script>\x1b[2J\u202e"
	c := NewCounter(time.Time{})
	c.Add(Facts{Job: evil, File: evil, Profiles: []string{evil}, Month: "2026-01", Crew: []string{evil}, RetestDue: time.Time{}.Add(1)})
	c.asOf = time.Time{}.Add(2)
	c.Fail([]finding.Error{{File: evil, Message: evil}})
	var page, lines bytes.Buffer
	if err := Write(&page, c.Summary(), "html"); err != nil || strings.Contains(page.String(), "<script") {
		t.Errorf("%v\n%s", err, page.String())
	}
	if err := Write(&lines, c.Summary(), "text"); err != nil || strings.ContainsAny(lines.String(), "\x1b\u202e") {
		t.Errorf("%v\n%q", err, lines.String())
	}
}

// The longest bar is as long as its chart, the others in proportion.
func TestBars(t *testing.T) {
	var out bytes.Buffer
	if err := Write(&out, counted(), "html"); err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{
		`<code>x.a</code></span><span class="bar" style="width:80%"></span><b>3</b>`, `<code>x.b</code></span><span class="bar" style="width:26%"></span><b>1</b>`,
		`hazard</span><span class="measure"><span class="bar" style="width:80%"></span><b>4</b> in 3 jobs`, `<bdi>2026-03</bdi></th><td class="n">1</td><td class="n">0</td>`,
		`style="width:26%"></span><span class="bar" style="width:0%">`,
	} {
		if !strings.Contains(out.String(), want) {
			t.Errorf("lacks %s", want)
		}
	}
}

// Bars are in proportion, requirements carry their titles, and what is beyond
// the most frequent is folded.
func TestPage(t *testing.T) {
	c := NewCounter(time.Time{})
	for i := range 20 {
		f := Facts{Job: "J"}
		for k := range i + 1 {
			f.Open = append(f.Open, Open{fmt.Sprintf("x.r%02d", k), fmt.Sprintf("Rule <%02d>", k), finding.Required})
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
