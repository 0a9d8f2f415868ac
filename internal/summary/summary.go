// Package summary counts over an archive: how many jobs are ready, what holds
// them, how far radon fell, and whose retest is due.
package summary

import (
	"cmp"
	"encoding/json"
	"fmt"
	"slices"
	"strconv"
	"time"

	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/record"
)

// Facts is what a summary keeps of one job.
type Facts struct {
	Job       string
	File      string
	Ready     bool
	Profiles  []string
	Month     string   // of completion, such as 2026-03; "" when not recorded
	Crew      []string // credentials, or ids where none is recorded
	Open      []Open   // findings that hold the job
	Reduction float64  // percent
	Reduced   bool     // whether a reduction could be computed
	RetestDue time.Time
}

// Open is one finding that holds a job.
type Open struct {
	Requirement string
	Title       string // of the requirement
	Grade       finding.Grade
}

// FactsOf reads what is counted from a judged job and its derived record.
func FactsOf(job finding.Job, input map[string]any) Facts {
	f := Facts{Job: job.ID, File: job.File, Ready: job.Outcome == finding.Ready, Profiles: job.Profiles}
	for _, finding := range job.Findings {
		if finding.Holds {
			f.Open = append(f.Open, Open{finding.Requirement, finding.Title, finding.Grade})
		}
	}
	if completed, ok := number(input, "/job/dates/completed/si"); ok {
		f.Month = time.Unix(int64(completed), 0).UTC().Format("2006-01")
	}
	if due, ok := number(input, "/derived/retest_due/si"); ok {
		f.RetestDue = time.Unix(int64(due), 0).UTC()
	}
	f.Reduction, f.Reduced = number(input, "/derived/radon/reduction/si")
	crew, _ := record.At(input, "/job/crew")
	list, _ := crew.([]any)
	for _, entry := range list {
		name, _ := record.Get(entry, "credential").(string)
		if name == "" {
			name, _ = record.Get(entry, "id").(string)
		}
		if !slices.Contains(f.Crew, name) {
			f.Crew = append(f.Crew, name)
		}
	}
	return f
}

func number(input map[string]any, at place.Pointer) (float64, bool) {
	value, _ := record.At(input, at)
	n, ok := value.(json.Number)
	if !ok {
		return 0, false
	}
	x, err := n.Float64()
	return x, err == nil
}

// Summary is the count over all jobs. Lists are sorted: most jobs first where
// they count, by name or month otherwise.
type Summary struct {
	AsOf         string          `json:"as_of"`
	Jobs         int             `json:"jobs"`
	Ready        int             `json:"ready"`
	Hold         int             `json:"hold"`
	NotJudged    int             `json:"not_judged"`
	Grades       []Count         `json:"grades"`       // of what holds jobs, gravest first
	Requirements []Count         `json:"requirements"` // that hold jobs
	Profiles     []Split         `json:"profiles"`
	Months       []Split         `json:"months"`
	Crew         []Split         `json:"crew"`
	Reduction    []Band          `json:"reduction"`
	RetestDue    []Due           `json:"retest_due"`
	Errors       []finding.Error `json:"errors"`
}

// Count is a requirement or a grade, how many jobs it holds and by how many
// findings.
type Count struct {
	Name     string `json:"name"`
	Title    string `json:"title,omitempty"` // of a requirement
	Jobs     int    `json:"jobs"`
	Findings int    `json:"findings"`
}

// Split is how the jobs of one group turned out.
type Split struct {
	Name     string `json:"name"`
	Ready    int    `json:"ready"`
	Hold     int    `json:"hold"`
	Findings int    `json:"findings"` // that hold jobs of the group
}

// Band counts jobs by radon reduction, percent.
type Band struct {
	Reduction string `json:"reduction"`
	Jobs      int    `json:"jobs"`
}

// Due is a job whose retest is due.
type Due struct {
	Job  string `json:"job"`
	File string `json:"file"`
	Due  string `json:"due"`
}

// bands are the edges of the reduction distribution, percent.
var bands = []struct {
	name string
	from float64
}{
	{"95 % or more", 95}, {"90 to 95 %", 90}, {"80 to 90 %", 80}, {"50 to 80 %", 50}, {"0 to 50 %", 0}, {"went up", -1e18},
}

// Counter adds up jobs one by one, in memory that does not grow with findings.
type Counter struct {
	asOf    time.Time
	summary Summary
	open    map[string]*Count // by requirement
	grades  map[string]*Count
	splits  [3]map[string]*Split
	reduced []int
}

// NewCounter starts a count; retests due by asOf are listed.
func NewCounter(asOf time.Time) *Counter {
	c := &Counter{asOf: asOf, open: map[string]*Count{}, grades: map[string]*Count{}, reduced: make([]int, len(bands)+1)}
	for i := range c.splits {
		c.splits[i] = map[string]*Split{}
	}
	return c
}

// Add counts one job.
func (c *Counter) Add(f Facts) {
	c.summary.Jobs++
	if f.Ready {
		c.summary.Ready++
	} else {
		c.summary.Hold++
	}
	requirements, grades := make([]string, len(f.Open)), make([]string, len(f.Open))
	for i, o := range f.Open {
		requirements[i], grades[i] = o.Requirement, string(o.Grade)
	}
	tally(c.open, requirements)
	tally(c.grades, grades)
	for _, o := range f.Open {
		c.open[o.Requirement].Title = o.Title
	}
	months, crew := []string{cmp.Or(f.Month, unknown)}, f.Crew
	if len(crew) == 0 {
		crew = []string{unknown}
	}
	for i, names := range [][]string{f.Profiles, months, crew} {
		for _, name := range names {
			s := c.splits[i][name]
			if s == nil {
				s = &Split{Name: name}
				c.splits[i][name] = s
			}
			if f.Ready {
				s.Ready++
			} else {
				s.Hold++
			}
			s.Findings += len(f.Open)
		}
	}
	c.reduced[band(f)]++
	if !f.RetestDue.IsZero() && !f.RetestDue.After(c.asOf) {
		c.summary.RetestDue = append(c.summary.RetestDue, Due{f.Job, f.File, f.RetestDue.Format(time.DateOnly)})
	}
}

// unknown is the group of jobs that do not say which they belong to.
const unknown = "not recorded"

// tally counts the findings of one job under their names.
func tally(counts map[string]*Count, names []string) {
	for i, name := range names {
		n := counts[name]
		if n == nil {
			n = &Count{Name: name}
			counts[name] = n
		}
		n.Findings++
		if !slices.Contains(names[:i], name) {
			n.Jobs++
		}
	}
}

func band(f Facts) int {
	if f.Reduced {
		for i, b := range bands {
			if f.Reduction >= b.from {
				return i
			}
		}
	}
	return len(bands)
}

// Fail counts records that could not be judged.
func (c *Counter) Fail(errs []finding.Error) {
	c.summary.NotJudged++
	c.summary.Errors = append(c.summary.Errors, errs...)
}

// Summary closes the count.
func (c *Counter) Summary() Summary {
	s := c.summary
	s.AsOf = c.asOf.Format(time.DateOnly)
	s.Grades, s.Requirements = []Count{}, []Count{}
	s.RetestDue, s.Errors = append([]Due{}, s.RetestDue...), append([]finding.Error{}, s.Errors...)
	for _, grade := range []finding.Grade{finding.Hazard, finding.Required, finding.Recommended} {
		if n := c.grades[string(grade)]; n != nil {
			s.Grades = append(s.Grades, *n)
		}
	}
	for _, n := range c.open {
		s.Requirements = append(s.Requirements, *n)
	}
	slices.SortFunc(s.Requirements, func(a, b Count) int {
		return cmp.Or(-cmp.Compare(a.Jobs, b.Jobs), -cmp.Compare(a.Findings, b.Findings), cmp.Compare(a.Name, b.Name))
	})
	s.Profiles, s.Months, s.Crew = sorted(c.splits[0]), sorted(c.splits[1]), sorted(c.splits[2])
	for i, b := range bands {
		s.Reduction = append(s.Reduction, Band{b.name, c.reduced[i]})
	}
	s.Reduction = append(s.Reduction, Band{"not computable", c.reduced[len(bands)]})
	slices.SortFunc(s.RetestDue, func(a, b Due) int {
		return cmp.Or(cmp.Compare(a.Due, b.Due), cmp.Compare(a.Job, b.Job), cmp.Compare(a.File, b.File))
	})
	return s
}

func sorted(splits map[string]*Split) []Split {
	out := make([]Split, 0, len(splits))
	for _, s := range splits {
		out = append(out, *s)
	}
	slices.SortFunc(out, func(a, b Split) int { return cmp.Compare(a.Name, b.Name) })
	return out
}

// rows is the summary as a table, for CSV and text.
func (s Summary) rows() [][]string {
	n := strconv.Itoa
	out := [][]string{
		{"group", "name", "jobs", "ready", "hold", "findings", "place", "day"},
		{"all", "jobs", n(s.Jobs), n(s.Ready), n(s.Hold), "", "", ""},
		{"all", "not judged", n(s.NotJudged), "", "", "", "", ""},
	}
	for _, group := range []struct {
		name   string
		counts []Count
	}{{"grade", s.Grades}, {"requirement", s.Requirements}} {
		for _, c := range group.counts {
			out = append(out, []string{group.name, c.Name, n(c.Jobs), "", n(c.Jobs), n(c.Findings), "", ""})
		}
	}
	for _, group := range []struct {
		name   string
		splits []Split
	}{{"profile", s.Profiles}, {"month", s.Months}, {"crew", s.Crew}} {
		for _, split := range group.splits {
			out = append(out, []string{group.name, split.Name, n(split.Ready + split.Hold), n(split.Ready), n(split.Hold), n(split.Findings), "", ""})
		}
	}
	for _, b := range s.Reduction {
		out = append(out, []string{"reduction", b.Reduction, n(b.Jobs), "", "", "", "", ""})
	}
	for _, d := range s.RetestDue {
		out = append(out, []string{"retest due", d.Job, "1", "", "", "", d.File, d.Due})
	}
	for _, e := range s.Errors {
		out = append(out, []string{"not judged", e.Message, "", "", "", "", fmt.Sprintf("%s:%d:%d", e.File, e.Line, e.Column), ""})
	}
	return out
}
