package derive

import (
	"encoding/json"
	"fmt"
	"slices"

	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/quantity"
)

// A basis is what a value rests on: the places read and the defaults taken, or
// the places that keep it from being known. It is shared and never changed.
type basis struct {
	inputs  []any  // JSON Pointers
	assumed []any  // names of assumptions
	lacks   []any  // JSON Pointers; not empty when the value is not known
	why     string // why what is recorded there cannot be used
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

// refuse is not known because what b rests on gave an error.
func (b *basis) refuse(err error) *basis {
	if len(b.inputs) == 0 {
		return refused(err.Error(), place.Root)
	}
	return &basis{lacks: b.inputs, why: err.Error()}
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
	if len(to) == 0 {
		return from[:len(from):len(from)]
	}
	for _, x := range from {
		if !slices.Contains(to, x) {
			to = append(to, x)
		}
	}
	return to[:len(to):len(to)]
}

// A figure is a number on its way into the document, in SI, with the unit that
// the writer of its main input thinks in.
type figure struct {
	si   float64
	unit string
	*basis
}

// Digits that are kept: of what is exact on paper, so that a limit met exactly
// is met, and of what a model gives, whose further digits would be noise.
const (
	exactDigits = 12
	modelDigits = 6
)

// exact writes a figure that is arithmetic on what was recorded.
func (d *deriver) exact(dim quantity.Dimension, f figure, method string) map[string]any {
	return d.value(dim, f, method, exactDigits)
}

// model writes a figure that a physical model gave.
func (d *deriver) model(dim quantity.Dimension, f figure, method string) map[string]any {
	return d.value(dim, f, method, modelDigits)
}

func (d *deriver) value(dim quantity.Dimension, f figure, method string, digits int) map[string]any {
	if !f.known() {
		return undetermined(f.basis)
	}
	w, err := quantity.Write(dim, f.si, f.unit, digits)
	if err != nil {
		f.unit = quantity.SIUnit(dim)
		w, err = quantity.Write(dim, f.si, f.unit, digits)
	}
	if err != nil {
		return undetermined(f.refuse(fmt.Errorf("no such thing can be: %w", err)))
	}
	v := make(map[string]any, 7)
	v["si"] = json.Number(w.SI)
	v["value"] = json.Number(w.Value)
	v["unit"] = f.unit
	v["text"] = w.Text
	v["method"] = method
	v["inputs"] = f.inputs
	if f.inputs == nil {
		v["inputs"] = []any{}
	}
	if len(f.assumed) > 0 {
		v["assumed"] = f.assumed
		d.use(f.assumed)
	}
	return v
}

func undetermined(b *basis) map[string]any {
	v := map[string]any{"undetermined": b.lacks}
	if b.why != "" {
		v["method"] = b.why
	}
	return v
}

// whole writes a count.
func whole(n int) json.Number { return json.Number(fmt.Sprint(n)) }
