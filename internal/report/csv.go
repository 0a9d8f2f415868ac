package report

import (
	"bufio"
	"fmt"
	"io"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"github.com/slablint/slablint/internal/finding"
)

// csvColumns are the names in the first row. A row is about the run, a job, a
// finding, an input that was not judged or a run that left records out: the
// first column says which.
var csvColumns = []string{
	"row", "file", "line", "column", "job", "job_stage", "outcome", "requirement", "subject", "verdict", "grade", "stage", "due", "holds",
	"title", "message", "measured", "limit", "missing", "reason", "why", "remedy", "document", "edition", "section", "basis", "profile",
	"fingerprint", "sha256", "rulebook", "profiles",
}

// CSV writes one row for each finding, as RFC 4180 has it: comma, CRLF, every
// cell in quotes. A cell that a spreadsheet could take for a formula begins
// with an apostrophe.
func CSV(w io.Writer, r finding.Report, o Options) error {
	table := csvTable{bufio.NewWriterSize(w, 64<<10)}
	table.row(csvCells(csvColumns))
	table.add(map[string]string{
		"row": "run", "message": r.Notice, "rulebook": r.Rulebook.Digest, "profiles": strings.Join(r.Rulebook.Profiles, " "),
	})
	for _, job := range r.Jobs {
		common := map[string]string{
			"file": job.File, "job": job.ID, "job_stage": string(job.Stage), "sha256": job.SHA256, "rulebook": job.Digest, "profiles": strings.Join(job.Profiles, " "),
		}
		table.add(common, map[string]string{"row": "job", "outcome": string(job.Outcome), "title": job.Title, "message": csvCounts(job)})
		for _, f := range shown(job.Findings, o.All) {
			table.add(common, csvFinding(job, f))
		}
	}
	for _, e := range r.Errors {
		table.add(map[string]string{"row": "error", "file": e.File, "line": csvNumber(e.Line), "column": csvNumber(e.Column), "message": e.Message})
	}
	if r.Stopped != "" {
		table.add(map[string]string{"row": "stopped", "message": r.Stopped})
	}
	if err := table.text.Flush(); err != nil { // the first one of all writes
		return fmt.Errorf("write CSV report: %w", err)
	}
	return nil
}

func csvFinding(job finding.Job, f finding.Finding) map[string]string {
	return map[string]string{
		"row": "finding", "line": csvNumber(f.At.Line), "column": csvNumber(f.At.Column),
		"requirement": f.Requirement, "subject": f.Subject, "verdict": string(f.Verdict), "grade": string(f.Grade), "stage": string(f.Stage),
		"due": strconv.FormatBool(f.Due), "holds": strconv.FormatBool(f.Holds), "title": f.Title, "message": f.Message,
		"measured": f.Measured, "limit": f.Limit, "missing": strings.Join(f.Missing, " "), "reason": f.Reason, "why": f.Why, "remedy": f.Remedy,
		"document": f.Source.Document, "edition": f.Source.Edition, "section": f.Source.Section, "basis": string(f.Source.Basis),
		"profile": f.Profile, "fingerprint": fingerprint(job, f),
	}
}

func csvCounts(job finding.Job) string {
	parts := []string{fmt.Sprintf("held by %d", job.HeldBy)}
	for _, v := range finding.Verdicts() {
		parts = append(parts, fmt.Sprintf("%s %d", v, job.Counts.Of(v)))
	}
	return strings.Join(parts, ", ")
}

// csvNumber leaves out what is not known.
func csvNumber(n int) string {
	if n == 0 {
		return ""
	}
	return strconv.Itoa(n)
}

type csvTable struct{ text *bufio.Writer }

// add writes a row of what the maps hold, later ones in front.
func (t *csvTable) add(parts ...map[string]string) {
	cells := make([]string, len(csvColumns))
	for i, column := range csvColumns {
		for _, part := range parts {
			if text, ok := part[column]; ok {
				cells[i] = text
			}
		}
	}
	t.row(csvCells(cells))
}

func (t *csvTable) row(cells []string) {
	for i, cell := range cells {
		before := `,"`
		if i == 0 {
			before = `"`
		}
		t.write(before, strings.ReplaceAll(cell, `"`, `""`), `"`)
	}
	t.write("\r\n")
}

// write leaves errors to the writer, which keeps the first and gives it when it
// is flushed.
func (t *csvTable) write(texts ...string) {
	for _, text := range texts {
		_, _ = t.text.WriteString(text)
	}
}

func csvCells(texts []string) []string {
	cells := make([]string, len(texts))
	for i, text := range texts {
		cells[i] = csvCell(text)
	}
	return cells
}

// csvCell makes text safe to open in a spreadsheet: no control characters, and
// nothing that is evaluated. The wide forms count too: some programs take them
// for the narrow ones.
func csvCell(text string) string {
	text = visible(text)
	first, _ := utf8.DecodeRuneInString(strings.TrimLeftFunc(text, unicode.IsSpace))
	if strings.ContainsRune("=+-@|%＝＋－＠", first) {
		return "'" + text
	}
	return text
}
