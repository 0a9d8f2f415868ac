package intake

import (
	"fmt"
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
	Row    int // as people count
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
		if _, there := c.columns[column.Heading]; !there {
			return nil, fmt.Errorf("%s has no column %q: it has %s", t.Name, column.Heading, strings.Join(t.Headings, ", "))
		}
	}
	return c, nil
}

// Rows converts every row that is not empty.
func (c *Converter) Rows() []Row {
	var out []Row
	for i, cells := range c.table.Rows {
		if !empty(cells) {
			out = append(out, c.row(c.table.First+i, cells))
		}
	}
	return out
}

// cell is one value on its way into the record.
type cell struct {
	column string
	text   string // as the sheet shows it
	path   place.Pointer
	value  string // as the record writes it, ready for YAML
}

func (c *Converter) row(number int, cells []string) Row {
	out := Row{Number: number}
	mapped := map[int]bool{}
	var placed []cell
	for _, column := range c.mapping.Columns {
		at := c.columns[column.Heading]
		mapped[at] = true
		text := text(cells, at)
		if text == "" {
			continue
		}
		value, reason := c.value(column, text)
		if reason != "" {
			out.Unplaced = append(out.Unplaced, Unplaced{number, column.Heading, text, reason})
			continue
		}
		placed = append(placed, cell{column.Heading, text, column.Path, value})
	}
	for i := range cells {
		if text := text(cells, i); text != "" && !mapped[i] {
			heading := "column " + strconv.Itoa(i+1)
			if i < len(c.table.Headings) && c.table.Headings[i] != "" {
				heading = c.table.Headings[i]
			}
			out.Unplaced = append(out.Unplaced, Unplaced{number, heading, text, "the mapping does not name this column"})
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

func text(cells []string, i int) string {
	if i >= len(cells) {
		return ""
	}
	return strings.TrimSpace(cells[i])
}

// value is what the record writes for a cell, quoted where YAML needs it.
func (c *Converter) value(column Column, text string) (value, reason string) {
	if len(column.Values) > 0 {
		mapped, known := column.Values[text]
		if !known {
			return "", "the mapping has no value for it"
		}
		text = mapped
	}
	if column.Unit != "" {
		if _, err := strconv.ParseFloat(strings.ReplaceAll(text, ",", ""), 64); err == nil {
			text += " " + column.Unit
		}
	}
	shape := c.shape
	for _, token := range column.Path.Split() {
		if next := shape.Field(token); next != nil {
			shape = next
		} else {
			shape = shape.Items()
		}
	}
	if dim := shape.Dimension(); dim != "" {
		if _, err := quantity.Parse(dim, text); err != nil {
			return "", err.Error()
		}
	}
	switch _, err := strconv.ParseFloat(text, 64); {
	case shape.Scalar() == record.Bool && (text == "true" || text == "false"):
		return text, ""
	case shape.Scalar() == record.Number && err == nil:
		return text, ""
	}
	return strconv.Quote(text), "" // a job number 0107 stays a text
}

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
				row.Unplaced = append(row.Unplaced, Unplaced{row.Number, p.column, p.text, e.Message})
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
