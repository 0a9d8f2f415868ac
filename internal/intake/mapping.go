package intake

import (
	"fmt"
	"strconv"
	"strings"

	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/record"
)

// Mapping says where the columns of a sheet go.
type Mapping struct {
	Sheet     string
	Columns   []Column
	Constants []Constant
}

// Column is one column of the sheet.
type Column struct {
	Heading string
	Path    place.Pointer     // into the record, with indices: /systems/0/fan/place
	Unit    string            // put behind a bare number
	Values  map[string]string // what the sheet writes → what the record writes
}

// Constant is a value that every record of the sheet gets, such as its profiles.
type Constant struct {
	Path place.Pointer
	Node *record.Node
}

// ReadMapping reads a mapping file. Errors carry file, line and column.
func ReadMapping(name string, data []byte, shape *record.Shape) (Mapping, error) {
	doc, err := record.ReadYAML(name, data, record.Limits{})
	if err != nil {
		return Mapping{}, err
	}
	r := mappingReader{name: name, shape: shape}
	m := r.mapping(doc.Root)
	if r.err == nil && len(m.Columns) == 0 {
		r.fail(doc.Root, "columns is missing: list the columns of the sheet with the path of each in the record")
	}
	return m, r.err
}

type mappingReader struct {
	name  string
	shape *record.Shape
	err   error
}

func (r *mappingReader) fail(n *record.Node, format string, args ...any) {
	if r.err == nil {
		r.err = &record.Error{Spot: n.Spot(r.name), Message: fmt.Sprintf(format, args...)}
	}
}

func (r *mappingReader) mapping(root *record.Node) Mapping {
	var m Mapping
	for i := range root.Len() {
		n := root.Item(i)
		switch n.Key() {
		case "sheet":
			m.Sheet = n.Text()
		case "columns":
			for j := range n.Len() {
				c := r.column(n.Item(j))
				for _, other := range m.Columns {
					if r.err == nil && (c.Path.HasPrefix(other.Path) || other.Path.HasPrefix(c.Path)) {
						r.fail(n.Item(j), "the columns %q and %q both go to %s", other.Heading, c.Heading, c.Path)
					}
				}
				m.Columns = append(m.Columns, c)
			}
		case "constants":
			for j := range n.Len() {
				c := n.Item(j)
				m.Constants = append(m.Constants, Constant{r.path(c, c.Key()), c})
			}
		default:
			r.fail(n, "found the unknown field %q; expected sheet, columns or constants", n.Key())
		}
	}
	return m
}

func (r *mappingReader) column(n *record.Node) Column {
	c := Column{Values: map[string]string{}}
	for i := range n.Len() {
		m := n.Item(i)
		switch m.Key() {
		case "column":
			c.Heading = m.Text()
		case "path":
			c.Path = r.path(m, m.Text())
		case "unit":
			c.Unit = m.Text()
		case "values":
			for j := range m.Len() {
				c.Values[m.Item(j).Key()] = m.Item(j).Text()
			}
		default:
			r.fail(m, "found the unknown field %q; expected column, path, unit or values", m.Key())
		}
	}
	if c.Heading == "" || c.Path == "" {
		r.fail(n, "a column needs its heading (column) and its place in the record (path)")
	}
	return c
}

// path checks that a pointer leads to a field of the record.
func (r *mappingReader) path(n *record.Node, text string) place.Pointer {
	shape := r.shape
	for _, token := range place.Pointer(text).Split() {
		next := shape.Field(token)
		if _, err := strconv.Atoi(token); err == nil && next == nil {
			next = shape.Items()
		}
		if next == nil {
			r.fail(n, "the path %s leads nowhere in a record: %q is unknown there", text, token)
			return ""
		}
		shape = next
	}
	if !strings.HasPrefix(text, "/") {
		r.fail(n, "a path starts with a slash, such as /job/id")
	}
	return place.Pointer(text)
}
