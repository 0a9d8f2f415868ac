package summary

import (
	_ "embed"
	"encoding/csv"
	"encoding/json"
	"fmt"
	"html/template"
	"io"
	"strings"
	"unicode/utf8"

	"github.com/slablint/slablint/internal/finding"
)

//go:embed summary.tmpl
var pageText string

var page = template.Must(template.New("summary").Funcs(template.FuncMap{"share": share, "bar": barOf, "after": func() int { return mostShown + 1 }}).Parse(pageText))

// formats lists how a summary can be written, the default first.
func formats() []string { return []string{"text", "json", "csv", "html"} }

// Write writes the summary in one of the formats.
func Write(w io.Writer, s Summary, format string) error {
	switch format {
	case "text":
		return text(w, s)
	case "json":
		out := json.NewEncoder(w)
		out.SetEscapeHTML(false)
		out.SetIndent("", "  ")
		return out.Encode(s)
	case "csv":
		out := csv.NewWriter(w)
		out.UseCRLF = true // RFC 4180
		for _, row := range s.rows() {
			for i := range row {
				row[i] = harmless(row[i])
			}
			if err := out.Write(row); err != nil {
				return err
			}
		}
		out.Flush()
		return out.Error()
	case "html":
		if err := page.Execute(w, map[string]any{"S": s, "Notice": finding.Notice}); err != nil {
			return fmt.Errorf("summary page: %w", err)
		}
		return nil
	}
	return fmt.Errorf("unknown format %q: expected one of %s", format, strings.Join(formats(), ", "))
}

// harmless keeps a spreadsheet from taking a text for a formula.
func harmless(s string) string {
	if s != "" && strings.ContainsRune("=+-@\t\r", rune(s[0])) {
		return "'" + s
	}
	return s
}

// fullBar is the length of the longest bar, percent of the line; its number
// stands behind it.
const fullBar = 80

// Most requirements that a page shows unfolded.
const mostShown = 15

// Often are the requirements that hold most jobs.
func (s Summary) Often() []Count { return s.Requirements[:min(len(s.Requirements), mostShown)] }

// Seldom are the rest.
func (s Summary) Seldom() []Count { return s.Requirements[len(s.Often()):] }

// share is the length of a bar, percent of the line.
func share(n, most int) int {
	if most == 0 {
		return 0
	}
	return max(1, fullBar*n/most)
}

// Longest is the largest number of jobs among the requirements.
func (s Summary) Longest() int {
	if len(s.Requirements) == 0 {
		return 0
	}
	return s.Requirements[0].Jobs
}

// bar is a count with the length of its bar.
type bar struct {
	Count
	Share int // percent of the line
}

func barOf(c Count, most int) bar { return bar{c, share(c.Jobs, most)} }

// MostReduced is the largest number of jobs in a band of reduction.
func (s Summary) MostReduced() int {
	most := 0
	for _, b := range s.Reduction {
		most = max(most, b.Jobs)
	}
	return most
}

func text(w io.Writer, s Summary) error {
	var b strings.Builder
	group := ""
	for _, row := range s.rows()[1:] {
		if row[0] != group {
			group = row[0]
			fmt.Fprintf(&b, "\n%s\n", group)
		}
		name := row[1]
		fmt.Fprintf(&b, "  %s%s %8s", name, strings.Repeat(" ", max(1, 48-utf8.RuneCountInString(name))), row[2])
		if row[3] != "" {
			fmt.Fprintf(&b, "  %s ready, %s on hold", row[3], row[4])
		}
		b.WriteByte('\n')
	}
	for _, e := range s.Errors {
		fmt.Fprintf(&b, "\n%s:%d:%d: %s", e.File, e.Line, e.Column, strings.Map(printable, e.Message))
	}
	fmt.Fprintf(&b, "\n%s\n%d jobs: %d ready, %d on hold, %d not judged; %d retests due by %s\n",
		finding.Notice, s.Jobs, s.Ready, s.Hold, s.NotJudged, len(s.RetestDue), s.AsOf)
	_, err := io.WriteString(w, strings.TrimPrefix(b.String(), "\n"))
	return err
}

func printable(r rune) rune {
	if r < ' ' || r == 0x7f {
		return ' '
	}
	return r
}
