package derive

import (
	"fmt"
	"slices"

	"github.com/slablint/slablint/internal/quantity"
)

// An entry is a part of the document with members of its own.
type entry struct {
	values  []value  // members that are measures
	members []member // others
	mem     *memory

	placed bool // it is about one subject, which has
	id     string
	at     int // a spot
}

type member struct {
	name  string
	value any // a function stands for what it gives
}

// entry is a part of the document with room for so many values and other
// members.
func (d *deriver) entry(values, members int) *entry {
	mem := d.record.mem
	e := &mem.entries.room(entryPiece, 1)[:1][0]
	*e = entry{
		values:  mem.values.room(valuePiece, values),
		members: mem.members.room(memberPiece, members),
		mem:     mem,
	}
	return e
}

// about is the start of what is said of one subject, with room for so many
// values and other members.
func (d *deriver) about(n node, values, members int) *entry {
	return d.named(n.id(), n, values, members)
}

// named is the same with an id of its own.
func (d *deriver) named(id string, n node, values, members int) *entry {
	e := d.entry(values, members)
	e.placed, e.id, e.at = true, id, n.at()
	return e
}

// list is an empty part of the document with room for n entries.
func (d *deriver) list(n int) []any { return d.record.mem.lists.room(listPiece, n) }

// set adds a member that is no measure.
func (e *entry) set(name string, value any) {
	e.members = append(e.members, member{name, value})
}

// Digits that are kept: of what is exact on paper, so that a limit met exactly
// is met, and of what a model gives, whose further digits would be noise.
const (
	exactDigits = 12
	modelDigits = 6
)

// exact adds a figure that is arithmetic on what was recorded.
func (e *entry) exact(name string, dim quantity.Dimension, f figure, method string) {
	e.value(name, dim, f, method, exactDigits)
}

// recorded adds a figure as it stands at a place of the record, in the words of
// who wrote it.
func (e *entry) recorded(name string, dim quantity.Dimension, f figure, at node, method string) {
	e.exact(name, dim, f, method)
	e.values[len(e.values)-1].text = at.words()
}

// model adds a figure that a physical model gave.
func (e *entry) model(name string, dim quantity.Dimension, f figure, method string) {
	e.value(name, dim, f, method, modelDigits)
}

// span adds the time from one instant to another; it is negative when they
// stand in the other order. What is found of it stands at the later one.
func (e *entry) span(name string, from, to figure, unit quantity.Unit, method string) {
	e.exact(name, quantity.Duration, figure{to.si - from.si, unit, join(to.basis, from.basis)}, method)
}

// lead is the same for what had to come early enough: what is found of it stands
// at the earlier one.
func (e *entry) lead(name string, from, to figure, unit quantity.Unit, method string) {
	e.exact(name, quantity.Duration, figure{to.si - from.si, unit, join(from.basis, to.basis)}, method)
}

// unknown adds what is not known.
func (e *entry) unknown(name string, b basis) { e.next(name, b) }

// next is room for one more value. Its members are set one by one, which costs
// less than a copy while the collector of memory works.
func (e *entry) next(name string, b basis) *value {
	n := len(e.values)
	if n == cap(e.values) {
		e.values = append(e.values, value{})
	} else {
		e.values = e.values[:n+1]
	}
	v := &e.values[n]
	v.name, v.text = name, ""
	v.mem, v.rests, v.assumed, v.unknown = b.mem, b.rests, b.assumed, b.unknown
	return v
}

func (e *entry) value(name string, dim quantity.Dimension, f figure, method string, digits int) {
	if !f.known() {
		e.unknown(name, f.basis)
		return
	}
	number, err := quantity.Compute(dim, f.si, f.unit, digits)
	if err != nil {
		e.unknown(name, f.refuse(fmt.Errorf("no such thing can be: %w", err)))
		return
	}
	v := e.next(name, f.basis)
	v.Computed, v.method = number, method
	e.mem.used |= f.assumed
}

// Len is the number of members.
func (e *entry) Len() int {
	n := len(e.values) + len(e.members)
	if e.placed {
		n += 2
	}
	return n
}

// Name is the name of a member.
func (e *entry) Name(i int) string {
	if i < len(e.values) {
		return e.values[i].name
	}
	if i -= len(e.values); i < len(e.members) {
		return e.members[i].name
	}
	return [...]string{"id", "at"}[i-len(e.members)]
}

// Get is a member by its name.
func (e *entry) Get(name string) any {
	for i := range e.values {
		if e.values[i].name == name {
			return &e.values[i]
		}
	}
	switch {
	case e.placed && name == "id":
		return e.id
	case e.placed && name == "at":
		return string(e.mem.pointer(e.at))
	}
	i := slices.IndexFunc(e.members, func(m member) bool { return m.name == name })
	if i < 0 {
		return nil
	}
	if later, ok := e.members[i].value.(func() []any); ok {
		return later()
	}
	return e.members[i].value
}
