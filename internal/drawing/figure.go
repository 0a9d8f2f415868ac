package drawing

import (
	"encoding/json"
	"strconv"
	"strings"

	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/quantity"
	"github.com/slablint/slablint/internal/record"
)

// Figure is one drawing with what it says in words.
type Figure struct {
	Name  string   // of the kind of figure and its subject, such as elevation-sys-1
	Title string   // what is drawn
	Alt   string   // what the drawing says as a whole
	Key   []string // what its numbers and signs stand for, one line each
	SVG   string   // a document of its own
}

// Terms are what a figure shows besides the record. A number that is zero is
// not known and not drawn.
type Terms struct {
	Clearance     float64             // m, least distance from outlet to opening
	ClearanceText string              // the same as its source writes it
	Waiver        float64             // m, how far below the outlet an opening no longer counts
	Standings     map[string]Standing // of clearances, by id; one that is missing was not judged
	GaugeFall     float64             // share of the start mark by which a reading may change, such as -0.2
	GaugeRise     float64             // the same upwards
	Levels        []Level             // radon levels of the profiles
}

// Standing is what was judged of one distance.
type Standing int

// The standings.
const (
	NotJudged Standing = iota
	FarEnough
	TooClose
	Exempt    // the requirement does not reach this opening
	Undecided // not recorded, or recorded and still undecided
	Allowed   // too close, and a variance covers it
)

func (s Standing) String() string {
	return [...]string{"not judged", "far enough", "too close", "does not count", "undecided", "too close, allowed by a variance"}[s]
}

// Level is a radon level that a line in the figure marks.
type Level struct {
	Name          string  // such as "action level"
	Profile       string  // that names it
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
		if f, ok := fanChart(job, i, terms); ok {
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

// drawn puts a figure together.
func drawn(c *canvas, name, title, alt string, key []string) Figure {
	return Figure{Name: name, Title: title, Alt: alt, Key: key, SVG: c.svg(title + ". " + alt)}
}

// numbered makes a line of the key for a number in the drawing.
func numbered(n int, words string) string { return strconv.Itoa(n) + " " + words }

// plain turns a word of the record's lists into one for people.
func plain(word string) string { return strings.ReplaceAll(word, "-", " ") }

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

func (v view) yes(ptr place.Pointer) bool { return v.at(ptr) == true }

// si is the SI number of a quantity or derived value.
func (v view) si(ptr place.Pointer) (float64, bool) { return v.number(ptr.Append("si")) }

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

// in is a quantity or derived value of a dimension in one of its units.
func (v view) in(ptr place.Pointer, dim quantity.Dimension, unit string) (float64, bool) {
	si, ok := v.si(ptr)
	if !ok {
		return 0, false
	}
	return convert(dim, si, unit)
}

// indexOf finds an entry of a list by its id.
func (v view) indexOf(list place.Pointer, id string) int {
	for i := range v.list(list) {
		if v.text(list.Append(i, "id")) == id {
			return i
		}
	}
	return -1
}

func convert(dim quantity.Dimension, si float64, unit string) (float64, bool) {
	q, err := quantity.FromSI(dim, si, unit)
	if err != nil {
		return 0, false
	}
	value, err := strconv.ParseFloat(q.Value(), 64)
	return value, err == nil
}

// metric tells whether the record measures lengths in metres: by the unit of a
// length in it.
func metric(unit string) bool { return unit == "m" || unit == "cm" || unit == "mm" }

// lengthText writes m in the kind of unit that the record uses.
func lengthText(m float64, inMetres bool) string {
	unit := "ft"
	if inMetres {
		unit = "m"
	}
	text, err := quantity.Format(quantity.Length, m, unit)
	if err != nil {
		return ""
	}
	return text
}

// scaleBar draws a round length, so that a print can be measured.
func (c *canvas) scaleBar(x, y, perMetre float64, inMetres bool) {
	lengths := []float64{0.3048, 0.6096, 1.524, 3.048, 6.096, 15.24, 30.48}
	if inMetres {
		lengths = []float64{0.25, 0.5, 1, 2, 5, 10, 20}
	}
	length := lengths[0]
	for _, l := range lengths {
		if l*perMetre <= figureWidth/4 {
			length = l
		}
	}
	end := x + length*perMetre
	c.line("ink", x, y, end, y)
	c.line("ink", x, y-4, x, y+4)
	c.line("ink", end, y-4, end, y+4)
	c.text("small", "start", end+6, y+4, lengthText(length, inMetres))
}
