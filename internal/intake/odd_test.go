package intake

import (
	"bytes"
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/xuri/excelize/v2"

	"github.com/slablint/slablint/internal/record"
	"github.com/slablint/slablint/schema"
)

func readCSVTable(t *testing.T, text string) Table {
	t.Helper()
	table, err := ReadTable("jobs.csv", []byte(text), "")
	if err != nil {
		t.Fatal(err)
	}
	return table
}

// cells is a table as text: rows with their numbers.
func cells(table Table) string {
	var b strings.Builder
	fmt.Fprintf(&b, "%q", table.Headings)
	for _, row := range table.Rows {
		fmt.Fprintf(&b, " %d", row.Number)
		for _, c := range row.Cells {
			fmt.Fprintf(&b, "|%s", c.Text)
		}
	}
	return b.String()
}

// Whatever a spreadsheet program calls CSV.
func TestKindsOfCSV(t *testing.T) {
	for name, tt := range map[string]struct{ text, want string }{
		"byte order mark":        {"\ufeffA,B\r\n1,2\r\n", `["A" "B"] 2|1|2`},
		"semicolons":             {"A;B, metres;C\n1;2,5;3\n", `["A" "B, metres" "C"] 2|1|2,5|3`},
		"tabs":                   {"A\tB\n1\t2\n", `["A" "B"] 2|1|2`},
		"said separator":         {"sep=;\r\nA;B\r\n1;2\r\n", `["A" "B"] 3|1|2`},
		"separator in a name":    {"\"A;;;\",B\n1,2\n", `["A;;;" "B"] 2|1|2`},
		"empty lines":            {"\n\nA,B\n\n1,2\n\n\n3,4\n", `["A" "B"] 5|1|2 8|3|4`},
		"lines in a cell":        {"A,B\n\"1\n1\",2\n3,4\n", "[\"A\" \"B\"] 2|1\n1|2 3|3|4"},
		"a title above":          {"A\n", `["A"]`},
		"more than is announced": {"A\n1,2,3\n", `["A"] 2|1|2|3`},
		"quotes":                 {"A\n\"say \"\"no\"\"\"\n", `["A"] 2|say "no"`},
	} {
		if got := cells(readCSVTable(t, tt.text)); got != tt.want {
			t.Errorf("%s: %s, want %s", name, got, tt.want)
		}
	}
	for name, tt := range map[string]struct{ file, text, sheet, want string }{
		"another encoding": {"a.csv", "A\nn\xe4her\n", "", "not UTF-8"},
		"two-byte text":    {"a.csv", "\xff\xfeA\x00", "", "not UTF-8"},
		"old workbook":     {"a.xls", "\xd0\xcf\x11\xe0\xa1", "", "save it as .xlsx"},
		"no workbook":      {"a.xlsx", "A,B", "", "no workbook"},
		"broken workbook":  {"a.csv", "PK\x03\x04 and so on", "", "a.csv: "},
		"a sheet of a CSV": {"a.csv", "A\n", "Jobs", "no .xlsx workbook"},
		"a stray quote":    {"a.csv", "A\n1\"2\n", "", "line 2"},
		"nothing":          {"a.csv", " \n", "", "no row with headings"},
	} {
		if _, err := ReadTable(tt.file, []byte(tt.text), tt.sheet); err == nil || !strings.Contains(err.Error(), tt.want) {
			t.Errorf("%s: %v", name, err)
		}
	}
}

func workbookOf(t *testing.T, fill func(book *excelize.File) error) []byte {
	t.Helper()
	book := excelize.NewFile()
	if err := fill(book); err != nil {
		t.Fatal(err)
	}
	var out bytes.Buffer
	if err := book.Write(&out); err != nil {
		t.Fatal(err)
	}
	return out.Bytes()
}

// Dates are stored as a count of days (ECMA-376 part 1, section 18.17.4): day
// 46098 since the end of 1899 is 17 March 2026, and 44636 since 1904.
func TestDatesInAWorkbook(t *testing.T) {
	for _, from1904 := range []bool{false, true} {
		data := workbookOf(t, func(book *excelize.File) error {
			if err := book.SetWorkbookProps(&excelize.WorkbookPropsOptions{Date1904: &from1904}); err != nil {
				return err
			}
			serial := map[bool]float64{false: 46098, true: 44636}[from1904]
			own := `"day "dd/mm/yyyy`
			feet := `0.0" feet high"`
			styles := []*excelize.Style{{NumFmt: 14}, {NumFmt: 22}, {CustomNumFmt: &own}, {CustomNumFmt: &feet}, {NumFmt: 2}, {}}
			values := []float64{serial, serial + 0.75, serial, 12.5, serial, serial}
			for i, style := range styles {
				id, err := book.NewStyle(style)
				if err != nil {
					return err
				}
				name, err := excelize.CoordinatesToCellName(i+1, 2)
				if err != nil {
					return err
				}
				if err := book.SetCellValue("Sheet1", name, values[i]); err != nil {
					return err
				}
				if err := book.SetCellStyle("Sheet1", name, name, id); err != nil {
					return err
				}
			}
			return book.SetSheetRow("Sheet1", "A1", &[]string{"A", "B", "C", "D", "E", "F"})
		})
		table, err := ReadTable("jobs.xlsx", data, "")
		if err != nil {
			t.Fatal(err)
		}
		number := map[bool]string{false: "46098", true: "44636"}[from1904]
		want := `["A" "B" "C" "D" "E" "F"] 2|2026-03-17|2026-03-17T18:00:00|2026-03-17|12.5 feet high|` + number + ".00|" + number
		if got := cells(table); got != want {
			t.Errorf("%s, want %s", got, want)
		}
	}
}

func TestOddCellsOfAWorkbook(t *testing.T) {
	data := workbookOf(t, func(book *excelize.File) error {
		for name, value := range map[string]any{"A1": "Job", "B1": "Height", "C1": "Foreman", "A2": "J-1", "A3": "J-2", "C2": "Ann", "D2": true} {
			if err := book.SetCellValue("Sheet1", name, value); err != nil {
				return err
			}
		}
		if err := book.SetCellFormula("Sheet1", "B2", "6*2"); err != nil {
			return err
		}
		if err := book.SetCellStr("Sheet1", "B3", "#REF!"); err != nil {
			return err
		}
		if _, err := book.NewSheet("Second"); err != nil {
			return err
		}
		if err := book.SetCellStr("Second", "A1", "Other"); err != nil {
			return err
		}
		return book.MergeCell("Sheet1", "C2", "C3")
	})
	table, err := ReadTable("jobs.xlsx", data, "")
	if err != nil {
		t.Fatal(err)
	}
	first, second := table.Rows[0].Cells, table.Rows[1].Cells
	if first[1].Text != "=6*2" || !strings.Contains(first[1].Reason, "no stored value") {
		t.Errorf("a formula: %+v", first[1])
	}
	if first[2].Text != "Ann" || !strings.Contains(first[2].Reason, "C2:C3") {
		t.Errorf("a merged cell: %+v", first[2])
	}
	if second[1].Reason == "" {
		t.Errorf("an error in the sheet: %+v", second[1])
	}
	if first[3].Text != "TRUE" {
		t.Errorf("a yes or no: %+v", first[3])
	}
	if table.Sheet != "Sheet1" {
		t.Errorf("sheet %q", table.Sheet)
	}
	if other, err := ReadTable("jobs.xlsx", data, "Second"); err != nil || !slices.Equal(other.Headings, []string{"Other"}) {
		t.Errorf("%v, %v", other.Headings, err)
	}
	if _, err := ReadTable("jobs.xlsx", data, "Third"); err == nil || !strings.Contains(err.Error(), "Third") {
		t.Errorf("%v", err)
	}
}

// Every cell that is left out is named by its address, and what is left in is
// what the sheet said.
func TestOddValues(t *testing.T) {
	for name, tt := range map[string]struct{ heading, text, want string }{
		"thousands":         {"Outlet", "\"1,250\"", `height_above_grade: "1,250 ft"`},
		"decimal comma":     {"Outlet", "\"12,5\"", "B2"},
		"own unit":          {"Outlet", "3.5 m", `height_above_grade: "3.5 m"`},
		"unit of no length": {"Outlet", "3.5 kg", "B2"},
		"not a number":      {"Outlet", "NaN", "B2"},
		"capitals":          {"Cap", "FALSE", "the mapping has no value for it"},
		"fraction":          {"Storeys", "1.5", "whole number"},
		"leading zero":      {"Storeys", "02", "B2"},
		"hexadecimal":       {"Storeys", "0x10", "B2"},
		"infinite":          {"Storeys", "Inf", "B2"},
		"an error":          {"Outlet", "#DIV/0!", "shows an error"},
	} {
		rows := converted(t, readCSVTable(t, padded("Job no,Stage", tt.heading, "J-1,done", tt.text)))
		var said strings.Builder
		for _, u := range rows[0].Unplaced {
			fmt.Fprintf(&said, "%s %s %s\n", u.Cell, u.Column, u.Reason)
		}
		got := strings.ReplaceAll(said.String(), "C2 ", "B2 ") + string(rows[0].YAML)
		if !strings.Contains(got, tt.want) {
			t.Errorf("%s: %s", name, got)
		}
		if tt.want == "B2" && strings.Contains(string(rows[0].YAML), tt.text) {
			t.Errorf("%s was placed:\n%s", name, rows[0].YAML)
		}
	}
}

// padded is a sheet of one row with all columns of the mapping; the column of
// interest is the third.
func padded(headings, heading, row, text string) string {
	headings += "," + heading
	row += "," + text
	for _, column := range []string{"Outlet", "Cap", "Storeys", "After"} {
		if column != heading {
			headings += "," + column
			row += ","
		}
	}
	return headings + "\n" + row + "\n"
}

// A constant belongs to an entry of a list only when a cell filled it: no test
// is made up for a job that had none.
func TestConstantsMakeNothingUp(t *testing.T) {
	rows := converted(t, readCSVTable(t, padded("Job no,Stage", "After", "J-1,done", "")))
	if strings.Contains(string(rows[0].YAML), "measurements") || !strings.Contains(string(rows[0].YAML), "profiles: [\"us-epa-1994\"]") {
		t.Errorf("%s", rows[0].YAML)
	}
	rows = converted(t, readCSVTable(t, padded("Job no,Stage", "After", "J-1,done", "1.4")))
	if !strings.Contains(string(rows[0].YAML), "phase: \"after\"") {
		t.Errorf("%s", rows[0].YAML)
	}
}

func TestMappingAgainstSheet(t *testing.T) {
	shape, err := record.ParseShape(schema.Job())
	if err != nil {
		t.Fatal(err)
	}
	const twice = "columns:\n  - {column: A, path: /job/id}\n  - {column: B, path: /job/id}\n"
	if _, err := ReadMapping("map.yaml", []byte(twice), shape); err == nil || !strings.Contains(err.Error(), `map.yaml:3:5: the columns "A" and "B" both go to /job/id`) {
		t.Errorf("two columns to one place: %v", err)
	}
	for heading, ok := range map[string]bool{"Outlet (ft)": true, "Outlet [feet]": true, "Outlet (m)": false, "Outlet (see note)": true, "Outlet": true} {
		m, err := ReadMapping("map.yaml", []byte(fmt.Sprintf("columns:\n  - {column: %q, path: /systems/0/discharge/height_above_grade, unit: ft}\n", heading)), shape)
		if err != nil {
			t.Fatal(err)
		}
		_, err = NewConverter(readCSVTable(t, heading+"\n12\n"), m, shape, nil)
		if (err == nil) != ok {
			t.Errorf("%s in ft: %v", heading, err)
		}
	}
	m, err := ReadMapping("map.yaml", []byte("columns:\n  - {column: A, path: /job/id}\n"), shape)
	if err != nil {
		t.Fatal(err)
	}
	if _, err := NewConverter(readCSVTable(t, "A,A\n1,2\n"), m, shape, nil); err == nil || !strings.Contains(err.Error(), "stands twice") {
		t.Errorf("a heading twice: %v", err)
	}
}

func TestAddress(t *testing.T) {
	for column, want := range map[int]string{0: "A7", 25: "Z7", 26: "AA7", 701: "ZZ7", 702: "AAA7"} {
		if got := address(column, 7); got != want {
			t.Errorf("column %d is %s, want %s", column, got, want)
		}
	}
}

func TestDateFormats(t *testing.T) {
	for format, want := range map[string]bool{
		"yyyy-mm-dd": true, "[$-409]d-mmm-yy": true, "h:mm AM/PM": true, "General": false, "0.00": false, `0.0" days"`: false,
		`#,##0\ "m"`: false, "[Red]0": false, "0_d": false, "@": false,
	} {
		if got := isDateFormat(0, format); got != want {
			t.Errorf("%s: %v", format, got)
		}
	}
}
