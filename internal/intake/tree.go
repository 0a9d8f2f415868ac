package intake

import (
	"bytes"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/record"
)

// tree is a record being put together.
type tree struct {
	name     string // of a member, "" for an element
	value    string // of a leaf, ready to be written
	members  []*tree
	elements []*tree
}

// tree puts cells and constants into one record, members in the order in which
// the mapping names them. Elements of lists without an id get one.
func (c *Converter) tree(placed []cell) *tree {
	root := &tree{}
	for _, constant := range c.mapping.Constants {
		if !c.applies(constant.Path, placed) {
			continue
		}
		root.put(constant.Path.Split(), written(constant.Node))
	}
	for _, p := range placed {
		root.put(p.path.Split(), p.value)
	}
	root.identify(c.shape, "")
	return root
}

// applies keeps a constant from making up an entry of a list: where columns
// fill an entry, its constants belong to it only when a cell did.
func (c *Converter) applies(path place.Pointer, placed []cell) bool {
	tokens := path.Split()
	for i := len(tokens) - 1; i > 0; i-- {
		if _, err := strconv.Atoi(tokens[i]); err != nil {
			continue
		}
		entry := place.Pointer("/" + strings.Join(tokens[:i+1], "/"))
		if slices.ContainsFunc(c.mapping.Columns, func(column Column) bool { return column.Path.HasPrefix(entry) }) {
			return slices.ContainsFunc(placed, func(p cell) bool { return p.path.HasPrefix(entry) })
		}
	}
	return true
}

func written(n *record.Node) string {
	switch n.Kind() {
	case record.Array:
		parts := make([]string, n.Len())
		for i := range parts {
			parts[i] = written(n.Item(i))
		}
		return "[" + strings.Join(parts, ", ") + "]"
	case record.String:
		return strconv.Quote(n.Text())
	case record.Null:
		return "null"
	}
	return n.Text()
}

func (t *tree) put(path []string, value string) {
	if len(path) == 0 {
		t.value = value
		return
	}
	if i, err := strconv.Atoi(path[0]); err == nil && len(t.members) == 0 {
		for len(t.elements) <= i {
			t.elements = append(t.elements, &tree{})
		}
		t.elements[i].put(path[1:], value)
		return
	}
	t.member(path[0]).put(path[1:], value)
}

func (t *tree) member(name string) *tree {
	for _, m := range t.members {
		if m.name == name {
			return m
		}
	}
	m := &tree{name: name}
	t.members = append(t.members, m)
	return m
}

// identify gives elements an id where their kind has one, and drops elements
// that no cell filled.
func (t *tree) identify(shape *record.Shape, list string) {
	for i, e := range t.elements {
		if e.blank() {
			continue
		}
		if shape.Items().Field("id") != nil && !slices.ContainsFunc(e.members, func(m *tree) bool { return m.name == "id" }) {
			id := &tree{name: "id", value: strconv.Quote(strings.TrimSuffix(strings.ReplaceAll(list, "_", "-"), "s") + "-" + strconv.Itoa(i+1))}
			e.members = slices.Insert(e.members, 0, id)
		}
		e.identify(shape.Items(), list)
	}
	t.elements = slices.DeleteFunc(t.elements, (*tree).blank)
	for _, m := range t.members {
		m.identify(shape.Field(m.name), m.name)
	}
}

func (t *tree) blank() bool { return t.value == "" && len(t.members) == 0 && len(t.elements) == 0 }

func (t *tree) yaml() []byte {
	var b bytes.Buffer
	t.write(&b, "")
	return b.Bytes()
}

// write writes members and elements, one value a line.
func (t *tree) write(b *bytes.Buffer, indent string) {
	for _, m := range t.members {
		if m.value != "" {
			fmt.Fprintf(b, "%s%s: %s\n", indent, m.name, m.value)
			continue
		}
		fmt.Fprintf(b, "%s%s:\n", indent, m.name)
		m.write(b, indent+"  ")
	}
	for _, e := range t.elements {
		if e.value != "" {
			fmt.Fprintf(b, "%s- %s\n", indent, e.value)
			continue
		}
		var inner bytes.Buffer
		e.write(&inner, indent+"  ")
		text := inner.String()
		b.WriteString(indent + "- " + strings.TrimPrefix(text, indent+"  "))
	}
}
