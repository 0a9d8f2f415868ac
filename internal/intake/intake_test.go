package intake

import (
	"bytes"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/xuri/excelize/v2"

	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/record"
	"github.com/slablint/slablint/internal/validate"
	"github.com/slablint/slablint/schema"
)

const mappingText = `columns:
  - {column: Job no, path: /job/id}
  - {column: Stage, path: /job/stage, values: {done: closeout, "in work": running}}
  - {column: Outlet, path: /systems/0/discharge/height_above_grade, unit: ft}
  - {column: Cap, path: /systems/0/discharge/rain_cap, values: {"yes": "true", "no": "false"}}
  - {column: Storeys, path: /house/storeys}
  - {column: After, path: /measurements/tests/0/result, unit: pCi/L}
constants:
  /job/profiles: [us-epa-1994]
  /measurements/tests/0/phase: after
`

const sheet = "Job no,Stage,Outlet,Cap,Storeys,After,Colour\r\n" +
	"0107,done,12.5,no,2,1.4,red\r\n" +
	",,,,,,\r\n" +
	"J-2,closed,twelve,maybe,two,\"1,2 pCi/L\",\r\n" +
	"J-3,in work,3 m,yes,1,,\r\n"

func converted(t *testing.T, table Table) []Row {
	t.Helper()
	shape, err := record.ParseShape(schema.Job())
	if err != nil {
		t.Fatal(err)
	}
	v, err := validate.New()
	if err != nil {
		t.Fatal(err)
	}
	m, err := ReadMapping("map.yaml", []byte(mappingText), shape)
	if err != nil {
		t.Fatal(err)
	}
	c, err := NewConverter(table, m, shape, func(doc *record.Document) []finding.Error {
		errs := v.Check(doc)
		if len(errs) > 0 {
			return errs
		}
		_, unreadable := doc.Canonical(shape)
		for _, e := range unreadable {
			errs = append(errs, finding.Error{File: e.Spot.File, Line: e.Spot.Line, Column: e.Spot.Column, Message: e.Message})
		}
		return errs
	})
	if err != nil {
		t.Fatal(err)
	}
	return c.Rows()
}

func TestRowsBecomeRecords(t *testing.T) {
	table, err := ReadTable("jobs.csv", []byte(sheet), "")
	if err != nil {
		t.Fatal(err)
	}
	rows := converted(t, table)
	if len(rows) != 3 {
		t.Fatalf("%d rows", len(rows))
	}
	want := "job:\n  profiles: [\"us-epa-1994\"]\n  id: \"0107\"\n  stage: \"closeout\"\nmeasurements:\n  tests:\n    - id: \"test-1\"\n" +
		"      phase: \"after\"\n      result: \"1.4 pCi/L\"\nsystems:\n  - id: \"system-1\"\n    discharge:\n" +
		"      height_above_grade: \"12.5 ft\"\n      rain_cap: false\nhouse:\n  storeys: 2\n"
	if diff := cmp.Diff(want, string(rows[0].YAML)); diff != "" {
		t.Error(diff)
	}
	if rows[0].Job != "0107" || len(rows[0].Unplaced) != 1 || rows[0].Unplaced[0].Column != "Colour" {
		t.Errorf("%+v", rows[0].Unplaced)
	}
}

// Nothing is guessed and nothing is lost: each cell without a place is named.
func TestEveryCellIsPlacedOrReported(t *testing.T) {
	table, err := ReadTable("jobs.csv", []byte(sheet), "")
	if err != nil {
		t.Fatal(err)
	}
	rows := converted(t, table)
	var got []string
	for _, u := range rows[1].Unplaced {
		got = append(got, u.Column+"="+u.Text)
	}
	for _, cell := range []string{"Stage=closed", "Outlet=twelve", "Cap=maybe", "Storeys=two", "After=1,2 pCi/L"} {
		if !strings.Contains(strings.Join(got, ";"), cell) {
			t.Errorf("%s is neither placed nor reported: %v", cell, got)
		}
	}
	if rows[1].YAML != nil {
		t.Errorf("a record without a stage was written:\n%s", rows[1].YAML)
	}
	if !strings.Contains(string(rows[2].YAML), "height_above_grade: \"3 m\"") || rows[2].Number != 5 {
		t.Errorf("row %d\n%s", rows[2].Number, rows[2].YAML)
	}
}

func TestWorkbook(t *testing.T) {
	book := excelize.NewFile()
	for i, line := range strings.Split(strings.TrimSpace(sheet), "\r\n") {
		for j, text := range strings.Split(strings.ReplaceAll(line, "\"1,2 pCi/L\"", "1.2"), ",") {
			cell, err := excelize.CoordinatesToCellName(j+1, i+1)
			if err != nil {
				t.Fatal(err)
			}
			if err := book.SetCellStr("Sheet1", cell, text); err != nil {
				t.Fatal(err)
			}
		}
	}
	var out bytes.Buffer
	if err := book.Write(&out); err != nil {
		t.Fatal(err)
	}
	table, err := ReadTable("jobs.xlsx", out.Bytes(), "")
	if err != nil {
		t.Fatal(err)
	}
	fromCSV, err := ReadTable("jobs.csv", []byte(sheet), "")
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(string(converted(t, fromCSV)[0].YAML), string(converted(t, table)[0].YAML)); diff != "" {
		t.Error(diff)
	}
	if _, err := ReadTable("x.xlsx", []byte("no workbook"), ""); err == nil {
		t.Error("no workbook was read")
	}
}

func TestMistakes(t *testing.T) {
	shape, err := record.ParseShape(schema.Job())
	if err != nil {
		t.Fatal(err)
	}
	for _, tt := range []struct{ old, with, want string }{
		{"/job/id", "/job/number", `map.yaml:2:28: the path /job/number leads nowhere in a record: "number" is unknown there`},
		{"column: Job no, ", "", "map.yaml:2:5: a column needs its heading"},
		{"columns:", "colums:", `map.yaml:2:3: found the unknown field "colums"`},
		{"unit: ft", "units: ft", `found the unknown field "units"`},
	} {
		_, err := ReadMapping("map.yaml", []byte(strings.Replace(mappingText, tt.old, tt.with, 1)), shape)
		if err == nil || !strings.Contains(err.Error(), tt.want) {
			t.Errorf("got %v\nwant %s", err, tt.want)
		}
	}
	m, err := ReadMapping("map.yaml", []byte(mappingText), shape)
	if err != nil {
		t.Fatal(err)
	}
	table, err := ReadTable("jobs.csv", []byte("Job no;Stage\n1;done\n"), "")
	if err != nil {
		t.Fatal(err)
	}
	if _, err := NewConverter(table, m, shape, nil); err == nil || !strings.Contains(err.Error(), `jobs.csv has no column "Outlet": it has Job no, Stage`) {
		t.Error(err)
	}
	if _, err := ReadTable("jobs.csv", []byte("\n\n"), ""); err == nil {
		t.Error("an empty sheet was read")
	}
}
