package report

import (
	"bytes"
	_ "embed"
	"encoding/base64"
	"fmt"
	"html/template"
	"io"
	"slices"
	"strings"

	"github.com/slablint/slablint/internal/finding"
)

//go:embed page.tmpl
var pageText string

//go:embed page.css
var pageStyle string

var pageTemplate = template.Must(template.New("page").Parse(pageText))

// HTML writes one self-contained page: no script is needed to read it and
// nothing is fetched. Several jobs share a page with an index in front.
func HTML(w io.Writer, r finding.Report, o Options) error {
	page := htmlPage{Report: r, Style: template.CSS(pageStyle)} //nolint:gosec // the style is part of the program
	page.Ready, page.Held = 0, 0
	for i, job := range r.Jobs {
		page.Jobs = append(page.Jobs, htmlJobOf(i, job, o))
		if job.Outcome == finding.Ready {
			page.Ready++
		} else {
			page.Held++
		}
	}
	page.Frequent = frequent(r.Jobs)
	page.Title = "Job records"
	if len(r.Jobs) == 1 {
		page.Title = r.Jobs[0].ID
	}
	var out bytes.Buffer
	if err := pageTemplate.Execute(&out, page); err != nil {
		return fmt.Errorf("page: %w", err)
	}
	_, err := w.Write(out.Bytes())
	return err
}

// htmlPage is what the template shows.
type htmlPage struct {
	finding.Report
	Title       string
	Style       template.CSS
	Jobs        []htmlJob
	Ready, Held int
	Frequent    []frequency
}

// htmlJob is one job, sorted into the parts of its page.
type htmlJob struct {
	finding.Job
	Anchor      string
	Open        []group // deficient and undetermined, by topic
	Unrecorded  []finding.Finding
	Covered     []finding.Finding
	Later       []finding.Finding
	Fine        []group // met
	Exempt      []finding.Finding
	Known       []finding.DerivedValue // that could be computed
	Lacking     []finding.DerivedValue
	Drawings    []drawing
	Pictures    []picture
	Outstanding int
}

type drawing struct {
	Name, Title, Alt string
	SVG              template.HTML
}

type picture struct {
	ID, Caption, Shows string
	Source             template.URL
}

func htmlJobOf(i int, job finding.Job, o Options) htmlJob {
	h := htmlJob{Job: job, Anchor: fmt.Sprintf("job-%d", i+1)}
	var open, met []finding.Finding
	for _, f := range job.Findings {
		switch {
		case f.Verdict == finding.Met:
			met = append(met, f)
		case f.Verdict == finding.NotApplicable:
			h.Exempt = append(h.Exempt, f)
		case f.Verdict == finding.Variance:
			h.Covered = append(h.Covered, f)
		case !f.Due && !o.All:
			h.Later = append(h.Later, f)
		case f.Verdict == finding.Unrecorded:
			h.Unrecorded = append(h.Unrecorded, f)
		default:
			open = append(open, f)
		}
	}
	h.Open, h.Fine = byTopic(open), byTopic(met)
	h.Outstanding = len(open) + len(h.Unrecorded)
	for _, v := range job.Values {
		if v.Text != "" {
			h.Known = append(h.Known, v)
		} else if len(v.Lacks) > 0 {
			h.Lacking = append(h.Lacking, v)
		}
	}
	for _, f := range job.Figures {
		h.Drawings = append(h.Drawings, drawing{f.Name, f.Title, f.Alt, template.HTML(f.SVG)}) //nolint:gosec // drawn by this program, its texts escaped there
	}
	for _, p := range job.Photos {
		source := "data:" + p.MediaType + ";base64," + base64.StdEncoding.EncodeToString(p.Data)
		h.Pictures = append(h.Pictures, picture{p.ID, p.Caption, strings.Join(p.Shows, ", "), template.URL(source)}) //nolint:gosec // media types are checked by the schema
	}
	return h
}

// frequency is how many jobs a requirement is open in.
type frequency struct {
	Requirement, Title string
	Jobs               int
	Share              int // of the longest bar, percent
}

// mostFrequent bounds the chart of the index.
const mostFrequent = 12

// frequent counts open findings over the jobs, most frequent first.
func frequent(jobs []finding.Job) []frequency {
	if len(jobs) < 2 {
		return nil
	}
	count, titles := map[string]int{}, map[string]string{}
	for _, job := range jobs {
		seen := map[string]bool{}
		for _, f := range job.Findings {
			if f.Holds && !seen[f.Requirement] {
				seen[f.Requirement] = true
				count[f.Requirement]++
				titles[f.Requirement] = f.Title
			}
		}
	}
	var out []frequency
	for name, n := range count {
		out = append(out, frequency{Requirement: name, Title: titles[name], Jobs: n})
	}
	slices.SortFunc(out, func(a, b frequency) int {
		if a.Jobs != b.Jobs {
			return b.Jobs - a.Jobs
		}
		return strings.Compare(a.Requirement, b.Requirement)
	})
	out = out[:min(len(out), mostFrequent)]
	for i := range out {
		out[i].Share = max(2, 100*out[i].Jobs/out[0].Jobs)
	}
	return out
}

// Held is true when the job is on hold; templates ask it.
func (h htmlJob) Held() bool { return h.Outcome != finding.Ready }

// Count is how many subjects have a verdict.
func (h htmlJob) Count(verdict string) int { return h.Counts.Of(finding.Verdict(verdict)) }

// Title and Findings let the template read a group.
func (g group) Title() string               { return g.title }
func (g group) Findings() []finding.Finding { return g.findings }
