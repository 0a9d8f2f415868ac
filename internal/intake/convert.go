package intake

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/quantity"
	"github.com/slablint/slablint/internal/record"
)

// Unplaced is a cell that has no place in its record.
type Unplaced struct {
	Row    int    // as a spreadsheet counts
	Cell   string // its address, such as C7; "" for the row as a whole
	Column string
	Text   string
	Reason string
}

// Row is one row of the sheet as a record.
type Row struct {
	Number   int
	Job      string // its number, "" when the row has none
	YAML     []byte // nil when the row gives no readable record
	Unplaced []Unplaced
}

// Check tells what is wrong with a record; the converter asks it about every
// record it writes.
type Check func(doc *record.Document) []finding.Error

// Converter turns rows into records.
type Converter struct {
	table   Table
	mapping Mapping
	shape   *record.Shape
	check   Check
	columns map[string]int // heading → index in the sheet
}

// NewConverter prepares the conversion. A column that the sheet does not have
// is an error.
func NewConverter(t Table, m Mapping, shape *record.Shape, check Check) (*Converter, error) {
	c := &Converter{table: t, mapping: m, shape: shape, check: check, columns: map[string]int{}}
	for i, heading := range t.Headings {
		if heading == "" {
			continue
		}
		if _, twice := c.columns[heading]; twice {
			return nil, fmt.Errorf("%s: the heading %q stands twice", t.Name, heading)
		}
		c.columns[heading] = i
	}
	for _, column := range m.Columns {
		if said := unitInHeading(column.Heading); said != "" && column.Unit != "" && c.otherUnit(column, said) {
			return nil, fmt.Errorf("%s: the heading %q says %s and the mapping says %s", t.Name, column.Heading, said, column.Unit)
		}
		if _, there := c.columns[column.Heading]; !there {
			return nil, fmt.Errorf("%s has no column %q: it has %s", t.Name, column.Heading, strings.Join(t.Headings, ", "))
		}
	}
	return c, nil
}

// unitInHeading is what stands in brackets at the end of a heading.
func unitInHeading(heading string) string {
	open := strings.LastIndexAny(heading, "([")
	if open < 0 || !strings.HasSuffix(heading, ")") && !strings.HasSuffix(heading, "]") {
		return ""
	}
	return strings.TrimSpace(heading[open+1 : len(heading)-1])
}

// otherUnit reports whether two units of a column's dimension differ; a remark
// that is no unit differs from nothing.
func (c *Converter) otherUnit(column Column, said string) bool {
	dim := c.shapeAt(column.Path).Dimension()
	a, errA := quantity.Parse(dim, "1 "+said)
	b, errB := quantity.Parse(dim, "1 "+column.Unit)
	return errA == nil && errB == nil && a.SI() != b.SI()
}

func (c *Converter) shapeAt(path place.Pointer) *record.Shape {
	shape := c.shape
	for _, token := range path.Split() {
		if next := shape.Field(token); next != nil {
			shape = next
		} else {
			shape = shape.Items()
		}
	}
	return shape
}

// Rows converts every row that is not empty.
func (c *Converter) Rows() []Row {
	var out []Row
	for _, line := range c.table.Rows {
		if !line.empty() {
			out = append(out, c.row(line))
		}
	}
	return out
}

// cell is one value on its way into the record.
type cell struct {
	at     string // its address
	column string
	text   string // as the sheet shows it
	path   place.Pointer
	value  string // as the record writes it, ready for YAML
}

func (c *Converter) row(line Line) Row {
	out := Row{Number: line.Number}
	mapped := map[int]bool{}
	var placed []cell
	for _, column := range c.mapping.Columns {
		i := c.columns[column.Heading]
		mapped[i] = true
		text, reason := line.text(i)
		if text == "" {
			continue
		}
		value := ""
		if reason == "" {
			value, reason = c.value(column, text)
		}
		switch {
		case reason != "":
			out.Unplaced = append(out.Unplaced, Unplaced{line.Number, address(i, line.Number), column.Heading, text, reason})
		case value != "":
			placed = append(placed, cell{address(i, line.Number), column.Heading, text, column.Path, value})
		}
	}
	for i := range line.Cells {
		if text, _ := line.text(i); text != "" && !mapped[i] {
			heading := ""
			if i < len(c.table.Headings) {
				heading = c.table.Headings[i]
			}
			out.Unplaced = append(out.Unplaced, Unplaced{line.Number, address(i, line.Number), heading, text, "the mapping does not name this column"})
		}
	}
	out.YAML = c.settle(&out, placed)
	for _, p := range placed {
		if p.path == "/job/id" {
			out.Job = p.text
		}
	}
	return out
}

func (l Line) text(i int) (text, reason string) {
	if i >= len(l.Cells) {
		return "", ""
	}
	return strings.TrimSpace(l.Cells[i].Text), l.Cells[i].Reason
}

// address is how a spreadsheet calls a cell: column letters and row.
func address(column, row int) string {
	letters := ""
	for n := column + 1; n > 0; n = (n - 1) / 26 {
		letters = string(rune('A'+(n-1)%26)) + letters
	}
	return letters + strconv.Itoa(row)
}

// value is what the record writes for a cell, quoted where YAML needs it; ""
// when the mapping says that it stands for nothing.
func (c *Converter) value(column Column, text string) (value, reason string) {
	if len(column.Values) > 0 {
		mapped, known := column.Values[text]
		if !known {
			return "", "the mapping has no value for it"
		}
		if mapped == "" {
			return "", ""
		}
		text = mapped
	}
	if column.Unit != "" {
		if _, err := strconv.ParseFloat(strings.ReplaceAll(text, ",", ""), 64); err == nil {
			text += " " + column.Unit
		}
	}
	shape := c.shapeAt(column.Path)
	if dim := shape.Dimension(); dim != "" {
		if _, err := quantity.Parse(dim, text); err != nil {
			return "", err.Error()
		}
	}
	switch lower := strings.ToLower(text); {
	case shape.Scalar() == record.Bool && (lower == "true" || lower == "false"):
		return lower, ""
	case shape.Scalar() == record.Number:
		if !plainNumber.MatchString(text) {
			return "", "expected a number such as 2 or 1.5"
		}
		return text, ""
	}
	return strconv.Quote(text), "" // a job number 0107 stays a text
}

// plainNumber is a number that YAML reads as it stands.
var plainNumber = regexp.MustCompile(`^-?(0|[1-9][0-9]*)(\.[0-9]+)?$`)

// settle writes the record and takes out what the record's checks refuse, until
// nothing is refused. What is wrong with the row as a whole is reported so.
func (c *Converter) settle(row *Row, placed []cell) []byte {
	for {
		written := c.tree(placed).yaml()
		doc, err := record.ReadYAML("row", written, record.Limits{})
		if err != nil {
			row.Unplaced = append(row.Unplaced, Unplaced{Row: row.Number, Reason: err.Error()})
			return nil
		}
		errs := c.check(doc)
		if len(errs) == 0 {
			return written
		}
		refused := -1
		for _, e := range errs {
			refused = slices.IndexFunc(placed, func(p cell) bool {
				spot, exact := doc.Locate(p.path)
				return exact && spot.Line == e.Line
			})
			if refused >= 0 {
				p := placed[refused]
				row.Unplaced = append(row.Unplaced, Unplaced{row.Number, p.at, p.column, p.text, e.Message})
				placed = slices.Delete(slices.Clone(placed), refused, refused+1)
				break
			}
		}
		if refused < 0 {
			for _, e := range errs {
				row.Unplaced = append(row.Unplaced, Unplaced{Row: row.Number, Reason: e.Message})
			}
			return nil
		}
	}
}
