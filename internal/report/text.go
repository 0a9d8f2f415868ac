package report

import (
	"bufio"
	"fmt"
	"io"
	"strings"

	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/place"
)

// Text writes the report for people in a terminal: jobs one after another, what
// was found in the order of the work, what is still to be looked up on site as
// a list, and last the one line that matters. Findings and errors begin
// file:line:column: so that editors jump to them. Besides what is met or not
// applicable, Options.All shows what is not due yet.
func Text(w io.Writer, r finding.Report, o Options) error {
	p := &page{bufio.NewWriter(w), o}
	alone := len(r.Jobs) == 1 && len(r.Errors) == 0
	warned := map[string]bool{}
	for _, j := range r.Jobs {
		jobPage{p, j, r.Rulebook.Digest, map[explanation]bool{}, warned}.write()
		if !alone {
			p.fill("", indent, outcome(j))
			p.gap()
		}
	}
	for _, e := range r.Errors {
		p.fill("", indent, append([]word{at(e.File, e.Line, e.Column)}, prose(e.Message, plain)...))
	}
	if len(r.Errors) > 0 {
		p.gap()
	}
	p.fill("", indent, prose(r.Stopped, strong))
	p.foot(r)
	if alone {
		p.fill("", indent, outcome(r.Jobs[0]))
	} else {
		p.fill("", indent, summary(r))
	}
	if err := p.w.Flush(); err != nil {
		return fmt.Errorf("write text report: %w", err)
	}
	return nil
}

// indent sets off what belongs to the line above it.
const indent = "    "

// at names a place so that editors and compilers' error lists understand it.
func at(file string, line, column int) word {
	return token(place.Spot{File: file, Line: line, Column: column}.String()+":", plain)
}

// foot states what the records were judged by and what such a judgement is
// worth, where it is read together with the outcome.
func (p *page) foot(r finding.Report) {
	if r.Rulebook.Digest != "" {
		p.fill("", indent, prose("rulebook "+r.Rulebook.Digest, plain))
	}
	if len(r.Jobs) == 0 && len(r.Rulebook.Profiles) > 0 { // else every job names its own
		p.fill("", indent, prose("profiles "+strings.Join(r.Rulebook.Profiles, ", "), plain))
	}
	p.fill("", "", prose(r.Notice, plain))
}

// outcome says whether a job may be closed and, if not, how much is in the way.
func outcome(j finding.Job) []word {
	if j.Outcome == finding.Ready {
		about := fmt.Sprintf("(%d met", j.Counts.Met)
		if n := len(noted(j.Findings)); n > 0 {
			about += fmt.Sprintf(", %d noted", n)
		}
		return append([]word{{"ready", green}}, prose(about+")", plain)...)
	}
	words := append([]word{{"hold:", red}}, prose(fmt.Sprintf("%d open", j.HeldBy), plain)...)
	if held := holding(j.Findings, func(v finding.Verdict) string { return string(v) }); held != "" {
		words = append(words, prose("("+held+")", plain)...)
	}
	return words
}

// holding says how much of what holds a job there is of each verdict, in the
// words for it.
func holding(findings []finding.Finding, words func(finding.Verdict) string) string {
	var parts []string
	for _, v := range finding.Verdicts() {
		n := 0
		for _, f := range findings {
			if f.Holds && f.Verdict == v {
				n++
			}
		}
		if n > 0 {
			parts = append(parts, fmt.Sprintf("%d %s", n, words(v)))
		}
	}
	return strings.Join(parts, ", ")
}

// noted are the findings that are due and worth reading, though they do not
// hold the job.
func noted(findings []finding.Finding) []finding.Finding {
	var kept []finding.Finding
	for _, f := range shown(findings, false) {
		if f.Due && !f.Holds {
			kept = append(kept, f)
		}
	}
	return kept
}

// summary counts the outcomes of a run over anything but a single record.
func summary(r finding.Report) []word {
	ready := 0
	for _, j := range r.Jobs {
		if j.Outcome == finding.Ready {
			ready++
		}
	}
	hold := len(r.Jobs) - ready
	failed := counted(len(r.Errors), "error", "errors")
	switch {
	case len(r.Jobs) == 0 && len(r.Errors) == 0:
		return prose("nothing judged: no record was found", plain)
	case len(r.Jobs) == 0:
		return prose("nothing judged: "+failed, red)
	}
	words := prose(counted(len(r.Jobs), "job:", "jobs:"), plain)
	words = append(words, prose(fmt.Sprintf("%d ready,", ready), styleIf(ready > 0, green))...)
	words = append(words, prose(fmt.Sprintf("%d on hold,", hold), styleIf(hold > 0, red))...)
	return append(words, prose(failed, styleIf(len(r.Errors) > 0, red))...)
}

func counted(n int, one, many string) string {
	if n == 1 {
		return "1 " + one
	}
	return fmt.Sprintf("%d %s", n, many)
}

func styleIf(yes bool, s style) style {
	if yes {
		return s
	}
	return plain
}
