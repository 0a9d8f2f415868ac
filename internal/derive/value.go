package derive

import (
	"encoding/json"
	"errors"
	"fmt"
	"strconv"

	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/quantity"
)

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

// A value is a figure in the document, with how it came about. Its members are
// those that schema/derived.schema.json describes.
type value struct {
	quantity.Computed        // when known
	text              string // in the words of who wrote it, "" for words of our own
	method            string
	*basis
}

// Of a value that is known the last name counts only where something is assumed.
var (
	knownNames   = [...]string{"si", "value", "unit", "text", "method", "inputs", "assumed"}
	unknownNames = [...]string{"undetermined", "method"}
)

// Decimal is the number in SI, "" when it is not known.
func (v *value) Decimal() string {
	if !v.known() {
		return ""
	}
	return v.SI()
}

// Origin is the first of the places that a known value rests on.
func (v *value) Origin() place.Pointer {
	if !v.known() {
		return place.Root
	}
	if at := v.first(); at != nil {
		return at.pointer()
	}
	return place.Root
}

// Len is the number of members.
func (v *value) Len() int {
	switch {
	case !v.known() && v.why() == "":
		return len(unknownNames) - 1
	case !v.known():
		return len(unknownNames)
	case v.assumed == 0:
		return len(knownNames) - 1
	}
	return len(knownNames)
}

// Name is the name of a member.
func (v *value) Name(i int) string {
	if v.known() {
		return knownNames[i]
	}
	return unknownNames[i]
}

// Get is a member by its name.
func (v *value) Get(name string) any {
	if !v.known() {
		if name == "undetermined" {
			return pointers(v.lacks())
		}
		if why := v.why(); name == "method" && why != "" {
			return why
		}
		return nil
	}
	switch name {
	case "si":
		return json.Number(v.SI())
	case "value":
		return json.Number(v.Value())
	case "unit":
		return v.Unit()
	case "text":
		if v.text != "" {
			return v.text
		}
		return v.Text()
	case "method":
		return v.method
	case "inputs":
		return pointers(v.inputs())
	case "assumed":
		if v.assumed != 0 {
			return v.assumed.names()
		}
	}
	return nil
}

// Digits that are kept: of what is exact on paper, so that a limit met exactly
// is met, and of what a model gives, whose further digits would be noise.
const (
	exactDigits = 12
	modelDigits = 6
)

// exact writes a figure that is arithmetic on what was recorded.
func (d *deriver) exact(dim quantity.Dimension, f figure, method string) *value {
	return d.value(dim, f, method, exactDigits)
}

// recorded writes a figure as it stands at a place of the record, in the words
// of who wrote it.
func (d *deriver) recorded(dim quantity.Dimension, f figure, at node, method string) *value {
	v := d.exact(dim, f, method)
	v.text = at.words()
	return v
}

// model writes a figure that a physical model gave.
func (d *deriver) model(dim quantity.Dimension, f figure, method string) *value {
	return d.value(dim, f, method, modelDigits)
}

func (d *deriver) value(dim quantity.Dimension, f figure, method string, digits int) *value {
	if !f.known() {
		return d.undetermined(f.basis)
	}
	number, err := quantity.Compute(dim, f.si, f.unit, digits)
	if err != nil {
		number, err = quantity.Compute(dim, f.si, quantity.SIUnit(dim), digits)
	}
	if err != nil {
		return d.undetermined(f.refuse(fmt.Errorf("no such thing can be: %w", err)))
	}
	v := take(&d.record.mem.values, valuePiece)
	*v = value{Computed: number, method: method, basis: f.basis}
	d.used |= f.assumed
	return v
}

func (d *deriver) undetermined(b *basis) *value {
	v := take(&d.record.mem.values, valuePiece)
	v.basis = b
	return v
}

// whole writes a count.
func whole(n int) json.Number { return json.Number(strconv.Itoa(n)) }
