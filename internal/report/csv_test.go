package report

import (
	"encoding/csv"
	"regexp"
	"strings"
	"testing"

	"github.com/slablint/slablint/internal/finding"
)

func readCSV(t *testing.T, text string) [][]string {
	t.Helper()
	rows, err := csv.NewReader(strings.NewReader(text)).ReadAll() // the same number of cells in every row
	if err != nil {
		t.Fatal(err)
	}
	return rows
}

func column(name string) int {
	for i, c := range csvColumns {
		if c == name {
			return i
		}
	}
	return -1
}

// RFC 4180, section 2: rows end in CRLF (1), a header row (3), the same number
// of fields in every row (4), fields in double quotes (5), which are doubled
// inside (7).
func TestCSVIsAsRFC4180HasIt(t *testing.T) {
	quoted := regexp.MustCompile(`^"(?:[^"]|"")*"(?:,"(?:[^"]|"")*")*$`)
	for _, s := range samples() {
		text := render(t, CSV, s.report, Options{All: true})
		for line := range strings.SplitSeq(strings.TrimSuffix(text, "\r\n"), "\r\n") {
			if !quoted.MatchString(line) || strings.ContainsAny(line, "\r\n") {
				t.Errorf("%s: not a row of quoted cells: %q", s.name, line)
			}
		}
		rows := readCSV(t, text)
		findings := 0
		for _, job := range s.report.Jobs {
			findings += len(job.Findings)
		}
		want := 2 + len(s.report.Jobs) + findings + len(s.report.Errors)
		if s.report.Stopped != "" {
			want++
		}
		if len(rows) != want {
			t.Errorf("%s: %d rows, want %d", s.name, len(rows), want)
		}
	}
}

// Spreadsheets evaluate a cell that begins with one of = + - @, a tab or a
// return (OWASP, CSV Injection), and some take the wide forms for these.
func TestCSVIsSafeToOpen(t *testing.T) {
	attacks := []string{
		`=cmd|' /C calc'!A0`, "+1+1", "-2+3", "@SUM(1)", "\t=1", "\r=1", "\n=1", " =1", "\u00a0=1", "\u3000=1", "＝1", "＋1", "－1", "＠A1", "|x", "%x",
		`"=1`, "=1\x00", "\x1b=1", "\u202e=1", "\ufeff=1", "\u200b=1",
	}
	dangerous := regexp.MustCompile(`^[\p{Zs}\s\x{feff}\x{200b}]*[=+\-@|%＝＋－＠\t\r]`)
	for _, attack := range attacks {
		f := tooClose()
		f.Subject, f.Title, f.Message, f.Measured, f.Limit, f.Reason, f.Why, f.Remedy, f.Profile = attack, attack, attack, attack, attack, attack, attack, attack, attack
		f.Source = finding.Source{Document: attack, Edition: attack, Section: attack, Basis: finding.Published}
		f.Missing = []string{attack}
		job := readyJob()
		job.ID, job.File, job.Title, job.Findings, job.Profiles = attack, attack, attack, []finding.Finding{f}, []string{attack}
		r := reportOf(job)
		r.Errors = []finding.Error{{File: attack, Message: attack}}
		for _, row := range readCSV(t, render(t, CSV, r, Options{})) {
			for i, cell := range row {
				if dangerous.MatchString(cell) {
					t.Errorf("%q gives the cell %s %q", attack, csvColumns[i], cell)
				}
			}
		}
	}
	for text, want := range map[string]string{"10 ft": "10 ft", "-0.042 inH2O": "'-0.042 inH2O", "": "", "a=b": "a=b", "3.9 pCi/L ± 0.4": "3.9 pCi/L ± 0.4", "a\nb": `a\nb`} {
		if got := csvCell(text); got != want {
			t.Errorf("csvCell(%q) = %q, want %q", text, got, want)
		}
	}
}

func TestCSVHoldsTheFinding(t *testing.T) {
	job := heldJob()
	for _, row := range readCSV(t, render(t, CSV, reportOf(job), Options{All: true})) {
		if row[column("requirement")] != "exhaust.clearance_to_openings" || row[column("subject")] != "sys-1/win-2" {
			continue
		}
		f := tooClose()
		for name, want := range map[string]string{
			"row": "finding", "file": job.File, "line": "88", "column": "7", "job": job.ID, "verdict": "deficient", "grade": "hazard", "due": "true", "holds": "true",
			"measured": f.Measured, "limit": f.Limit, "why": f.Why, "remedy": f.Remedy, "document": f.Source.Document, "section": "4.2", "basis": "published",
			"profile": f.Profile, "fingerprint": f.Fingerprint(job.ID), "sha256": job.SHA256, "rulebook": job.Digest,
		} {
			if got := row[column(name)]; got != want {
				t.Errorf("%s: got %q, want %q", name, got, want)
			}
		}
		return
	}
	t.Error("the finding has no row")
}
