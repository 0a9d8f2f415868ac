package main

import (
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"unicode"
	"unicode/utf8"

	"github.com/spf13/cobra"

	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/intake"
	"github.com/slablint/slablint/internal/outcome"
	"github.com/slablint/slablint/internal/pipeline"
	"github.com/slablint/slablint/internal/record"
	"github.com/slablint/slablint/internal/replace"
	"github.com/slablint/slablint/schema"
)

func newImport(w world) *cobra.Command {
	var mapping, output string
	cmd := &cobra.Command{
		Use:   "import --map FILE --output DIR SHEET",
		Short: "Write one record for each row of a CSV or XLSX sheet",
		Long: "Writes one YAML record for each row. Every cell that has no place in its record is\n" +
			"reported by its address; nothing is made up. Exit status 1 when a cell or a row was\n" +
			"left out.",
		Args: cobra.ExactArgs(1),
		RunE: func(_ *cobra.Command, args []string) error {
			if mapping == "" || output == "" {
				return errors.New("--map and --output are needed: the mapping file and the folder for the records")
			}
			rows, err := importRows(args[0], mapping)
			if err != nil {
				return err
			}
			return writeRows(w, filepath.Base(args[0]), rows, output)
		},
	}
	cmd.Flags().StringVar(&mapping, "map", "", "file that says where each column goes")
	cmd.Flags().StringVar(&output, "output", "", "folder for the records")
	return cmd
}

func importRows(sheet, mapping string) ([]intake.Row, error) {
	shape, err := record.ParseShape(schema.Job())
	if err != nil {
		return nil, err
	}
	text, err := os.ReadFile(mapping)
	if err != nil {
		return nil, inWords(mapping, err)
	}
	m, err := intake.ReadMapping(mapping, text, shape)
	if err != nil {
		return nil, err
	}
	data, err := os.ReadFile(sheet)
	if err != nil {
		return nil, inWords(sheet, err)
	}
	table, err := intake.ReadTable(sheet, data, m.Sheet)
	if err != nil {
		return nil, err
	}
	rb, err := (&ruleFlags{}).rulebook()
	if err != nil {
		return nil, err
	}
	p, err := pipeline.New(rb, pipeline.Options{})
	if err != nil {
		return nil, err
	}
	c, err := intake.NewConverter(table, m, shape, func(doc *record.Document) []finding.Error {
		_, errs := p.Derive(doc, nil)
		return errs
	})
	if err != nil {
		return nil, err
	}
	return c.Rows(), nil
}

func writeRows(w world, sheet string, rows []intake.Row, folder string) error {
	if err := os.MkdirAll(folder, 0o755); err != nil {
		return err
	}
	var said strings.Builder
	taken := map[string]intake.Row{}
	written, left := 0, 0
	for _, row := range rows {
		for _, u := range row.Unplaced {
			left++
			place := fmt.Sprintf("row %d", u.Row)
			if u.Cell != "" {
				place = u.Cell
			}
			if u.Column != "" {
				place += ", " + strings.Map(printable, u.Column)
			}
			if u.Text != "" {
				place += fmt.Sprintf(": %q", u.Text)
			}
			fmt.Fprintf(&said, "%s: %s: %s\n", sheet, place, u.Reason)
		}
		if row.YAML == nil {
			fmt.Fprintf(&said, "%s: row %d: no record was written\n", sheet, row.Number)
			continue
		}
		name := fileName(row)
		folded := strings.ToLower(name) // some disks do not tell capitals apart
		if other, twice := taken[folded]; twice {
			left++
			fmt.Fprintf(&said, "%s: row %d: the job number %q gives the same file as %q in row %d; no record was written\n", sheet, row.Number, row.Job, other.Job, other.Number)
			continue
		}
		taken[folded] = row
		path := filepath.Join(folder, name)
		if _, err := os.Stat(path); err == nil {
			left++
			fmt.Fprintf(&said, "%s: row %d: %s is already there and was left as it is\n", sheet, row.Number, path)
			continue
		}
		if err := replace.File(path, func(out io.Writer) error { _, err := out.Write(row.YAML); return err }); err != nil {
			return err
		}
		written++
	}
	fmt.Fprintf(&said, "%d records written to %s, %d cells or rows left out\n", written, folder, left)
	if _, err := io.WriteString(w.out, said.String()); err != nil {
		return err
	}
	if left > 0 {
		return statusError(outcome.StatusHold)
	}
	return nil
}

// longest is how many bytes of a job number a file name takes.
const longest = 100

// fileName is safe on any disk whatever the job number holds, and never hidden.
func fileName(row intake.Row) string {
	name := strings.Map(func(r rune) rune {
		if strings.ContainsRune(`/\:*?"<>|`, r) || !unicode.IsPrint(r) {
			return '-'
		}
		return r
	}, row.Job)
	for len(name) > longest {
		_, size := utf8.DecodeLastRuneInString(name)
		name = name[:len(name)-size]
	}
	name = strings.TrimRight(strings.TrimLeft(name, ".- "), ". ")
	switch {
	case name == "":
		name = fmt.Sprintf("row-%d", row.Number)
	case reserved.MatchString(name):
		name = "job-" + name
	}
	return name + ".yaml"
}

// reserved are names that Windows keeps for devices, and that of the settings.
var reserved = regexp.MustCompile(`(?i)^(con|prn|aux|nul|com[0-9]|lpt[0-9]|slablint)(\..*)?$`)

func printable(r rune) rune {
	if !unicode.IsPrint(r) {
		return ' '
	}
	return r
}
