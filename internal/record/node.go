package record

import (
	"encoding/json"
	"strings"

	"github.com/slablint/slablint/internal/place"
)

// Kind is what sort of value a node holds: one of the six of JSON.
type Kind uint8

// The kinds; the zero Kind is null.
const (
	Null Kind = iota
	Bool
	Number
	String
	Array
	Object
)

var kindNames = [...]string{"null", "boolean", "number", "string", "array", "object"}

// String is the kind's name in JSON Schema.
func (k Kind) String() string { return kindNames[k] }

// pos is a place in one file: both count from 1, columns in runes.
type pos struct{ line, col int32 }

// Node is one value of a record and where it stands. Nodes are read-only: a
// tree can be shared by goroutines.
type Node struct {
	kind  Kind
	key   string // of a member of an object
	text  string // of a string, number or boolean
	items []Node // elements of an array, members of an object in written order

	at, end       pos // of the value; end is just after its last rune
	keyAt, keyEnd pos // of the key; zero when there is none
}

// The questions below can be put to a nil *Node, a value that is not there: it
// answers like null.

// Kind says what sort of value the node holds.
func (n *Node) Kind() Kind {
	if n == nil {
		return Null
	}
	return n.kind
}

// Key is the name under which an object holds the node, otherwise "".
func (n *Node) Key() string {
	if n == nil {
		return ""
	}
	return n.key
}

// Text is the text of a string, the digits of a number exactly as written
// (YAML's +5, .5 and 5. as 5, 0.5 and 5), or true or false; otherwise "".
func (n *Node) Text() string {
	if n == nil {
		return ""
	}
	return n.text
}

// Bool is whether the node is the boolean true.
func (n *Node) Bool() bool { return n.Kind() == Bool && n.text == "true" }

// Len is the number of elements or members, 0 for a scalar.
func (n *Node) Len() int {
	if n == nil {
		return 0
	}
	return len(n.items)
}

// Item is element or member i, counted from 0 in the order written.
func (n *Node) Item(i int) *Node { return &n.items[i] }

// Get is the member of that name, or nil.
func (n *Node) Get(name string) *Node {
	if n.Kind() != Object {
		return nil
	}
	for i := range n.items {
		if n.items[i].key == name {
			return &n.items[i]
		}
	}
	return nil
}

// At is the node that the pointer leads to from n, or nil.
func (n *Node) At(ptr place.Pointer) *Node {
	found, exact := n.descend(ptr)
	if !exact {
		return nil
	}
	return found
}

// descend follows the pointer as far as it goes. It takes the segments that
// Pointer.Split gives, but one at a time and without copying them.
func (n *Node) descend(ptr place.Pointer) (deepest *Node, exact bool) {
	rest := strings.TrimPrefix(string(ptr), "/")
	for more := ptr != place.Root; more; {
		var segment string
		segment, rest, more = strings.Cut(rest, "/")
		if strings.Contains(segment, "~") {
			segment = place.Pointer(segment).Last() // undoes the escapes
		}
		next := n.child(segment)
		if next == nil {
			return n, false
		}
		n = next
	}
	return n, true
}

func (n *Node) child(segment string) *Node {
	if n.Kind() == Object {
		return n.Get(segment)
	}
	if i, ok := arrayIndex(segment); ok && n.Kind() == Array && i < len(n.items) {
		return &n.items[i]
	}
	return nil
}

// arrayIndex reads an index as RFC 6901 section 4 writes it: no sign, no
// leading zeros. Nine digits are more than a record can have elements.
func arrayIndex(segment string) (int, bool) {
	if segment == "" || len(segment) > 9 || segment[0] == '0' && segment != "0" {
		return 0, false
	}
	i := 0
	for _, c := range []byte(segment) {
		if c < '0' || c > '9' {
			return 0, false
		}
		i = i*10 + int(c-'0')
	}
	return i, true
}

// Spot is where the value itself stands.
func (n *Node) Spot(file string) place.Spot { return spot(file, n.at, n.end) }

// KeySpot is where the key of a member stands; for other nodes it is Spot.
func (n *Node) KeySpot(file string) place.Spot {
	if n.keyAt == (pos{}) {
		return n.Spot(file)
	}
	return spot(file, n.keyAt, n.keyEnd)
}

// entrySpot reaches from the key, if there is one, to the end of the value.
func (n *Node) entrySpot(file string) place.Spot {
	if n.keyAt == (pos{}) {
		return n.Spot(file)
	}
	return spot(file, n.keyAt, n.end)
}

func spot(file string, from, to pos) place.Spot {
	return place.Spot{
		File: file,
		Line: int(from.line), Column: int(from.col),
		EndLine: int(to.line), EndColumn: int(to.col),
	}
}

// Value is a copy in the types of encoding/json: map[string]any, []any,
// json.Number, string, bool and nil.
func (n *Node) Value() any {
	switch n.Kind() {
	case Bool:
		return n.Bool()
	case Number:
		return json.Number(n.text)
	case String:
		return n.text
	case Array:
		list := make([]any, len(n.items))
		for i := range n.items {
			list[i] = n.items[i].Value()
		}
		return list
	case Object:
		members := make(map[string]any, len(n.items))
		for i := range n.items {
			members[n.items[i].key] = n.items[i].Value()
		}
		return members
	}
	return nil
}
