package report

import (
	"bufio"
	"crypto/sha256"
	_ "embed"
	"encoding/base64"
	"fmt"
	"html/template"
	"io"
	"slices"
	"strings"
	"unicode/utf8"

	"github.com/slablint/slablint/internal/finding"
)

//go:embed page.tmpl
var pageText string

//go:embed page.css
var pageStyle string

//go:embed page.js
var pageScript string

var pageTemplate = template.Must(template.New("page").Parse(pageText))

// HTML writes one page that needs nothing but itself: no script to be read, and
// nothing is fetched. Several jobs share a page with an index in front. What is
// met is listed whatever Options.All says, as far as the report holds it.
func HTML(w io.Writer, r finding.Report, _ Options) error {
	page := htmlPage{Report: r, Title: "Job records", Script: scriptTag(len(r.Jobs) > 1), Policy: contentPolicy(len(r.Jobs) > 1)}
	styles := &styleOnce{seen: map[string]bool{}}
	ids := map[string]int{}
	for _, job := range r.Jobs {
		ids[job.ID]++
	}
	for i, job := range r.Jobs {
		h := htmlJobOf(i, job, len(r.Jobs) > 1, styles)
		h.Twin = ids[job.ID] > 1
		page.Jobs = append(page.Jobs, h)
		if h.Held() {
			page.Held++
		}
	}
	page.Ready = len(r.Jobs) - page.Held
	page.Frequent = frequent(r.Jobs)
	page.Style = template.CSS(pageStyle + runningFooters(r)) //nolint:gosec // part of the program, strings in it escaped
	if len(r.Jobs) == 1 {
		page.Title = visible(r.Jobs[0].ID)
	}
	out := bufio.NewWriterSize(w, 64<<10)
	err := pageTemplate.Execute(speller{out}, page)
	if err == nil {
		err = out.Flush()
	}
	if err != nil {
		return fmt.Errorf("write HTML report: %w", err)
	}
	return nil
}

// speller spells out what passes through it. A template writes each piece of
// text as a whole, so no character is cut in two.
type speller struct{ w io.Writer }

func (s speller) Write(p []byte) (int, error) {
	if _, err := s.w.Write(spelled(p)); err != nil {
		return 0, err
	}
	return len(p), nil
}

// spelled spells out what hides or reorders its neighbors. The page itself
// holds no such characters, so all of them are the record's. What has none is
// returned as it is.
func spelled(page []byte) []byte {
	var out []byte
	done := 0 // what comes before has been copied
	for i := 0; i < len(page); {
		if c := page[i]; c == '\n' || c >= ' ' && c < 0x7f { // nearly all of a page
			i++
			continue
		}
		r, size := utf8.DecodeRune(page[i:])
		if r == utf8.RuneError && size == 1 || !showable(r) {
			out = append(out, page[done:i]...)
			if r == '\t' || r == '\r' {
				out = append(out, ' ')
			} else {
				out = append(out, visible(string(r))...)
			}
			done = i + size
		}
		i += size
	}
	if done == 0 {
		return page
	}
	return append(out, page[done:]...)
}

// scriptTag is the script that sorts the index, for pages that have one.
func scriptTag(wanted bool) template.HTML {
	if !wanted {
		return ""
	}
	return template.HTML("<script>" + pageScript + "</script>") //nolint:gosec // part of the program
}

// contentPolicy forbids the page everything that it does not need, so that
// whatever a record smuggles in can neither run nor call out.
func contentPolicy(script bool) string {
	policy := "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'"
	if script {
		sum := sha256.Sum256([]byte(pageScript))
		policy += "; script-src 'sha256-" + base64.StdEncoding.EncodeToString(sum[:]) + "'"
	}
	return policy
}

// runningFooters are the rules that put job, rulebook and page number on every
// sheet.
func runningFooters(r finding.Report) string {
	var b strings.Builder
	footer := func(page, id, digest string) {
		fmt.Fprintf(&b, "@page%s{@bottom-left{content:%s}@bottom-center{content:%s}}\n", page, cssString(short(id, 36)), cssString("rulebook "+digest))
	}
	switch len(r.Jobs) {
	case 0:
		footer("", "slablint report", r.Rulebook.Digest)
	case 1:
		footer("", r.Jobs[0].ID, r.Jobs[0].Digest)
	default:
		footer("", fmt.Sprintf("%d job records", len(r.Jobs)), r.Rulebook.Digest)
		for i, job := range r.Jobs {
			footer(fmt.Sprintf(" job-%d", i+1), job.ID, job.Digest)
			fmt.Fprintf(&b, "#job-%d{page:job-%d}\n", i+1, i+1)
		}
		fmt.Fprintf(&b, "body>footer{page:job-%d}\n", len(r.Jobs)) // else it gets a sheet of its own
	}
	return b.String()
}

// cssString writes a CSS string (CSS Syntax Level 3, 4.3.5) in which nothing
// but letters and digits stands for itself: an escape swallows a blank after it.
func cssString(s string) string {
	var b strings.Builder
	b.WriteByte('"')
	for _, r := range visible(s) {
		switch {
		case r >= '0' && r <= '9', r >= 'A' && r <= 'Z', r >= 'a' && r <= 'z':
			b.WriteRune(r)
		default:
			fmt.Fprintf(&b, `\%06x`, r)
		}
	}
	b.WriteByte('"')
	return b.String()
}

// short cuts text to so many characters.
func short(s string, most int) string {
	runes := []rune(s)
	if len(runes) <= most {
		return s
	}
	return string(runes[:most-1]) + "…"
}

// htmlPage is what the template shows.
type htmlPage struct {
	finding.Report
	Title       string
	Policy      string
	Style       template.CSS
	Script      template.HTML
	Jobs        []htmlJob
	Ready, Held int
	Frequent    []frequency
}

// Many tells whether the page has an index.
func (p htmlPage) Many() bool { return len(p.Jobs) > 1 }

// AllReady tells whether nothing is left to settle: every input was judged and
// every job is ready.
func (p htmlPage) AllReady() bool { return p.Held == 0 && len(p.Errors) == 0 }

// NotJudged is how many inputs have errors: each line of a stream is one.
func (p htmlPage) NotJudged() int {
	inputs := map[string]bool{}
	for _, e := range p.Errors {
		if strings.HasSuffix(e.File, ".ndjson") {
			e.File = fmt.Sprintf("%s:%d", e.File, e.Line)
		}
		inputs[e.File] = true
	}
	return len(inputs)
}

// frequency is how many jobs a requirement holds.
type frequency struct {
	Requirement, Title string
	Jobs               int
	Share              int // of the longest bar, percent
}

// mostFrequent bounds the chart of the index.
const mostFrequent = 12

// frequent counts what holds jobs, most frequent first.
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
	out := make([]frequency, 0, len(count))
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
