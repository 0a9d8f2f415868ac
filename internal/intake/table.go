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

	"github.com/xuri/excelize/v2"
)

// Table is a sheet as text: a heading row and the rows below it.
type Table struct {
	Name     string
	Headings []string
	Rows     [][]string // as wide as the headings or narrower
	First    int        // number of the first row below the headings, as people count
}

// ReadTable reads a CSV file (RFC 4180, comma or semicolon) or a sheet of an
// XLSX workbook; sheet "" is the first. Cells are taken as they are shown.
func ReadTable(name string, data []byte, sheet string) (Table, error) {
	var (
		rows [][]string
		err  error
	)
	if strings.EqualFold(filepath.Ext(name), ".xlsx") {
		rows, err = readWorkbook(data, sheet)
	} else {
		rows, err = readCSV(data)
	}
	if err != nil {
		return Table{}, fmt.Errorf("%s: %w", name, err)
	}
	for i, row := range rows {
		if !empty(row) {
			t := Table{Name: name, Rows: rows[i+1:], First: i + 2}
			for _, heading := range row {
				t.Headings = append(t.Headings, strings.TrimSpace(heading))
			}
			return t, nil
		}
	}
	return Table{}, fmt.Errorf("%s: there is no row with headings", name)
}

func empty(row []string) bool { return strings.TrimSpace(strings.Join(row, "")) == "" }

func readCSV(data []byte) ([][]string, error) {
	data = bytes.TrimPrefix(data, []byte("\ufeff"))
	first, _, _ := bytes.Cut(data, []byte("\n"))
	r := csv.NewReader(bytes.NewReader(data))
	if bytes.Count(first, []byte(";")) > bytes.Count(first, []byte(",")) {
		r.Comma = ';'
	}
	r.FieldsPerRecord = -1
	var rows [][]string
	for {
		row, err := r.Read()
		if errors.Is(err, io.EOF) {
			return rows, nil
		}
		if err != nil {
			return nil, err
		}
		rows = append(rows, row)
	}
}

func readWorkbook(data []byte, sheet string) ([][]string, error) {
	book, err := excelize.OpenReader(bytes.NewReader(data), excelize.Options{UnzipSizeLimit: 512 << 20})
	if err != nil {
		return nil, err
	}
	defer book.Close() //nolint:errcheck // only read from
	if sheet == "" {
		sheet = book.GetSheetName(0)
	}
	return book.GetRows(sheet)
}
