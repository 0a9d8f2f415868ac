package derive

import (
	"encoding/json"
	"fmt"

	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/quantity"
)

// A basis is what a value rests on: the places read and the defaults taken, or
// the places that keep it from being known. It is shared and never changed.
type basis struct {
	inputs  []any // JSON Pointers
	assumed []any // names of assumptions
	lacks   []any // JSON Pointers; not empty when the value is not known
	why     string
}

// reading rests on places of the record.
func reading(at ...place.Pointer) *basis { return &basis{inputs: pointers(at)} }

// lacking is not known because places hold nothing.
func lacking(at ...place.Pointer) *basis { return &basis{lacks: pointers(at)} }

// refused is not known although recorded: the places hold what cannot be, or
// cannot be worked with.
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

func (b *basis) known() bool { return len(b.lacks) == 0 }

// join rests on several at once. The order is that of the arguments; what is
// named twice is kept once.
func join(parts ...*basis) *basis {
	if len(parts) == 1 {
		return parts[0]
	}
	var all basis
	for _, b := range parts {
		all.inputs = merge(all.inputs, b.inputs)
		all.assumed = merge(all.assumed, b.assumed)
		all.lacks = merge(all.lacks, b.lacks)
		if all.why == "" {
			all.why = b.why
		}
	}
	return &all
}

func merge(to, from []any) []any {
next:
	for _, x := range from {
		for _, y := range to {
			if x == y {
				continue next
			}
		}
		to = append(to, x)
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

func (f figure) in(unit string) figure { f.unit = unit; return f }

// value writes a figure as the schema has it.
func (d *deriver) value(dim quantity.Dimension, f figure, method string) map[string]any {
	if !f.known() {
		return undetermined(f.basis)
	}
	q, err := quantity.FromSI(dim, f.si, f.unit)
	if err != nil {
		q, err = quantity.FromSI(dim, f.si, quantity.SIUnit(dim))
	}
	if err != nil {
		return undetermined(refused(fmt.Sprintf("the result cannot be: %v", err), inputsOf(f.basis)...))
	}
	v := map[string]any{
		"si": json.Number(q.SI()), "value": json.Number(q.Value()), "unit": q.Unit(), "text": q.String(),
		"method": method, "inputs": f.inputs,
	}
	if len(f.assumed) > 0 {
		v["assumed"] = f.assumed
		d.use(f.assumed)
	}
	return v
}

func inputsOf(b *basis) []place.Pointer {
	at := make([]place.Pointer, len(b.inputs))
	for i, p := range b.inputs {
		at[i] = place.Pointer(p.(string))
	}
	return at
}

func undetermined(b *basis) map[string]any {
	v := map[string]any{"undetermined": b.lacks}
	if b.why != "" {
		v["method"] = b.why
	}
	return v
}
