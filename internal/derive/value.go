package derive

import (
	"encoding/json"
	"errors"
	"fmt"
	"slices"

	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/quantity"
)

// A basis is what a value rests on: the places read and the defaults taken, or
// the places that keep it from being known. The first place is the one that
// findings about the value stand at. It is shared and never changed.
// Its lists hold strings, in the form that the document has them.
type basis struct {
	inputs  []any  // JSON Pointers
	assumed []any  // names of assumptions
	lacks   []any  // JSON Pointers; not empty when the value is not known
	why     string // why what is recorded there cannot be used

	mem   *memory // what it was taken from, nil when from nothing
	boxed any     // inputs as the document has them, once asked for
}

// reading rests on places of the record.
func reading(at ...place.Pointer) *basis { return &basis{inputs: pointers(at)} }

// lacking is not known because places hold nothing.
func lacking(at ...place.Pointer) *basis { return &basis{lacks: pointers(at)} }

// refused is not known although recorded: the places hold what cannot be, or
// what cannot be worked with.
func refused(why string, at ...place.Pointer) *basis {
	return &basis{lacks: pointers(at), why: why}
}

func pointers(at []place.Pointer) []any {
	list := make([]any, len(at))
	for i, p := range at {
		list[i] = string(p)
	}
	return list
}

// refuse is not known because what b rests on gave an error.
func (b *basis) refuse(err error) *basis {
	if len(b.inputs) == 0 {
		return refused(err.Error(), place.Root)
	}
	return &basis{lacks: b.inputs, why: err.Error()}
}

func (b *basis) known() bool { return len(b.lacks) == 0 }

// listed is the inputs as a member of the document, which may be shared.
func (b *basis) listed() any {
	switch {
	case b.inputs == nil:
		return []any{}
	case b.boxed == nil:
		b.boxed = b.inputs
	}
	return b.boxed
}

// without is what keeps b from being known, and nothing else.
func (b *basis) without() *basis { return &basis{lacks: b.lacks, why: b.why} }

// join rests on several at once. The order is that of the arguments; what is
// named twice is kept once.
func join(parts ...*basis) *basis {
	all, size, filled := (*basis)(nil), 0, 0
	for _, b := range parts {
		if b == all || len(b.inputs)+len(b.assumed)+len(b.lacks) == 0 {
			continue
		}
		all = b
		filled++
		size += len(b.inputs)
	}
	switch filled {
	case 0:
		return nothing
	case 1:
		return all
	}
	mem := all.mem
	all = mem.basis()
	all.inputs = mem.list(size)
	for _, b := range parts {
		all.inputs = merge(all.inputs, b.inputs)
		all.add(b)
	}
	return all
}

// nothing rests on nothing.
var nothing = &basis{}

// demand is join without the places read, for what names them by the list that
// they stand in.
func demand(parts ...*basis) *basis {
	all := new(basis)
	for _, b := range parts {
		all.add(b)
	}
	return all
}

func (b *basis) add(other *basis) {
	b.assumed = merge(b.assumed, other.assumed)
	b.lacks = merge(b.lacks, other.lacks)
	if b.why == "" {
		b.why = other.why
	}
}

// merge adds what is not there yet. A list that is only handed on is shared, with
// no room behind it that another could write to.
func merge(to, from []any) []any {
	if len(to) == 0 && cap(to) == 0 {
		return from[:len(from):len(from)]
	}
	for _, x := range from {
		if !slices.Contains(to, x) {
			to = append(to, x)
		}
	}
	return to
}

// A figure is a number on its way into the document, in SI, with the unit that
// the writer of its main input thinks in.
type figure struct {
	si   float64
	unit string
	*basis
}

// notBelow refuses a figure below zero of something that cannot be.
func (f figure) notBelow(what string) figure {
	if f.known() && f.si < 0 {
		f.basis = f.refuse(errors.New(what + " cannot be below zero"))
	}
	return f
}

// Digits that are kept: of what is exact on paper, so that a limit met exactly
// is met, and of what a model gives, whose further digits would be noise.
const (
	exactDigits = 12
	modelDigits = 6
)

// exact writes a figure that is arithmetic on what was recorded.
func (d *deriver) exact(dim quantity.Dimension, f figure, method any) map[string]any {
	return d.value(dim, f, method, exactDigits)
}

// recorded writes a figure as it stands at a place of the record, in the words
// of who wrote it.
func (d *deriver) recorded(dim quantity.Dimension, f figure, at node, method any) map[string]any {
	v := d.exact(dim, f, method)
	object, _ := at.value.(map[string]any)
	if text, ok := object["text"].(string); ok && v["text"] != nil {
		v["text"] = text
	}
	return v
}

// model writes a figure that a physical model gave.
func (d *deriver) model(dim quantity.Dimension, f figure, method any) map[string]any {
	return d.value(dim, f, method, modelDigits)
}

func (d *deriver) value(dim quantity.Dimension, f figure, method any, digits int) map[string]any {
	if !f.known() {
		return undetermined(f.basis)
	}
	w, err := d.writer.Write(dim, f.si, f.unit, digits)
	if err != nil {
		f.unit = quantity.SIUnit(dim)
		w, err = d.writer.Write(dim, f.si, f.unit, digits)
	}
	if err != nil {
		return undetermined(f.refuse(fmt.Errorf("no such thing can be: %w", err)))
	}
	v := make(map[string]any, 7)
	var si any = json.Number(w.SI)
	v["si"], v["value"] = si, si
	if w.Value != w.SI {
		v["value"] = json.Number(w.Value)
	}
	v["unit"] = unitNames[f.unit]
	if v["unit"] == nil {
		v["unit"] = f.unit
	}
	v["text"] = w.Text
	v["method"] = method
	v["inputs"] = f.listed()
	if len(f.assumed) > 0 {
		v["assumed"] = f.assumed
		d.use(f.assumed)
	}
	return v
}

// unitNames holds each unit as the document has it, so that none is made anew.
var unitNames = func() map[string]any {
	names := map[string]any{}
	for _, dim := range quantity.Dimensions() {
		names[quantity.SIUnit(dim)] = quantity.SIUnit(dim)
		for _, unit := range quantity.Units(dim) {
			names[unit] = unit
		}
	}
	return names
}()

func undetermined(b *basis) map[string]any {
	v := map[string]any{"undetermined": b.lacks}
	if b.why != "" {
		v["method"] = b.why
	}
	return v
}

// whole writes a count.
func whole(n int) json.Number { return json.Number(fmt.Sprint(n)) }
