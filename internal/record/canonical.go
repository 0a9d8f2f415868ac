package record

import (
	"strings"

	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/quantity"
)

// Canonical is the record in the form that rules read: the types of
// encoding/json, with the same pointers as the written record, in which each
// quantity is a Quantity and each object below the record is a Members. What is
// null is left out: an empty field was not recorded.
//
// The document must have passed validation. Quantities that cannot be read
// come back as errors, in the order written; nothing is guessed.
func (d *Document) Canonical(shape *Shape) (map[string]any, []*Error) {
	c := canonicaliser{file: d.Name}
	root, _ := c.value(d.Root, shape).(*fields)
	if root == nil {
		return nil, c.errors
	}
	object := make(map[string]any, root.Len()+1) // computed values come to it
	for _, f := range root.list {
		object[f.name] = f.value
	}
	return object, c.errors
}

type canonicaliser struct {
	file   string
	errors []*Error
}

func (c *canonicaliser) value(n *Node, shape *Shape) any {
	if dim := shape.Dimension(); dim != "" {
		return c.quantity(n, dim)
	}
	switch n.Kind() {
	case Object:
		object := &fields{make([]field, 0, n.Len())}
		for i := range n.Len() {
			if m := n.Item(i); m.Kind() != Null {
				object.list = append(object.list, field{m.Key(), c.value(m, shape.Field(m.Key()))})
			}
		}
		return object
	case Array:
		list := make([]any, n.Len())
		for i := range list {
			list[i] = c.value(n.Item(i), shape.Items())
		}
		return list
	}
	return n.Value()
}

func (c *canonicaliser) quantity(n *Node, dim quantity.Dimension) any {
	var (
		q   quantity.Quantity
		err error
	)
	if n.Kind() == Object {
		q, err = quantity.New(dim, n.Get("value").Text(), n.Get("unit").Text())
	} else {
		q, err = quantity.Parse(dim, n.Text())
	}
	if err != nil {
		c.errors = append(c.errors, &Error{Spot: n.Spot(c.file), Message: err.Error()})
		return nil
	}
	return newQuantity(q)
}

// At follows a pointer through a canonical value; ok is false when it leads nowhere.
func At(value any, ptr place.Pointer) (found any, ok bool) {
	rest := strings.TrimPrefix(string(ptr), "/")
	for more := ptr != place.Root; more; {
		var token string
		token, rest, more = strings.Cut(rest, "/")
		if strings.Contains(token, "~") {
			token = place.Pointer(token).Last() // undoes the escapes
		}
		switch v := value.(type) {
		case map[string]any:
			if value, ok = v[token]; !ok {
				return nil, false
			}
		case Members:
			if value = v.Get(token); value == nil {
				return nil, false
			}
		case []any:
			i, valid := arrayIndex(token)
			if !valid || i >= len(v) {
				return nil, false
			}
			value = v[i]
		default:
			return nil, false
		}
	}
	return value, true
}
