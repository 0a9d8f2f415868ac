package record

import (
	"encoding/json"
	"strconv"

	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/quantity"
)

// A Measure is an object that stands for one number with its unit. Rules read
// nothing of it but the number; the rest is for people.
type Measure interface {
	Members
	Decimal() string // in SI, as the member "si" has it; "" when it is not known
}

// A Derived is a Measure that was worked out from a record.
type Derived interface {
	Measure
	Origin() place.Pointer // the first of the places that it rests on, "" where none was read
}

// Quantity is a recorded quantity in a canonical record: an object of "si"
// (json.Number, SI unit of its dimension), "value" (json.Number), "unit" and
// "text" (as typed).
type Quantity struct {
	written quantity.Quantity
	si      string
	float   float64
}

func newQuantity(q quantity.Quantity) *Quantity {
	si := q.SI()
	float, _ := strconv.ParseFloat(si, 64)
	return &Quantity{q, si, float}
}

// Decimal is the number in the SI unit of its dimension.
func (q *Quantity) Decimal() string { return q.si }

// Float is the float64 nearest to Decimal.
func (q *Quantity) Float() float64 { return q.float }

// Unit is the unit that the writer chose; see quantity.Quantity.Unit.
func (q *Quantity) Unit() string { return q.written.Unit() }

// Written is the same unit.
func (q *Quantity) Written() quantity.Unit { return q.written.Written() }

// Text is the quantity as it was typed.
func (q *Quantity) Text() string { return q.written.Text() }

// Len is the number of members.
func (q *Quantity) Len() int { return 4 }

// Name is the name of a member.
func (q *Quantity) Name(i int) string { return [...]string{"si", "value", "unit", "text"}[i] }

// Get is a member by its name.
func (q *Quantity) Get(name string) any {
	switch name {
	case "si":
		return json.Number(q.si)
	case "value":
		return json.Number(q.written.Value())
	case "unit":
		return q.Unit()
	case "text":
		return q.Text()
	}
	return nil
}
