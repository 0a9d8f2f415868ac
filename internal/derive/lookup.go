package derive

import (
	"encoding/json"
	"iter"
	"math"
	"strconv"
	"time"

	"github.com/slablint/slablint/internal/quantity"
	"github.com/slablint/slablint/internal/record"
)

// A node is one place of the canonical record and what stands there: nil when
// nothing was recorded.
type node struct {
	value any
	key   string // "" when the node stands at the spot above itself
	above int
	mem   *memory
}

// at is the spot where the node stands.
func (n node) at() int {
	if n.key == "" {
		return n.above
	}
	return n.mem.spot(n.above, n.key)
}

// get goes down to a member.
func (n node) get(key string) node {
	return node{record.Get(n.value, key), key, n.at(), n.mem}
}

// rooted is the same node with its place made once, for one that much is
// asked of.
func (n node) rooted() node { return node{value: n.value, above: n.at(), mem: n.mem} }

func (n node) exists() bool { return n.value != nil }

// isList reports whether a list is recorded, though it may be empty.
func (n node) isList() bool {
	_, ok := n.value.([]any)
	return ok
}

// read is resting on this place.
func (n node) read() basis { return basis{mem: n.mem, rests: refTo(n.at(), toRead)} }

// lack is not known because this place holds nothing.
func (n node) lack() basis { return basis{mem: n.mem, rests: refTo(n.at(), toLack), unknown: true} }

// items are the elements of a list.
func (n node) items() []node {
	nodes := n.mem.nodes.room(0, n.length())
	for _, item := range n.each() {
		nodes = append(nodes, item)
	}
	return nodes
}

// each goes through the elements of a list.
func (n node) each() iter.Seq2[int, node] {
	return func(yield func(int, node) bool) {
		list, _ := n.value.([]any)
		if len(list) == 0 {
			return
		}
		above := n.at()
		for i, v := range list {
			if !yield(i, node{value: v, above: n.mem.spot(above, strconv.Itoa(i)), mem: n.mem}) {
				return
			}
		}
	}
}

// item is one element of a list.
func (n node) item(i int) node {
	list, _ := n.value.([]any)
	return node{value: list[i], above: n.mem.spot(n.at(), strconv.Itoa(i)), mem: n.mem}
}

// length is the number of elements of a list.
func (n node) length() int {
	list, _ := n.value.([]any)
	return len(list)
}

// text is a string, "" when there is none.
func (n node) text() string {
	s, _ := n.value.(string)
	return s
}

func (n node) id() string { return n.get("id").text() }

// name is the id as a document has it.
func (n node) name() any {
	id := n.get("id").value
	if _, isText := id.(string); !isText {
		return ""
	}
	return id
}

// isTrue says whether a boolean is recorded and true.
func (n node) isTrue() bool {
	yes, ok := n.value.(bool)
	return ok && yes
}

// isBool reports whether a boolean is recorded.
func (n node) isBool() bool {
	_, ok := n.value.(bool)
	return ok
}

// said is a recorded boolean and what it rests on.
func (n node) said() (yes bool, b basis) {
	yes, ok := n.value.(bool)
	if !ok {
		return false, n.lack()
	}
	return yes, n.read()
}

// choice is a recorded word and what it rests on.
func (n node) choice() (word string, b basis) {
	word = n.text()
	if word == "" {
		return "", n.lack()
	}
	return word, n.read()
}

// measure is a recorded quantity by itself: in SI, and the unit of its writer.
func (n node) measure() (si float64, unit quantity.Unit, recorded bool) {
	if q, ok := n.value.(*record.Quantity); ok {
		return q.Float(), q.Written(), true
	}
	if si, recorded = float(record.Get(n.value, "si")); recorded {
		symbol, _ := record.Get(n.value, "unit").(string)
		unit = quantity.UnitNamed(symbol)
	}
	return si, unit, recorded
}

// quantity is a recorded quantity in SI.
func (n node) quantity() figure {
	si, unit, recorded := n.measure()
	if !recorded {
		return figure{basis: n.lack()}
	}
	return figure{si, unit, n.read()}
}

// words is a recorded quantity as it was typed, "" when there is none.
func (n node) words() string {
	if q, ok := n.value.(*record.Quantity); ok {
		return q.Text()
	}
	text, _ := record.Get(n.value, "text").(string)
	return text
}

// number is a recorded number without a unit.
func (n node) number() figure {
	x, ok := float(n.value)
	if !ok {
		return figure{basis: n.lack()}
	}
	return figure{x, units.one, n.read()}
}

// day is the day of a recorded time or date where it was written, as seconds
// from 1970 to its start in UTC. Days are counted on the calendar of the place:
// a test started in the evening has not waited a day longer because it was
// already the next day in Greenwich.
func (n node) day() figure {
	f := n.quantity()
	if !f.known() {
		return f
	}
	if text := n.words(); len(text) > len(time.DateOnly) { // not a date, whose day is itself
		if t, err := time.Parse(time.DateOnly, text[:len(time.DateOnly)]); err == nil {
			f.si = float64(t.Unix())
			return f
		}
	}
	f.si = math.Floor(f.si/secondsPerDay) * secondsPerDay
	return f
}

const (
	secondsPerHour = 3600.0
	secondsPerDay  = 24 * secondsPerHour
)

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
	default:
		return 0, false
	}
	return x, !math.IsNaN(x) && !math.IsInf(x, 0)
}

// find is the index of the first item of a list with an id, -1 without one.
func find(list []node, id string) int {
	for i, n := range list {
		if id != "" && n.id() == id {
			return i
		}
	}
	return -1
}
