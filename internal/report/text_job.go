package report

import (
	"cmp"
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"

	"github.com/slablint/slablint/internal/finding"
)

// jobPage is the part of a page that one job takes.
type jobPage struct {
	*page
	job       finding.Job
	digest    string               // of the rulebook that the foot of the page names
	explained map[explanation]bool // what this job has explained already
	warned    map[string]bool      // the cautions that stand on the page already
}

// explanation is what findings of one requirement have in common.
type explanation struct{ requirement, why, source, remedy string }

// write writes all of the job but its outcome.
func (p jobPage) write() {
	findings := shown(p.job.Findings, p.o.All)
	quiet := len(findings) == 0 && (len(p.job.Cautions) == 0 || p.workIsDone() && !p.o.All)
	p.opening(!quiet)
	if quiet {
		if n := len(p.job.Cautions); n > 0 {
			p.fill(indent, indent, prose(counted(n, "caution", "cautions")+" (shown with --all)", plain))
		}
		return
	}
	p.gap()
	var found, unrecorded []finding.Finding
	later := 0
	for _, f := range findings {
		switch {
		case !f.Due && !p.o.All:
			later++
		case f.Verdict == finding.Unrecorded:
			unrecorded = append(unrecorded, f)
		default:
			found = append(found, f)
		}
	}
	for _, g := range byTopic(found) {
		p.title(g.title)
		for _, f := range g.findings {
			p.finding(f)
			p.gap()
		}
	}
	p.toRecord(unrecorded)
	if later > 0 {
		p.fill("", indent, prose(fmt.Sprintf("Not due at stage %s: %s (shown with --all)",
			p.job.Stage, counted(later, "finding", "findings")), plain))
		p.gap()
	}
	p.cautions()
}

// workIsDone tells that nobody needs the cautions for this job any more.
func (p jobPage) workIsDone() bool {
	return p.job.Stage == finding.Closeout && p.job.Outcome == finding.Ready
}

// opening says which job this is and of which bytes it was read.
func (p jobPage) opening(withTitle bool) {
	j := p.job
	words := []word{token(j.File+":", strong), {"job", plain}, token(j.ID+",", strong)}
	words = append(words, prose("stage "+string(j.Stage)+",", plain)...)
	words = append(words, prose("profiles "+strings.Join(j.Profiles, ", "), plain)...)
	p.fill("", indent, words)
	if withTitle {
		p.fill(indent, indent, prose(j.Title, plain))
	}
	p.fill(indent, indent+indent, []word{{"sha256", plain}, token(j.SHA256, plain)})
	if j.Digest != "" && j.Digest != p.digest {
		p.fill(indent, indent+indent, []word{{"rulebook", plain}, token(j.Digest, plain)})
	}
}

func (p jobPage) title(s string) {
	p.fill("-- ", "   ", prose(s, strong))
	p.gap()
}

// finding writes one finding in full, or in short when it asks for nothing.
func (p jobPage) finding(f finding.Finding) {
	p.head(f)
	if f.Verdict == finding.Met || f.Verdict == finding.NotApplicable {
		p.fill(indent, indent, prose(f.Title, plain))
		p.measured(f, f.Title)
		p.labelled("reason", f.Reason)
		return
	}
	p.labelled("wanted", f.Title)
	p.labelled("found", f.Message)
	p.measured(f, f.Message)
	p.labelled("missing", strings.Join(f.Missing, ", "))
	if !says(f.Message, f.Reason) {
		p.labelled("reason", f.Reason)
	}
	p.explain(f)
}

// explain says why a finding matters, who asks for it and what to do, once for
// all findings of which the same is to be said: a label missing on ten pipes
// has one remedy.
func (p jobPage) explain(f finding.Finding) {
	source := cmp.Or(f.Source.String(), string(f.Source.Basis))
	if len(p.job.Profiles) > 1 && f.Profile != "" {
		source += "; profile " + f.Profile
	}
	e := explanation{f.Requirement, f.Why, source, f.Remedy}
	if p.explained[e] {
		p.fill(indent, indent, prose("(the rest as above)", plain))
		return
	}
	p.explained[e] = true
	p.labelled("why", e.why)
	p.labelled("source", e.source)
	p.labelled("remedy", e.remedy)
}

// toRecord lists what the record does not say, in as few lines as will do for
// somebody who goes back to look.
func (p jobPage) toRecord(findings []finding.Finding) {
	if len(findings) == 0 {
		return
	}
	p.title(fmt.Sprintf("To take back to the site: %d not recorded", len(findings)))
	for _, f := range findings {
		p.head(f)
		p.fill(indent, indent, prose(f.Message, plain))
		p.measured(f, f.Message)
		p.labelled("missing", strings.Join(f.Missing, ", "))
	}
	p.gap()
}

// cautions lists what keeps people safe. Jobs have most of it in common, so a
// page with many says each thing once.
func (p jobPage) cautions() {
	if len(p.job.Cautions) == 0 {
		return
	}
	p.title("Cautions")
	again := 0
	for _, c := range p.job.Cautions {
		if p.warned[c] {
			again++
			continue
		}
		p.warned[c] = true
		p.fill("  * ", indent, prose(c, plain))
	}
	if again > 0 {
		p.fill("  * ", indent, prose(counted(again, "caution", "cautions")+" of those above", plain))
	}
	p.gap()
}

// head says where, how bad and which requirement; it goes on below before it
// gets wider than the page.
func (p jobPage) head(f finding.Finding) {
	left := []word{
		at(p.job.File, f.At.Line, f.At.Column),
		token(string(f.Verdict), verdictStyle(f.Verdict)),
		token(string(f.Grade), styleIf(f.Grade == finding.Hazard, red)),
	}
	left = append(left, prose(standing(f), plain)...)
	right := []word{token(f.Requirement, strong)}
	if f.Subject != "" {
		right = append(right, token("["+f.Subject+"]", plain))
	}
	if p.o.Width > 0 && length(left)+2+length(right) > p.o.Width {
		p.fill("", indent, left)
		p.fill(indent, indent+indent, right)
		return
	}
	left = append(left, word{}) // makes the gap two blanks wide
	p.line(append(left, right...)...)
}

// standing says what verdict and grade do not: whether the finding holds the
// job, where one would not expect it.
func standing(f finding.Finding) string {
	expected := f.Verdict == finding.Deficient || f.Verdict == finding.Unrecorded || f.Verdict == finding.Undetermined
	switch {
	case !f.Due:
		return "(due from stage " + string(f.Stage) + ")"
	case expected && !f.Holds:
		return "(does not hold the job)"
	case f.Holds && !expected:
		return "(holds the job)"
	}
	return ""
}

func verdictStyle(v finding.Verdict) style {
	switch v {
	case finding.Deficient:
		return red
	case finding.Unrecorded:
		return yellow
	case finding.Undetermined:
		return magenta
	case finding.Variance:
		return cyan
	case finding.Met:
		return green
	default:
		return plain
	}
}

// measured sets what was found beside what is asked for, unless the line above
// has said both.
func (p jobPage) measured(f finding.Finding, above string) {
	switch {
	case says(above, f.Measured) && says(above, f.Limit):
	case f.Measured == "":
		p.labelled("limit", f.Limit)
	case f.Limit == "":
		p.labelled("measured", f.Measured)
	default:
		p.labelled("measured", f.Measured+"; limit "+f.Limit)
	}
}

// says tells whether text holds phrase, not just as the end of "110 ft" holds
// "10 ft". Nothing is always said.
func says(text, phrase string) bool {
	if phrase == "" {
		return true
	}
	for from := 0; ; {
		i := strings.Index(text[from:], phrase)
		if i < 0 {
			return false
		}
		start := from + i
		before, _ := utf8.DecodeLastRuneInString(text[:start])
		after, _ := utf8.DecodeRuneInString(text[start+len(phrase):])
		if !partOfWord(before) && before != '.' && before != '-' && !partOfWord(after) {
			return true
		}
		_, size := utf8.DecodeRuneInString(text[start:])
		from = start + size
	}
}

func partOfWord(r rune) bool { return unicode.IsLetter(r) || unicode.IsDigit(r) }

// labelled writes a paragraph with its label in a column of its own.
func (p jobPage) labelled(label, text string) {
	p.fill(fmt.Sprintf("%s%-9s", indent, label), indent+"         ", prose(text, plain))
}
