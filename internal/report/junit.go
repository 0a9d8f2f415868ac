package report

import (
	"cmp"
	"encoding/xml"
	"fmt"
	"io"
	"strings"

	"github.com/slablint/slablint/internal/finding"
)

// JUnit writes the report as test results: one case for each requirement and
// subject judged, whatever Options.All says, so that a run in which all is well
// has cases. What holds the job failed; what is not applicable, not due, covered
// by a variance or only advice was skipped, with the reason.
func JUnit(w io.Writer, r finding.Report, _ Options) error {
	out := junitSuites{Name: "slablint"}
	run := junitSuite{Name: "inputs", Properties: []junitProperty{
		{"notice", r.Notice}, {"rulebook", r.Rulebook.Digest}, {"profiles", strings.Join(r.Rulebook.Profiles, ", ")}, {"version", r.Rulebook.Version},
	}}
	if r.Stopped != "" {
		run.Properties = append(run.Properties, junitProperty{"stopped", r.Stopped})
	}
	for _, e := range r.Errors {
		message := fmt.Sprintf("%s: %s", at(e.File, e.Line, e.Column).text, e.Message)
		run.Cases = append(run.Cases, junitCase{Class: "input", Name: e.File, Error: &junitText{Type: "not judged", Message: message}})
	}
	out.add(run)
	for _, job := range r.Jobs {
		out.add(junitJob(job))
	}
	data, err := xml.MarshalIndent(out, "", " ")
	if err != nil {
		return fmt.Errorf("write JUnit report: %w", err)
	}
	if _, err := io.WriteString(w, xml.Header+string(data)+"\n"); err != nil {
		return fmt.Errorf("write JUnit report: %w", err)
	}
	return nil
}

func junitJob(job finding.Job) junitSuite {
	suite := junitSuite{Name: job.ID, File: job.File, Properties: []junitProperty{
		{"outcome", string(job.Outcome)}, {"stage", string(job.Stage)}, {"sha256", job.SHA256},
		{"profiles", strings.Join(job.Profiles, ", ")}, {"rulebook", job.Digest},
	}}
	listed := finding.Counts{}
	for _, f := range job.Findings {
		listed.Add(f.Verdict)
		suite.Cases = append(suite.Cases, junitCaseOf(job, f))
	}
	if more := job.Counts.Met - listed.Met; more > 0 {
		suite.Cases = append(suite.Cases, junitCase{Class: "slablint", Name: fmt.Sprintf("%d more met, which the report that this was made from does not list", more)})
	}
	return suite
}

func junitCaseOf(job finding.Job, f finding.Finding) junitCase {
	c := junitCase{Class: f.Requirement, Name: f.Title}
	if f.Subject != "" {
		c.Name += " [" + f.Subject + "]"
	}
	text := &junitText{Type: string(f.Verdict), Message: f.Message}
	switch {
	case f.Verdict == finding.Met:
		return c
	case f.Verdict == finding.NotApplicable, f.Verdict == finding.Variance:
		text.Message = cmp.Or(f.Reason, f.Message)
		c.Skipped = text
	case !f.Holds:
		text.Message = strings.TrimSpace(f.Message + " " + standing(f))
		c.Skipped = text
	default:
		c.Failure = text
		text.Body = junitBody(job, f)
	}
	return c
}

// junitBody is what somebody needs to settle a failure.
func junitBody(job finding.Job, f finding.Finding) string {
	var b strings.Builder
	fmt.Fprintf(&b, "%s %s, %s\n", at(job.File, f.At.Line, f.At.Column).text, f.Verdict, f.Grade)
	for _, line := range []struct{ label, text string }{
		{"measured", f.Measured}, {"limit", f.Limit}, {"missing", strings.Join(f.Missing, ", ")}, {"reason", f.Reason},
		{"why", f.Why}, {"source", f.Source.String()}, {"profile", f.Profile}, {"remedy", f.Remedy},
	} {
		if line.text != "" {
			fmt.Fprintf(&b, "%s: %s\n", line.label, line.text)
		}
	}
	return b.String()
}

type junitSuites struct {
	XMLName  xml.Name     `xml:"testsuites"`
	Name     string       `xml:"name,attr"`
	Tests    int          `xml:"tests,attr"`
	Failures int          `xml:"failures,attr"`
	Errors   int          `xml:"errors,attr"`
	Suites   []junitSuite `xml:"testsuite"`
}

// add counts a suite and takes it in.
func (s *junitSuites) add(suite junitSuite) {
	for i := range suite.Cases {
		c := &suite.Cases[i]
		c.clean()
		suite.Tests++
		switch {
		case c.Failure != nil:
			suite.Failures++
		case c.Error != nil:
			suite.Errors++
		case c.Skipped != nil:
			suite.Skipped++
		}
	}
	suite.Name, suite.File = visible(suite.Name), visible(suite.File)
	for i := range suite.Properties {
		suite.Properties[i].Value = visible(suite.Properties[i].Value)
	}
	s.Tests, s.Failures, s.Errors = s.Tests+suite.Tests, s.Failures+suite.Failures, s.Errors+suite.Errors
	s.Suites = append(s.Suites, suite)
}

type junitSuite struct {
	Name       string          `xml:"name,attr"`
	Tests      int             `xml:"tests,attr"`
	Failures   int             `xml:"failures,attr"`
	Errors     int             `xml:"errors,attr"`
	Skipped    int             `xml:"skipped,attr"`
	File       string          `xml:"file,attr,omitempty"`
	Properties []junitProperty `xml:"properties>property"`
	Cases      []junitCase     `xml:"testcase"`
}

type junitProperty struct {
	Name  string `xml:"name,attr"`
	Value string `xml:"value,attr"`
}

type junitCase struct {
	Class   string     `xml:"classname,attr"`
	Name    string     `xml:"name,attr"`
	Skipped *junitText `xml:"skipped"`
	Error   *junitText `xml:"error"`
	Failure *junitText `xml:"failure"`
}

// clean spells out what a terminal or XML itself would not take.
func (c *junitCase) clean() {
	c.Class, c.Name = visible(c.Class), visible(c.Name)
	for _, t := range []*junitText{c.Skipped, c.Error, c.Failure} {
		if t == nil {
			continue
		}
		t.Type, t.Message = visible(t.Type), visible(t.Message)
		lines := strings.Split(t.Body, "\n")
		for i := range lines {
			lines[i] = visible(lines[i])
		}
		t.Body = strings.Join(lines, "\n")
	}
}

type junitText struct {
	Type    string `xml:"type,attr"`
	Message string `xml:"message,attr"`
	Body    string `xml:",chardata"`
}
