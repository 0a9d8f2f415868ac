// Package intake turns the rows of a spreadsheet into job records by a mapping
// file. It invents nothing: what it cannot place it reports, cell by cell.
package intake

import (
	"bytes"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"path/filepath"
	"strings"
	"unicode/utf8"
)

// Table is a sheet: a heading row and the rows below it.
type Table struct {
	Name     string
	Sheet    string // of a workbook, "" in a CSV file
	Headings []string
	Rows     []Line
}

// Line is one row of a sheet.
type Line struct {
	Number int // as a spreadsheet counts
	Cells  []Cell
}

// Cell is one cell as it is shown; a date is written as 2026-03-17.
type Cell struct {
	Text   string
	Reason string // why it cannot be used, "" when it can
}

// ReadTable reads a CSV file (RFC 4180, UTF-8; comma, semicolon or tab) or a
// sheet of an XLSX workbook, which is known by its content; sheet "" is the
// first.
func ReadTable(name string, data []byte, sheet string) (Table, error) {
	t := Table{Name: name}
	var err error
	switch {
	case bytes.HasPrefix(data, []byte("PK\x03\x04")):
		t.Sheet, t.Rows, err = readWorkbook(data, sheet)
	case bytes.HasPrefix(data, []byte("\xd0\xcf\x11\xe0")):
		err = errors.New("this is an old or a locked workbook: save it as .xlsx without a password")
	case strings.EqualFold(filepath.Ext(name), ".xlsx"):
		err = errors.New("this is no workbook, whatever its name says")
	case sheet != "":
		err = fmt.Errorf("the mapping names the sheet %q, but this is no .xlsx workbook", sheet)
	default:
		t.Rows, err = readCSV(data)
	}
	if err != nil {
		return Table{}, fmt.Errorf("%s: %w", name, err)
	}
	for i, row := range t.Rows {
		if !row.empty() {
			t.Rows = t.Rows[i+1:]
			for _, heading := range row.Cells {
				t.Headings = append(t.Headings, strings.TrimSpace(heading.Text))
			}
			return t, nil
		}
	}
	return Table{}, fmt.Errorf("%s: there is no row with headings", name)
}

func (l Line) empty() bool {
	for _, c := range l.Cells {
		if strings.TrimSpace(c.Text) != "" || c.Reason != "" {
			return false
		}
	}
	return true
}

func readCSV(data []byte) ([]Line, error) {
	data = bytes.TrimPrefix(data, []byte("\ufeff"))
	if !utf8.Valid(data) {
		return nil, errors.New("the text is not UTF-8: save it as CSV UTF-8")
	}
	skipped := 0
	comma := separator(data)
	if first, rest, _ := bytes.Cut(data, []byte("\n")); len(bytes.TrimSpace(first)) == 5 && bytes.HasPrefix(first, []byte("sep=")) {
		comma, data, skipped = rune(first[4]), rest, 1
	}
	r := csv.NewReader(bytes.NewReader(data))
	r.Comma = comma
	r.FieldsPerRecord = -1
	var rows []Line
	number, end := skipped, 0 // of the row before, and the line on which it ended
	for {
		row, err := r.Read()
		if errors.Is(err, io.EOF) {
			return rows, nil
		}
		if err != nil {
			return nil, err
		}
		start, _ := r.FieldPos(0)
		number += start - end // a line without anything is a row too
		end = bytes.Count(data[:r.InputOffset()], []byte("\n"))
		line := Line{Number: number, Cells: make([]Cell, len(row))}
		for i, text := range row {
			line.Cells[i] = Cell{text, mistake(text)}
		}
		rows = append(rows, line)
	}
}

// separator is what stands most often between the headings.
func separator(data []byte) rune {
	first, _, _ := bytes.Cut(bytes.TrimLeft(data, "\r\n"), []byte("\n"))
	counts := map[rune]int{}
	quoted := false
	for _, r := range string(first) {
		if r == '"' {
			quoted = !quoted
		} else if !quoted {
			counts[r]++
		}
	}
	best := ','
	for _, r := range ";\t" {
		if counts[r] > counts[best] {
			best = r
		}
	}
	return best
}

// mistake is what a spreadsheet shows where it could not compute.
func mistake(text string) string {
	switch strings.TrimSpace(text) {
	case "#N/A", "#REF!", "#VALUE!", "#DIV/0!", "#NAME?", "#NULL!", "#NUM!", "#SPILL!", "#CALC!":
		return "the sheet shows an error there"
	}
	return ""
}
