// Package summary counts over an archive: how many jobs are ready, what holds
// them, how far radon fell, and whose retest is due.
package summary

import (
	"cmp"
	"encoding/json"
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
	Open      []Held   // requirements that hold the job, each once
	Reduction float64  // percent
	Reduced   bool     // whether a reduction could be computed
	RetestDue time.Time
}

// Held is a requirement that holds a job.
type Held struct{ Requirement, Title string }

// FactsOf reads what is counted from a judged job and its derived record.
func FactsOf(job finding.Job, input map[string]any) Facts {
	f := Facts{Job: job.ID, File: job.File, Ready: job.Outcome == finding.Ready, Profiles: job.Profiles}
	for _, finding := range job.Findings {
		held := Held{finding.Requirement, finding.Title}
		if finding.Holds && !slices.Contains(f.Open, held) {
			f.Open = append(f.Open, held)
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
		fields, _ := entry.(map[string]any)
		name, _ := fields["credential"].(string)
		if name == "" {
			name, _ = fields["id"].(string)
		}
		f.Crew = append(f.Crew, name)
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
	Requirements []Count         `json:"requirements"` // that hold jobs
	Profiles     []Split         `json:"profiles"`
	Months       []Split         `json:"months"`
	Crew         []Split         `json:"crew"`
	Reduction    []Band          `json:"reduction"`
	RetestDue    []Due           `json:"retest_due"`
	Errors       []finding.Error `json:"errors"`
}

// Count is a requirement and how many jobs it holds.
type Count struct {
	Requirement string `json:"requirement"`
	Title       string `json:"title"`
	Jobs        int    `json:"jobs"`
}

// Split is how the jobs of one group turned out.
type Split struct {
	Name  string `json:"name"`
	Ready int    `json:"ready"`
	Hold  int    `json:"hold"`
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
	open    map[Held]int
	splits  [3]map[string]*Split
	reduced []int
}

// NewCounter starts a count; retests due by asOf are listed.
func NewCounter(asOf time.Time) *Counter {
	c := &Counter{asOf: asOf, open: map[Held]int{}, reduced: make([]int, len(bands)+1)}
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
	for _, held := range f.Open {
		c.open[held]++
	}
	month := f.Month
	if month == "" {
		month = "not recorded"
	}
	for i, names := range [][]string{f.Profiles, {month}, f.Crew} {
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
		}
	}
	c.reduced[band(f)]++
	if !f.RetestDue.IsZero() && !f.RetestDue.After(c.asOf) {
		c.summary.RetestDue = append(c.summary.RetestDue, Due{f.Job, f.File, f.RetestDue.Format(time.DateOnly)})
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
	for held, jobs := range c.open {
		s.Requirements = append(s.Requirements, Count{held.Requirement, held.Title, jobs})
	}
	slices.SortFunc(s.Requirements, func(a, b Count) int {
		return cmp.Or(-cmp.Compare(a.Jobs, b.Jobs), cmp.Compare(a.Requirement, b.Requirement), cmp.Compare(a.Title, b.Title))
	})
	s.Profiles, s.Months, s.Crew = sorted(c.splits[0]), sorted(c.splits[1]), sorted(c.splits[2])
	for i, b := range bands {
		s.Reduction = append(s.Reduction, Band{b.name, c.reduced[i]})
	}
	s.Reduction = append(s.Reduction, Band{"not computable", c.reduced[len(bands)]})
	slices.SortFunc(s.RetestDue, func(a, b Due) int { return cmp.Or(cmp.Compare(a.Due, b.Due), cmp.Compare(a.Job, b.Job)) })
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
	out := [][]string{{"group", "name", "jobs", "ready", "hold"}, {"all", "jobs", n(s.Jobs), n(s.Ready), n(s.Hold)}, {"all", "not judged", n(s.NotJudged), "", ""}}
	for _, r := range s.Requirements {
		out = append(out, []string{"requirement", r.Requirement, n(r.Jobs), "", n(r.Jobs)})
	}
	for _, group := range []struct {
		name   string
		splits []Split
	}{{"profile", s.Profiles}, {"month", s.Months}, {"crew", s.Crew}} {
		for _, split := range group.splits {
			out = append(out, []string{group.name, split.Name, n(split.Ready + split.Hold), n(split.Ready), n(split.Hold)})
		}
	}
	for _, b := range s.Reduction {
		out = append(out, []string{"reduction", b.Reduction, n(b.Jobs), "", ""})
	}
	for _, d := range s.RetestDue {
		out = append(out, []string{"retest due", d.Job, d.Due, "", ""})
	}
	return out
}
