// Package form makes the crew's paper: a record to fill in and a sheet to
// print. Both ask for what the requirements of a job read and for nothing else.
package form

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"github.com/slablint/slablint/internal/record"
)

// Field is one field of the record's schema, in the order of the schema.
type Field struct {
	Name        string
	Path        string // template: /systems/*/fan/place
	Title       string
	Description string
	Example     string
	Dimension   string   // of a quantity
	Choices     []string // of a field with a list of words
	Refers      string   // list whose ids it may hold, "*" for any
	Kind        string   // object, array, text, yes-or-no, number, quantity, choice or list
	Required    bool     // must be there when its object is
	Fields      []Field  // of an object, or of the elements of an array
}

// Fields reads the schema of the record.
func Fields(schema []byte) ([]Field, error) {
	doc, err := record.ReadJSON("schema", schema, record.Limits{})
	if err != nil {
		return nil, err
	}
	r := schemaReader{doc.Root.Get("$defs")}
	return r.members(doc.Root, ""), nil
}

type schemaReader struct{ defs *record.Node }

func (r schemaReader) resolve(n *record.Node) *record.Node {
	if name, ok := strings.CutPrefix(n.Get("$ref").Text(), "#/$defs/"); ok && n.Get("dimension") == nil {
		return r.defs.Get(name)
	}
	return n
}

// members lists the properties of an object node.
func (r schemaReader) members(n *record.Node, path string) []Field {
	properties := n.Get("properties")
	if properties == nil {
		return nil
	}
	required := map[string]bool{}
	if list := n.Get("required"); list != nil {
		for i := range list.Len() {
			required[list.Item(i).Text()] = true
		}
	}
	out := make([]Field, properties.Len())
	for i := range out {
		p := properties.Item(i)
		out[i] = r.field(p, path+"/"+p.Key())
		out[i].Name, out[i].Required = p.Key(), required[p.Key()]
	}
	return out
}

func (r schemaReader) field(n *record.Node, path string) Field {
	f := Field{Path: path, Title: n.Get("title").Text(), Description: n.Get("description").Text(), Dimension: n.Get("dimension").Text()}
	if examples := n.Get("examples"); examples != nil {
		f.Example = plain(examples.Item(0))
	}
	n = r.resolve(n)
	items := n.Get("items")
	f.Refers = cmp.Or(n.Get("refers").Text(), items.Get("refers").Text())
	switch {
	case f.Dimension != "":
		f.Kind = "quantity"
	case n.Get("properties") != nil:
		f.Kind, f.Fields = "object", r.members(n, path)
	case items != nil && r.resolve(items).Get("properties") != nil:
		f.Kind, f.Fields = "array", r.members(r.resolve(items), path+"/*")
	case items != nil:
		f.Kind, f.Choices = "list", words(items.Get("enum"))
	case n.Get("enum") != nil:
		f.Kind, f.Choices = "choice", words(n.Get("enum"))
	case n.Get("type").Text() == "boolean":
		f.Kind = "yes-or-no"
	case n.Get("type").Text() == "string":
		f.Kind = "text"
	default:
		f.Kind = "number"
	}
	return f
}

func words(n *record.Node) []string {
	if n == nil {
		return nil
	}
	out := make([]string, n.Len())
	for i := range out {
		out[i] = n.Item(i).Text()
	}
	return out
}

func plain(n *record.Node) string {
	if n.Kind() == record.Array {
		return "[" + strings.Join(words(n), ", ") + "]"
	}
	return n.Text()
}

// Select keeps the fields that are needed and the way to them: ids, and what
// must be there when its object is. An object that is needed as a whole is kept
// as a whole. A reference to a list that is left out is left out too.
func Select(fields []Field, needed map[string]bool) []Field {
	selected := pick(fields, needed)
	return withoutLooseEnds(selected, paths(selected, map[string]bool{}))
}

func withoutLooseEnds(fields []Field, there map[string]bool) []Field {
	var out []Field
	for _, f := range fields {
		if f.Refers != "" && f.Refers != "*" && !f.Required && !there[f.Refers] {
			continue
		}
		if len(f.Fields) > 0 {
			if f.Fields = withoutLooseEnds(f.Fields, there); !slices.ContainsFunc(f.Fields, asks) {
				continue
			}
		}
		out = append(out, f)
	}
	return out
}

// asks reports whether a field gives something to fill in.
func asks(f Field) bool { return f.Name != "id" }

// paths adds the places of all fields.
func paths(fields []Field, to map[string]bool) map[string]bool {
	for _, f := range fields {
		to[f.Path] = true
		paths(f.Fields, to)
	}
	return to
}

func pick(fields []Field, needed map[string]bool) []Field {
	var out []Field
	for _, f := range fields {
		switch {
		case len(f.Fields) == 0:
			if f.Name == "id" || f.Required || needed[f.Path] {
				out = append(out, f)
			}
		case slices.ContainsFunc(f.Fields, func(inner Field) bool { return touched(inner, needed) }):
			f.Fields = pick(f.Fields, needed)
			out = append(out, f)
		case needed[f.Path]:
			out = append(out, f)
		}
	}
	return out
}

// touched reports whether a field or anything in it is needed; an id alone
// gives nothing to fill in.
func touched(f Field, needed map[string]bool) bool {
	return f.Name != "id" && needed[f.Path] || slices.ContainsFunc(f.Fields, func(inner Field) bool { return touched(inner, needed) })
}

// hint says what to write, for people.
func (f Field) hint() string {
	if list, ok := strings.CutPrefix(f.Refers, "/"); ok {
		list = strings.ReplaceAll(list, "/*/", ", ")
		if f.Kind == "list" {
			return "ids from " + list
		}
		return "an id from " + list
	}
	switch f.Kind {
	case "choice":
		return strings.Join(f.Choices, " | ")
	case "list":
		if len(f.Choices) > 0 {
			return "any of: " + strings.Join(f.Choices, ", ")
		}
		return "such as " + f.Example
	case "yes-or-no":
		return "true | false"
	case "quantity":
		return fmt.Sprintf("%s, such as %s", f.Dimension, f.Example)
	}
	if f.Example == "" {
		return ""
	}
	return "such as " + f.Example
}
