package drawing

import (
	"math"

	"github.com/slablint/slablint/internal/place"
)

// seen is one opening as the elevation shows it. Heights are above the outlet,
// widths to the right of it, all in m.
type seen struct {
	id, kind     string
	adjacent     bool // of a neighbouring building
	words        string
	round        string // the way round an obstacle, where that counts instead
	drop         string // how far the outlet is above it
	distance     float64
	across       float64 // level distance of the nearest place
	nearest      float64 // height of the nearest place
	left, right  float64
	bottom, top  float64
	sized        bool // whether place and size are recorded
	standing     Standing
	drawnToScale bool
}

// outward says which way an observer faces a wall: what lies to the right.
var outward = map[string][2]float64{
	"north": {-1, 0}, "south": {1, 0}, "east": {0, 1}, "west": {0, -1}, "up": {1, 0},
}

// seenOpenings reads the derived clearances of one system. Every nearest place
// is put at its true distance from the outlet: level distances are unfolded
// into the paper. Openings alternate between right and left where their side is
// not known.
func seenOpenings(job view, system int, id string, terms Terms) []seen {
	outlet := place.Root.Append("systems", system, "discharge", "position")
	right := outward[job.facingSide(id)]
	var out []seen
	for i := range job.list("/derived/clearances") {
		at := place.Pointer("/derived/clearances").Append(i)
		if job.text(at.Append("system")) != id {
			continue
		}
		o := seen{
			id: job.text(at.Append("opening")), kind: plain(job.text(at.Append("kind"))), adjacent: job.text(at.Append("building")) == "adjacent",
			words: job.words(at.Append("straight_distance")), drop: job.words(at.Append("drop")), standing: terms.Standings[job.text(at.Append("id"))],
		}
		if counts := job.words(at.Append("distance")); counts != o.words {
			o.round = counts
		}
		if o.words == "" {
			o.words, o.round = o.round, ""
		}
		straight, known := job.si(at.Append("straight_distance"))
		if !known {
			straight, known = job.si(at.Append("distance"))
		}
		if !known {
			out = append(out, o)
			continue
		}
		o.drawnToScale, o.distance = true, straight
		drop, dropKnown := job.si(at.Append("drop"))
		o.put(job, outlet, right, drop, dropKnown, len(out))
		out = append(out, o)
	}
	return out
}

// put finds where an opening of known distance stands in the paper.
func (o *seen) put(job view, outlet place.Pointer, right [2]float64, drop float64, dropKnown bool, count int) {
	width, tall := 0.9, 1.2 // m, of a common window, where the size is not recorded
	side := 1.0
	if count%2 == 1 {
		side = -1
	}
	var from, to float64 // how far the opening reaches from its nearest place
	if n := job.indexOf("/house/openings", o.id); n >= 0 {
		opening := place.Pointer("/house/openings").Append(n)
		w, okW := job.si(opening.Append("width"))
		h, okH := job.si(opening.Append("height"))
		if okW && okH {
			width, tall, o.sized = w, h, true
		}
		facing := job.text(opening.Append("facing"))
		if facing == "up" {
			tall = 0
		}
		if span, toward, ok := job.along(outlet, opening, right, facing, width); ok {
			if toward != 0 {
				side = math.Copysign(1, toward)
			}
			from, to = span[0]-toward, span[1]-toward
		} else {
			o.sized = false
			from, to = math.Min(0, side*width), math.Max(0, side*width)
		}
	} else {
		from, to = math.Min(0, side*width), math.Max(0, side*width)
	}
	o.top = tall / 2
	if dropKnown {
		o.top = -drop
	}
	o.bottom = o.top - tall
	o.nearest = math.Max(o.bottom, math.Min(o.top, 0))
	if math.Abs(o.nearest) > o.distance {
		o.nearest = math.Copysign(o.distance, o.nearest)
	}
	o.across = side * math.Sqrt(o.distance*o.distance-o.nearest*o.nearest)
	o.left, o.right = o.across+from, o.across+to
}

// along projects an opening on the paper: the span that it takes and its place
// nearest to the outlet, m to the right of it. A wall seen from its edge shows
// its width beyond that place.
func (v view) along(outlet, opening place.Pointer, right [2]float64, facing string, width float64) (span [2]float64, toward float64, ok bool) {
	ox, oy, known := v.point(outlet)
	x, y, placed := v.point(opening.Append("corner"))
	if !known || !placed || facing == "" {
		return span, 0, false
	}
	endX, endY := x+width, y
	if facing == "east" || facing == "west" {
		endX, endY = x, y+width
	}
	a := (x-ox)*right[0] + (y-oy)*right[1]
	b := (endX-ox)*right[0] + (endY-oy)*right[1]
	if a > b {
		a, b = b, a
	}
	toward = math.Max(a, math.Min(b, 0))
	if b-a < width/2 {
		if toward < 0 {
			return [2]float64{toward - width, toward}, toward, true
		}
		return [2]float64{toward, toward + width}, toward, true
	}
	return [2]float64{a, b}, toward, true
}

// facingSide is the side of the house that the elevation shows: that of the
// nearest opening whose side is recorded.
func (v view) facingSide(system string) string {
	side, least := "south", math.Inf(1)
	for i := range v.list("/derived/clearances") {
		at := place.Pointer("/derived/clearances").Append(i)
		distance, ok := v.si(at.Append("distance"))
		n := v.indexOf("/house/openings", v.text(at.Append("opening")))
		if v.text(at.Append("system")) != system || !ok || n < 0 || distance >= least {
			continue
		}
		if facing := v.text(place.Pointer("/house/openings").Append(n, "facing")); facing != "" && facing != "up" {
			side, least = facing, distance
		}
	}
	return side
}
