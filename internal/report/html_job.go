package report

import (
	"cmp"
	"encoding/base64"
	"fmt"
	"html/template"
	"regexp"
	"slices"
	"strings"

	"github.com/slablint/slablint/internal/finding"
)

// htmlJob is one job, sorted into the parts of its page.
type htmlJob struct {
	finding.Job
	Anchor     string
	Many       bool // whether other jobs share the page, so that headings stand one deeper
	Twin       bool // whether another job of the page has the same id
	Open       []htmlGroup
	Unrecorded []htmlGroup
	Covered    []htmlItem
	Later      []htmlItem
	Fine       []htmlGroup
	Exempt     []htmlItem
	Values     []about[finding.DerivedValue]
	Lacking    []finding.DerivedValue
	Readings   []about[finding.Reading]
	Drawings   []htmlFigure
	Pictures   []htmlPhoto
}

// htmlGroup is what was found at one place of the job.
type htmlGroup struct {
	Title string
	Items []htmlItem
}

// htmlItem is what was found of one requirement: what all its subjects have in
// common is said once.
type htmlItem struct {
	finding.Finding
	All []finding.Finding
}

// about are values of one thing.
type about[T any] struct {
	Group, Subject string
	List           []T
}

type htmlFigure struct {
	Anchor string
	finding.Figure
	Drawing template.HTML
}

type htmlPhoto struct {
	Caption, Shows string
	Source         template.URL
}

func htmlJobOf(i int, job finding.Job, many bool, styles *styleOnce) htmlJob {
	h := htmlJob{Job: job, Anchor: fmt.Sprintf("job-%d", i+1), Many: many}
	var open, unrecorded, met, covered, later, exempt []finding.Finding
	for _, f := range job.Findings {
		switch {
		case f.Verdict == finding.Met:
			met = append(met, f)
		case f.Verdict == finding.NotApplicable:
			exempt = append(exempt, f)
		case f.Verdict == finding.Variance:
			covered = append(covered, f)
		case !f.Due:
			later = append(later, f)
		case f.Verdict == finding.Unrecorded:
			unrecorded = append(unrecorded, f)
		default:
			open = append(open, f)
		}
	}
	h.Open, h.Unrecorded, h.Fine = htmlGroups(open), htmlGroups(unrecorded), htmlGroups(met)
	worstFirst(h.Open)
	worstFirst(h.Unrecorded)
	h.Covered, h.Later, h.Exempt = htmlItems(covered), htmlItems(later), htmlItems(exempt)
	for _, v := range job.Values {
		if v.Text != "" {
			h.Values = appendAbout(h.Values, v.Group, v.Subject, v)
		} else if len(v.Lacks) > 0 {
			h.Lacking = append(h.Lacking, v)
		}
	}
	for _, r := range job.Readings {
		h.Readings = appendAbout(h.Readings, r.Group, "", r)
	}
	for k, f := range job.Figures {
		h.Drawings = append(h.Drawings, htmlFigure{fmt.Sprintf("%s-figure-%d", h.Anchor, k+1), f, styles.drawing(f.SVG)})
	}
	for _, p := range job.Photos {
		source := "data:" + p.MediaType + ";base64," + base64.StdEncoding.EncodeToString(p.Data)
		h.Pictures = append(h.Pictures, htmlPhoto{cmp.Or(p.Caption, p.ID), strings.Join(p.Shows, ", "), template.URL(source)}) //nolint:gosec // a picture, whatever it holds
	}
	return h
}

func htmlGroups(findings []finding.Finding) []htmlGroup {
	var out []htmlGroup
	for _, g := range byTopic(findings) {
		out = append(out, htmlGroup{g.title, htmlItems(g.findings)})
	}
	return out
}

// htmlItems puts subjects together of which the same is to be said.
func htmlItems(findings []finding.Finding) []htmlItem {
	type common struct {
		explanation
		verdict finding.Verdict
		grade   finding.Grade
		holds   bool
		title   string
	}
	var out []htmlItem
	at := map[common]int{}
	for _, f := range findings {
		key := common{explanation{f.Requirement, f.Why, f.Source.String(), f.Remedy}, f.Verdict, f.Grade, f.Holds, f.Title}
		if f.Verdict == finding.Met || f.Verdict == finding.NotApplicable {
			key.explanation = explanation{requirement: f.Requirement}
		}
		i, seen := at[key]
		if !seen {
			i = len(out)
			at[key] = i
			out = append(out, htmlItem{Finding: f})
		}
		out[i].All = append(out[i].All, f)
	}
	return out
}

// worstFirst puts places with what holds the job and can hurt somebody in
// front; places that are equally bad stay in the order of the work.
func worstFirst(groups []htmlGroup) {
	slices.SortStableFunc(groups, func(a, b htmlGroup) int { return b.weight() - a.weight() })
}

// weight is that of the worst item.
func (g htmlGroup) weight() int {
	worst := 0
	for _, item := range g.Items {
		weight := 0
		if item.Holds {
			weight += 8
		}
		for _, grade := range []finding.Grade{finding.Recommended, finding.Required, finding.Hazard} {
			if item.Grade.AtLeast(grade) {
				weight++
			}
		}
		worst = max(worst, weight)
	}
	return worst
}

func appendAbout[T any](list []about[T], group, subject string, item T) []about[T] {
	if n := len(list); n == 0 || list[n-1].Group != group || list[n-1].Subject != subject {
		list = append(list, about[T]{Group: group, Subject: subject})
	}
	last := &list[len(list)-1]
	last.List = append(last.List, item)
	return list
}

// styleOnce leaves out a style sheet that another drawing has brought already:
// inside a page they hold for all of them.
type styleOnce struct{ seen map[string]bool }

var styleElement = regexp.MustCompile(`(?s)<style>.*?</style>`)

func (s *styleOnce) drawing(svg string) template.HTML {
	svg = styleElement.ReplaceAllStringFunc(svg, func(style string) string {
		if s.seen[style] {
			return ""
		}
		s.seen[style] = true
		return style
	})
	return template.HTML(svg) //nolint:gosec // drawn by this program, its texts escaped there
}

// Held tells whether the job is on hold.
func (h htmlJob) Held() bool { return h.Outcome != finding.Ready }

// Count is how many subjects have a verdict.
func (h htmlJob) Count(verdict string) int { return h.Counts.Of(finding.Verdict(verdict)) }

// Listed is how many findings a list of items stands for.
func (h htmlJob) Listed(groups []htmlGroup) int {
	n := 0
	for _, g := range groups {
		for _, item := range g.Items {
			n += len(item.All)
		}
	}
	return n
}

// Light is how many open items do not hold the job, when some do.
func (h htmlJob) Light() int {
	n := 0
	for _, g := range h.Open {
		for _, item := range g.Items {
			if !item.Holds {
				n += len(item.All)
			}
		}
	}
	if n == h.Listed(h.Open) {
		return 0
	}
	return n
}

// Subjects is how many findings items stand for.
func (h htmlJob) Subjects(items []htmlItem) int { return h.Listed([]htmlGroup{{Items: items}}) }

// Holding says how much of what holds the job there is of each verdict.
func (h htmlJob) Holding() string { return holding(h.Findings, verdictWords) }

// Head opens a heading of a level, counted from that of the job.
func (h htmlJob) Head(level int) template.HTML { return h.heading("<", level) }

// Tail closes it.
func (h htmlJob) Tail(level int) template.HTML { return h.heading("</", level) }

func (h htmlJob) heading(start string, level int) template.HTML {
	if h.Many {
		level++
	}
	return template.HTML(fmt.Sprintf("%sh%d>", start, level)) //nolint:gosec // a number between brackets
}

// With hands an item to a template that also needs the job and the level of the
// item's heading.
func (h htmlJob) With(item htmlItem, level int) jobItem { return jobItem{h, item, level} }

// jobItem is an item with the job around it.
type jobItem struct {
	Job   htmlJob
	Item  htmlItem
	Level int
}

// Sign is a shape for how bad an item is; words beside it say the same.
func (i htmlItem) Sign() string {
	switch {
	case i.Verdict == finding.Variance:
		return "◇"
	case i.Grade == finding.Hazard:
		return "▲"
	case i.Grade == finding.Recommended:
		return "○"
	}
	return "■"
}

// Standing says in words what verdict, grade and stage mean for the job.
func (i htmlItem) Standing() string {
	words := []string{verdictWords(i.Verdict), gradeWords(i.Grade)}
	switch {
	case i.Verdict == finding.Variance:
		return "allowed by a variance"
	case !i.Due:
		words = append(words, "due from stage "+string(i.Stage))
	case i.Holds:
		words = append(words, "holds the job")
	default:
		words = append(words, "does not hold the job")
	}
	return strings.Join(words, " · ")
}

// Adds tells whether the reason of a finding says more than its message, where
// the page shows that.
func (i htmlItem) Adds(f finding.Finding) bool {
	return f.Reason != "" && (f.Measured != "" && f.Limit != "" || !says(f.Message, f.Reason))
}

// Reasoned says what the reason of a finding is the reason for.
func (i htmlItem) Reasoned() string {
	switch i.Verdict {
	case finding.Variance:
		return "Allowed"
	case finding.Undetermined:
		return "Undecided because"
	default:
		return "Besides"
	}
}

// Origin says how the source is known, where the source itself does not.
func (i htmlItem) Origin() string {
	if i.Source.Basis == finding.Published {
		return "Published source"
	}
	return "Source"
}

// Alike tells whether all subjects have the same message.
func (i htmlItem) Alike() bool {
	for _, f := range i.All {
		if f.Message != i.Message {
			return false
		}
	}
	return true
}

func verdictWords(v finding.Verdict) string {
	switch v {
	case finding.Unrecorded:
		return "not recorded"
	case finding.NotApplicable:
		return "not applicable"
	default:
		return string(v)
	}
}

func gradeWords(g finding.Grade) string {
	if g == finding.Hazard {
		return "someone can be hurt"
	}
	return string(g)
}
