package record

import (
	"encoding/json"
	"fmt"
	"maps"
	"strings"

	"github.com/slablint/slablint/internal/quantity"
)

// Shape is the record's schema as far as turning a record into its canonical
// form needs it: which members an object has and which values are quantities.
// It is read-only once made and can be shared by goroutines.
type Shape struct {
	fields    map[string]*Shape  // of an object
	items     *Shape             // of an array
	dimension quantity.Dimension // of a quantity, otherwise ""
	plain     Kind               // of a scalar that is no quantity
	title     string
}

// schemaNode is the part of JSON Schema that the record's schema uses.
type schemaNode struct {
	Title      string                 `json:"title"`
	Type       any                    `json:"type"`
	Ref        string                 `json:"$ref"`
	Dimension  string                 `json:"dimension"`
	Properties map[string]*schemaNode `json:"properties"`
	Items      *schemaNode            `json:"items"`
	Defs       map[string]*schemaNode `json:"$defs"`
}

// ParseShape reads the shape from a JSON Schema in which the keyword
// "dimension" marks quantities. References must lead into its own "$defs".
func ParseShape(schema []byte) (*Shape, error) {
	var root schemaNode
	if err := json.Unmarshal(schema, &root); err != nil {
		return nil, fmt.Errorf("record schema: %w", err)
	}
	return root.shape(root.Defs)
}

func (s *schemaNode) shape(defs map[string]*schemaNode) (*Shape, error) {
	out := &Shape{title: s.Title, dimension: quantity.Dimension(s.Dimension)}
	switch s.Type {
	case "string":
		out.plain = String
	case "boolean":
		out.plain = Bool
	case "number", "integer":
		out.plain = Number
	}
	if s.Dimension != "" {
		return out, nil
	}
	if s.Ref != "" {
		def := defs[strings.TrimPrefix(s.Ref, "#/$defs/")]
		if def == nil {
			return nil, fmt.Errorf("record schema: reference %q leads nowhere", s.Ref)
		}
		resolved, err := def.shape(defs)
		if err != nil {
			return nil, err
		}
		resolved.title = s.Title
		return resolved, nil
	}
	if len(s.Properties) > 0 {
		out.fields = make(map[string]*Shape, len(s.Properties))
		for name, p := range s.Properties {
			child, err := p.shape(defs)
			if err != nil {
				return nil, err
			}
			out.fields[name] = child
		}
	}
	if s.Items != nil {
		child, err := s.Items.shape(defs)
		if err != nil {
			return nil, err
		}
		out.items = child
	}
	return out, nil
}

// Field is the shape of an object's member, or nil.
func (s *Shape) Field(name string) *Shape {
	if s == nil {
		return nil
	}
	return s.fields[name]
}

// Items is the shape of an array's elements, or nil.
func (s *Shape) Items() *Shape {
	if s == nil {
		return nil
	}
	return s.items
}

// Dimension is the dimension of a quantity, or "".
func (s *Shape) Dimension() quantity.Dimension {
	if s == nil {
		return ""
	}
	return s.dimension
}

// Scalar is the kind of a scalar that is no quantity, otherwise Null.
func (s *Shape) Scalar() Kind {
	if s == nil {
		return Null
	}
	return s.plain
}

// Title is the field's name in trade words.
func (s *Shape) Title() string {
	if s == nil {
		return ""
	}
	return s.title
}

// With is the shape with one more member.
func (s *Shape) With(name string, field *Shape) *Shape {
	wider := *s
	wider.fields = maps.Clone(s.fields)
	wider.fields[name] = field
	return &wider
}
