package drawing

import (
	"encoding/json"

	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/record"
)

// Figure is one drawing with what it says in words.
type Figure struct {
	Name  string // of the kind of figure and its subject, such as elevation-sys-1
	Title string
	Alt   string // the text alternative
	SVG   string
}

// Terms are the limits that a figure shows. A number that is zero is not known
// and not drawn.
type Terms struct {
	Clearance float64         // m, least distance from outlet to opening
	Waiver    float64         // m, how far below the outlet an opening no longer counts
	TooClose  map[string]bool // ids of clearances that a requirement found deficient
	Levels    []Level         // radon levels of the profiles
}

// Level is a radon level that a line in the figure marks.
type Level struct {
	Name          string
	Concentration float64 // Bq/m3
	Text          string  // as its source writes it
}

// Figures draws everything that a record with derived values allows, in a fixed
// order. What lacks the values for a figure has no figure.
func Figures(input map[string]any, terms Terms) []Figure {
	job := view{input}
	var out []Figure
	for i := range job.list("/systems") {
		if f, ok := elevation(job, i, terms); ok {
			out = append(out, f)
		}
		if f, ok := fanChart(job, i); ok {
			out = append(out, f)
		}
	}
	for i := range job.list("/house/foundations") {
		if f, ok := slabPlan(job, i); ok {
			out = append(out, f)
		}
	}
	if f, ok := radonChart(job, terms.Levels); ok {
		out = append(out, f)
	}
	return out
}

// view reads a canonical record with derived values.
type view struct{ input map[string]any }

func (v view) at(ptr place.Pointer) any {
	value, _ := record.At(v.input, ptr)
	return value
}

func (v view) list(ptr place.Pointer) []any {
	list, _ := v.at(ptr).([]any)
	return list
}

func (v view) text(ptr place.Pointer) string {
	text, _ := v.at(ptr).(string)
	return text
}

// si is the SI number of a quantity or derived value.
func (v view) si(ptr place.Pointer) (float64, bool) {
	n, ok := v.at(ptr.Append("si")).(json.Number)
	if !ok {
		return 0, false
	}
	f, err := n.Float64()
	return f, err == nil
}

// number is a plain number.
func (v view) number(ptr place.Pointer) (float64, bool) {
	n, ok := v.at(ptr).(json.Number)
	if !ok {
		return 0, false
	}
	f, err := n.Float64()
	return f, err == nil
}

// words is a quantity as the record writes it.
func (v view) words(ptr place.Pointer) string { return v.text(ptr.Append("text")) }

// point is a position in plan, m.
func (v view) point(ptr place.Pointer) (x, y float64, ok bool) {
	x, okX := v.si(ptr.Append("x"))
	y, okY := v.si(ptr.Append("y"))
	return x, y, okX && okY
}

// system finds the index of a system's entry among derived values.
func (v view) indexOf(list place.Pointer, id string) int {
	for i := range v.list(list) {
		if v.text(list.Append(i, "id")) == id {
			return i
		}
	}
	return -1
}
