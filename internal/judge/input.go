package judge

import (
	"encoding/json"
	"fmt"
	"strconv"
	"unicode/utf8"

	"github.com/slablint/slablint/internal/record"
)

// encoder writes canonical records as JSON for the wasm target. Members that no
// rule mentions are left out: most of a record says how a value came about,
// which is for readers and not for rules.
type encoder struct {
	mentioned map[string]bool // nil keeps everything
}

func (e encoder) append(out []byte, value any) ([]byte, error) {
	switch v := value.(type) {
	case string:
		return appendString(out, v), nil
	case json.Number:
		return append(out, v...), nil
	case bool:
		return strconv.AppendBool(out, v), nil
	case nil:
		return append(out, "null"...), nil
	case []any:
		return e.appendArray(append(out, '['), v)
	case map[string]any:
		return e.appendObject(append(out, '{'), v)
	case record.Measure:
		return e.appendMeasure(append(out, '{'), v)
	case record.Members:
		return e.appendMembers(append(out, '{'), v)
	}
	return out, fmt.Errorf("a canonical record holds no %T", value)
}

func (e encoder) appendArray(out []byte, list []any) (_ []byte, err error) {
	for i, item := range list {
		if i > 0 {
			out = append(out, ',')
		}
		if out, err = e.append(out, item); err != nil {
			return out, err
		}
	}
	return append(out, ']'), nil
}

// appendObject leaves the members in any order: rules cannot tell, and the sets
// of the answer are put in order.
func (e encoder) appendObject(out []byte, object map[string]any) (_ []byte, err error) {
	for name, member := range object {
		if !e.keeps(name) {
			continue
		}
		if out, err = e.append(appendName(out, name), member); err != nil {
			return out, err
		}
	}
	return append(out, '}'), nil
}

// keeps reports whether members of this name are written.
func (e encoder) keeps(name string) bool { return e.mentioned == nil || e.mentioned[name] }

// appendName writes what stands before the value of a member, after the brace
// that opens the object or another member.
func appendName(out []byte, name string) []byte {
	if out[len(out)-1] != '{' {
		out = append(out, ',')
	}
	return append(appendString(out, name), ':')
}

// appendMeasure writes the number of a quantity, of which rules read nothing
// else unless everything is kept.
func (e encoder) appendMeasure(out []byte, m record.Measure) ([]byte, error) {
	if e.mentioned == nil {
		return e.appendMembers(out, m)
	}
	if si := m.Decimal(); si != "" {
		out = append(appendName(out, "si"), si...)
	}
	return append(out, '}'), nil
}

func (e encoder) appendMembers(out []byte, object record.Members) (_ []byte, err error) {
	for i := range object.Len() {
		name := object.Name(i)
		if !e.keeps(name) {
			continue
		}
		if out, err = e.append(appendName(out, name), object.Get(name)); err != nil {
			return out, err
		}
	}
	return append(out, '}'), nil
}

// appendString writes text as JSON. Stray bytes become U+FFFD, as they do for
// the reference.
func appendString(out []byte, text string) []byte {
	const hex = "0123456789abcdef"
	out = append(out, '"')
	for i := 0; i < len(text); {
		c := text[i]
		switch {
		case c >= utf8.RuneSelf:
			r, size := utf8.DecodeRuneInString(text[i:])
			out = utf8.AppendRune(out, r)
			i += size
			continue
		case c == '"' || c == '\\':
			out = append(out, '\\', c)
		case c < ' ':
			out = append(out, '\\', 'u', '0', '0', hex[c>>4], hex[c&15])
		default:
			out = append(out, c)
		}
		i++
	}
	return append(out, '"')
}
