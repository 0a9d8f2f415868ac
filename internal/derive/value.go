package derive

import (
	"encoding/json"
	"errors"
	"strconv"

	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/quantity"
)

// A figure is a number on its way into the document, in SI, with the unit that
// the writer of its main input thinks in.
type figure struct {
	si   float64
	unit quantity.Unit
	basis
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
	name              string // that the document has it by
	text              string // in the words of who wrote it, "" for words of our own
	method            string
	basis
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
	if at, ok := v.first(); ok {
		return v.mem.pointer(at)
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
			return v.mem.pointers(v.lacks())
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
		return v.mem.pointers(v.inputs())
	case "assumed":
		if v.assumed != 0 {
			return v.assumed.names()
		}
	}
	return nil
}

// whole writes a count.
func whole(n int) json.Number { return json.Number(strconv.Itoa(n)) }
