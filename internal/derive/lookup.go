package derive

import (
	"encoding/json"
	"math"
	"strconv"

	"github.com/slablint/slablint/internal/place"
)

// A node is one place of the canonical record and what stands there: nil when
// nothing was recorded.
type node struct {
	value any
	at    place.Pointer
}

// get goes down to a member. Keys are names of the record's schema, which need
// no escapes.
func (n node) get(key string) node {
	object, _ := n.value.(map[string]any)
	return node{object[key], n.at + "/" + place.Pointer(key)}
}

func (n node) exists() bool { return n.value != nil }

// items are the elements of an array; none when it is no array.
func (n node) items() []node {
	list, _ := n.value.([]any)
	if len(list) == 0 {
		return nil
	}
	nodes := make([]node, len(list))
	for i, v := range list {
		nodes[i] = node{v, n.at + "/" + place.Pointer(strconv.Itoa(i))}
	}
	return nodes
}

// recorded reports whether an array stands here, though it may be empty.
func (n node) isList() bool {
	_, ok := n.value.([]any)
	return ok
}

// text is a string, "" when there is none.
func (n node) text() string {
	s, _ := n.value.(string)
	return s
}

func (n node) id() string { return n.get("id").text() }

// is says whether a boolean is recorded and has the given value.
func (n node) is(want bool) bool {
	b, ok := n.value.(bool)
	return ok && b == want
}

// choice is a string with the place it came from.
func (n node) choice() (string, *basis) {
	s := n.text()
	if s == "" {
		return "", lacking(n.at)
	}
	return s, reading(n.at)
}

// quantity is a recorded quantity in SI.
func (n node) quantity() figure {
	object, _ := n.value.(map[string]any)
	si, ok := float(object["si"])
	if !ok {
		return figure{basis: lacking(n.at)}
	}
	unit, _ := object["unit"].(string)
	return figure{si, unit, reading(n.at)}
}

// number is a recorded number without a unit.
func (n node) number() figure {
	x, ok := float(n.value)
	if !ok {
		return figure{basis: lacking(n.at)}
	}
	return figure{x, "1", reading(n.at)}
}

// float reads a JSON number; what is none, or too large for one, is not ok.
func float(v any) (float64, bool) {
	var x float64
	switch n := v.(type) {
	case json.Number:
		parsed, err := strconv.ParseFloat(string(n), 64)
		if err != nil {
			return 0, false
		}
		x = parsed
	case float64:
		x = n
	case int:
		x = float64(n)
	default:
		return 0, false
	}
	return x, !math.IsNaN(x) && !math.IsInf(x, 0)
}

// find is the item of a list with an id; the first when there are several.
func find(list []node, id string) (node, bool) {
	if id == "" {
		return node{}, false
	}
	for _, n := range list {
		if n.id() == id {
			return n, true
		}
	}
	return node{}, false
}
