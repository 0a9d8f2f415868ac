package intake

import (
	"bytes"
	"strconv"
	"strings"

	"github.com/xuri/excelize/v2"
)

// readWorkbook reads one sheet. Values are as they are shown, except dates:
// those are stored as a count of days and may be shown in any order of day and
// month, so they are written out.
func readWorkbook(data []byte, sheet string) (name string, rows []Line, err error) {
	book, err := excelize.OpenReader(bytes.NewReader(data), excelize.Options{UnzipSizeLimit: 512 << 20})
	if err != nil {
		return "", nil, err
	}
	defer book.Close() //nolint:errcheck // only read from
	if sheet == "" {
		sheet = book.GetSheetName(0)
	}
	shown, err := book.GetRows(sheet)
	if err != nil {
		return "", nil, err
	}
	w := workbook{File: book, sheet: sheet, dates: map[int]bool{}}
	properties, err := book.GetWorkbookProps()
	if err != nil {
		return "", nil, err
	}
	w.from1904 = properties.Date1904 != nil && *properties.Date1904
	merged, err := w.merged()
	if err != nil {
		return "", nil, err
	}
	for i, row := range shown {
		line := Line{Number: i + 1}
		for j, text := range row {
			at, err := excelize.CoordinatesToCellName(j+1, i+1)
			if err != nil {
				return "", nil, err
			}
			cell, err := w.cell(at, text)
			if err != nil {
				return "", nil, err
			}
			if area := merged[at]; area != "" && cell.Reason == "" && len(rows) > 0 {
				cell.Reason = "the cell is merged over " + area + ", so it does not say which cell it belongs to"
			}
			line.Cells = append(line.Cells, cell)
		}
		rows = append(rows, line)
	}
	return sheet, rows, nil
}

type workbook struct {
	*excelize.File
	sheet    string
	from1904 bool
	dates    map[int]bool // whether a style shows dates
}

// merged maps the first cell of every merged area to the area.
func (w workbook) merged() (map[string]string, error) {
	areas, err := w.GetMergeCells(w.sheet)
	if err != nil {
		return nil, err
	}
	out := map[string]string{}
	for _, area := range areas {
		out[area.GetStartAxis()] = area.GetStartAxis() + ":" + area.GetEndAxis()
	}
	return out, nil
}

func (w workbook) cell(at, shown string) (Cell, error) {
	if reason := mistake(shown); reason != "" {
		return Cell{shown, reason}, nil
	}
	if shown == "" {
		formula, err := w.GetCellFormula(w.sheet, at)
		if err != nil || formula == "" {
			return Cell{}, err
		}
		return Cell{"=" + formula, "the formula has no stored value: open the sheet in a spreadsheet program and save it"}, nil
	}
	raw, err := w.GetCellValue(w.sheet, at, excelize.Options{RawCellValue: true})
	if err != nil {
		return Cell{}, err
	}
	serial, err := strconv.ParseFloat(raw, 64)
	if err != nil {
		return Cell{Text: shown}, nil
	}
	isDate, err := w.showsDate(at)
	if err != nil || !isDate {
		return Cell{Text: shown}, err
	}
	day, err := excelize.ExcelDateToTime(serial, w.from1904)
	if err != nil {
		return Cell{shown, "the date cannot be read"}, nil
	}
	switch {
	case serial < 1:
		return Cell{Text: day.Format("15:04")}, nil
	case day.Hour() == 0 && day.Minute() == 0 && day.Second() == 0:
		return Cell{Text: day.Format("2006-01-02")}, nil
	}
	return Cell{Text: day.Format("2006-01-02T15:04:05")}, nil
}

func (w workbook) showsDate(at string) (bool, error) {
	id, err := w.GetCellStyle(w.sheet, at)
	if err != nil {
		return false, err
	}
	known, seen := w.dates[id]
	if seen {
		return known, nil
	}
	style, err := w.GetStyle(id)
	if err != nil {
		return false, err
	}
	format := ""
	if style.CustomNumFmt != nil {
		format = *style.CustomNumFmt
	}
	w.dates[id] = isDateFormat(style.NumFmt, format)
	return w.dates[id], nil
}

// isDateFormat knows the built-in number formats for dates and times (ECMA-376
// part 1, section 18.8.30) and own ones by their letters outside quotes.
func isDateFormat(id int, format string) bool {
	if format == "" {
		return id >= 14 && id <= 22 || id >= 27 && id <= 36 || id >= 45 && id <= 47 || id >= 50 && id <= 58
	}
	var letters strings.Builder
	until := rune(0)
	escaped := false
	for _, r := range format {
		switch {
		case escaped:
			escaped = false
		case until != 0:
			if r == until {
				until = 0
			}
		case r == '\\' || r == '_' || r == '*':
			escaped = true
		case r == '"':
			until = '"'
		case r == '[':
			until = ']'
		default:
			letters.WriteRune(r)
		}
	}
	return strings.ContainsAny(strings.ReplaceAll(strings.ToLower(letters.String()), "general", ""), "ymdhs")
}
