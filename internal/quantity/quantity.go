// Package quantity reads, converts, compares and prints numbers with units as
// people write them on a job sheet, exactly, with the units' factors and their
// sources in one table.
package quantity

import (
	"cmp"
	"fmt"
	"math/big"
	"strings"
)

// Quantity is a number of one dimension in a unit that its writer chose. It
// does not change once made. The zero Quantity has no dimension.
type Quantity struct {
	text  string   // as typed, or "" for a derived value
	unit  *unit    // of the writer
	si    *big.Rat // exact, and shared between copies: never changed
	value *big.Rat // likewise in the unit; nil where only si was worked out
}

// Parse reads text such as "11 ft 6 in", "0.8 inH2O", "R-4" or, for Time,
// "2026-03-01T09:00-05:00". A number needs its unit; only a ratio may go
// without. A comma is taken for a thousands separator and nothing else. The
// error says what was found and what to write instead.
func Parse(dim Dimension, text string) (Quantity, error) {
	return read(dim, text, func(f *family) (Quantity, error) {
		return f.parse(text)
	})
}

// New makes a quantity of a number and a unit given apart, the number in any
// form that Parse takes. Time and Date have no such form.
func New(dim Dimension, number, unitName string) (Quantity, error) {
	return read(dim, strings.TrimSpace(number+" "+unitName), func(f *family) (Quantity, error) {
		return f.join(strings.TrimSpace(number), strings.TrimSpace(unitName))
	})
}

// read makes a quantity of text that into understands, with the text in the
// error if it does not.
func read(dim Dimension, text string, into func(*family) (Quantity, error)) (Quantity, error) {
	f := families[dim]
	switch {
	case f == nil:
		return Quantity{}, unknownDimension(dim)
	case len(text) > maxText:
		return Quantity{}, fmt.Errorf("%s %q...: %w", dim, text[:16], errLong)
	}
	q, err := into(f)
	if err != nil {
		return Quantity{}, fmt.Errorf("%s %q: %w", dim, text, err)
	}
	q.text = text
	return q, nil
}

// FromSI makes a quantity of a computed value, given in the SI unit of the
// dimension, for a reader who thinks in the given unit. The value is first
// rounded to 12 significant digits, so that a length computed as 3.048 m but for
// the noise of the arithmetic is 10 ft exactly. It is an error if the value is
// not finite or the unit is not one of the dimension.
func FromSI(dim Dimension, si float64, unit string) (Quantity, error) {
	return fromSI(dim, si, unit)
}

func fromSI[T string | float64](dim Dimension, si T, unit string) (Quantity, error) {
	f := families[dim]
	if f == nil {
		return Quantity{}, unknownDimension(dim)
	}
	u, err := f.find(unit)
	if err != nil {
		return Quantity{}, fmt.Errorf("%s: %w", dim, err)
	}
	value, err := exactly(si)
	if err == nil {
		err = f.check(value)
	}
	if err != nil {
		return Quantity{}, fmt.Errorf("%s of %v %s: %w", dim, si, SIUnit(dim), err)
	}
	return Quantity{unit: u, si: value}, nil
}

func unknownDimension(dim Dimension) error {
	return fmt.Errorf("%q is not a dimension", string(dim))
}

// Dimension says what kind of thing is measured.
func (q Quantity) Dimension() Dimension {
	if q.unit == nil {
		return ""
	}
	return q.unit.dimension
}

// Text is the quantity as it was typed. A derived one gives text that Parse
// would take.
func (q Quantity) Text() string {
	switch {
	case q.text != "" || q.unit == nil:
		return q.text
	case q.unit.dimension == Time || q.unit.dimension == Date:
		return instantText(q.unit.dimension, q.si)
	}
	return q.unit.label(q.Value())
}

// Unit is the symbol of the unit that the writer chose: of "11 ft 6 in" it is
// "ft", of R-4 "R", of a ratio without a unit "1", of a time or date "s".
func (q Quantity) Unit() string {
	if q.unit == nil {
		return ""
	}
	return q.unit.symbol
}

// Written is the unit that Unit names.
func (q Quantity) Written() Unit { return Unit{q.unit} }

// Value is the number in that unit as a decimal without an exponent: exact where
// its decimals end, else rounded half to even to 15 significant digits.
func (q Quantity) Value() string {
	if q.unit == nil {
		return ""
	}
	value := q.inUnit()
	text, exact := significant(value)
	if exact {
		return text
	}
	if places, ends := value.FloatPrec(); ends {
		return value.FloatString(places)
	}
	return text
}

// inUnit is the number in the writer's unit; it is not to be changed.
func (q Quantity) inUnit() *big.Rat {
	if q.value != nil {
		return q.value
	}
	return q.unit.fromSI(q.si)
}

// SI is the number in the SI unit of the dimension (see SIUnit) as a decimal
// without an exponent: exact where 15 significant digits suffice, else rounded
// to 12 like a computed value, so that a slope worked out from rise and run
// meets the same slope written down. Equal quantities give equal text, in
// whatever units they were written.
func (q Quantity) SI() string {
	if q.unit == nil {
		return ""
	}
	text, exact := significant(q.si)
	if exact {
		return text
	}
	f, _ := q.si.Float64()
	if short, err := exactly(f); err == nil {
		text, _ = significant(short)
	}
	return text
}

// Float is the float64 nearest to the quantity in the SI unit of the dimension.
func (q Quantity) Float() float64 {
	if q.unit == nil {
		return 0
	}
	f, _ := q.si.Float64()
	return f
}

// Cmp compares exactly: -1 if q is less than other, 0 if they are equal, +1 if q
// is more. Quantities of different dimensions are never equal; they stand in the
// order of the dimensions' names, so that sorting has an answer.
func (q Quantity) Cmp(other Quantity) int {
	if order := cmp.Compare(q.Dimension(), other.Dimension()); order != 0 || q.unit == nil {
		return order
	}
	return q.si.Cmp(other.si)
}
