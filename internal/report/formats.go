package report

import (
	"fmt"
	"io"
	"strings"

	"github.com/slablint/slablint/internal/finding"
)

// Options say how a report is to be shown. The zero value suits a file: no
// wrapping, no colour, only what asks for attention.
type Options struct {
	Width  int  // columns of the page; 0 for lines of any length
	Colour bool // whether the reader's terminal shows colours
	All    bool // whether verdicts that ask for nothing are shown too
}

// A Writer puts a report on w in one format. It leaves the report as it is and
// fails only when w does.
type Writer func(w io.Writer, r finding.Report, o Options) error

// Format is a Writer with the name by which users choose it.
type Format struct {
	Name  string
	About string // what it is good for, as a phrase for help texts
	Write Writer
}

// Formats lists every format, the default first. A new format is one line here.
func Formats() []Format {
	return []Format{
		{"text", "for people, in a terminal", Text},
		{"json", "for programs; schema/report.schema.json describes it", JSON},
		{"html", "one page to sign, keep and print", HTML},
		{"sarif", "for editors and code hosts: SARIF 2.1.0", SARIF},
		{"junit", "for build servers: JUnit XML, one case a requirement and subject", JUnit},
		{"csv", "for spreadsheets: one row a finding, RFC 4180", CSV},
	}
}

// Named finds a format's writer; its error lists the names there are.
func Named(name string) (Writer, error) {
	var known []string
	for _, f := range Formats() {
		if f.Name == name {
			return f.Write, nil
		}
		known = append(known, f.Name)
	}
	return nil, fmt.Errorf("unknown format %q: expected one of %s", name, strings.Join(known, ", "))
}

// shown leaves out the verdicts that ask for nothing, unless all are wanted.
func shown(findings []finding.Finding, all bool) []finding.Finding {
	kept := make([]finding.Finding, 0, len(findings))
	for _, f := range findings {
		if all || f.Verdict != finding.Met && f.Verdict != finding.NotApplicable {
			kept = append(kept, f)
		}
	}
	return kept
}
