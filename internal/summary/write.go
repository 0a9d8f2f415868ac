package summary

import (
	_ "embed"
	"encoding/csv"
	"encoding/json"
	"fmt"
	"html/template"
	"io"
	"strings"
	"unicode"
	"unicode/utf8"

	"github.com/slablint/slablint/internal/finding"
)

//go:embed summary.tmpl
var pageText string

var page = template.Must(template.New("summary").Funcs(template.FuncMap{"share": share, "split": split, "bar": barOf, "after": func() int { return mostShown + 1 }}).Parse(pageText))

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
		if err := page.Execute(w, map[string]any{"S": s, "Most": s.charts(), "Notice": finding.Notice}); err != nil {
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

// Most requirements that a page shows unfolded.
const mostShown = 15

// Often are the requirements that hold most jobs.
func (s Summary) Often() []Count { return s.Requirements[:min(len(s.Requirements), mostShown)] }

// Seldom are the rest.
func (s Summary) Seldom() []Count { return s.Requirements[len(s.Often()):] }

// fullBar is the length of the longest bar, percent of the line; its number
// stands behind it.
const fullBar = 80

// share is the length of a bar, percent of the line; only nothing has none.
func share(n, most int) int {
	if n == 0 || most == 0 {
		return 0
	}
	return max(1, fullBar*n/most)
}

// bar is a count with the length of its bar.
type bar struct {
	Count
	Share int // percent of the line
}

func barOf(c Count, most int) bar { return bar{c, share(c.Jobs, most)} }

// split is a table of groups and the number that its bars are measured by.
func split(splits []Split, most int) map[string]any {
	return map[string]any{"Splits": splits, "Most": most}
}

// most is the largest number of a chart, which the other bars are measured by.
func most[T any](list []T, number func(T) int) int {
	n := 0
	for _, item := range list {
		n = max(n, number(item))
	}
	return n
}

// charts are the numbers that bars are as long as the share of.
func (s Summary) charts() map[string]int {
	jobs := func(p Split) int { return p.Ready + p.Hold }
	return map[string]int{
		"requirements": most(s.Requirements, func(c Count) int { return c.Jobs }),
		"grades":       most(s.Grades, func(c Count) int { return c.Findings }),
		"reduction":    most(s.Reduction, func(b Band) int { return b.Jobs }),
		"splits":       max(most(s.Months, jobs), most(s.Crew, jobs), most(s.Profiles, jobs)),
	}
}

func text(w io.Writer, s Summary) error {
	var b strings.Builder
	group := ""
	for _, row := range s.rows()[1:] {
		name := strings.Map(printable, row[1])
		if row[0] != group {
			group = row[0]
			fmt.Fprintf(&b, "\n%s\n", group)
		}
		switch group {
		case "not judged":
			fmt.Fprintf(&b, "  %s: %s\n", strings.Map(printable, row[6]), name)
			continue
		case "retest due":
			fmt.Fprintf(&b, "  %s  %s  %s\n", row[7], name, strings.Map(printable, row[6]))
			continue
		}
		fmt.Fprintf(&b, "  %s%s %5s", name, strings.Repeat(" ", max(1, 40-utf8.RuneCountInString(name))), row[2])
		if row[3] != "" {
			fmt.Fprintf(&b, "  %4s ready %4s on hold", row[3], row[4])
		}
		if row[5] != "" {
			fmt.Fprintf(&b, "  %s open", row[5])
		}
		b.WriteByte('\n')
	}
	fmt.Fprintf(&b, "\n%s\n%d jobs: %d ready, %d on hold, %d not judged; %d retests due by %s\n",
		finding.Notice, s.Jobs, s.Ready, s.Hold, s.NotJudged, len(s.RetestDue), s.AsOf)
	_, err := io.WriteString(w, strings.TrimPrefix(b.String(), "\n"))
	return err
}

func printable(r rune) rune {
	if !unicode.IsPrint(r) {
		return ' '
	}
	return r
}
