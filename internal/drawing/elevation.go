package drawing

import (
	"fmt"
	"math"
	"strings"

	"github.com/slablint/slablint/internal/place"
)

// seen is one opening as the elevation shows it.
type seen struct {
	id       string
	words    string  // distance as people read it
	distance float64 // m
	across   float64 // m, level distance, to the right of the outlet when positive
	bottom   float64 // m above the outlet
	top      float64
	nearest  float64 // height of the nearest point above the outlet
	width    float64
	sized    bool // whether width and height are recorded
	bad      bool
	adjacent bool
}

// elevation shows the outlet, ground and eave, and each opening at its true
// distance: level distances are unfolded into the plane of the paper, so that a
// line drawn from the outlet is as long as the derived distance.
func elevation(job view, system int, terms Terms) (Figure, bool) {
	at := place.Root.Append("systems", system)
	id := job.text(at.Append("id"))
	entry := job.indexOf("/derived/discharges", id)
	if entry < 0 {
		return Figure{}, false
	}
	height, known := job.si(place.Pointer("/derived/discharges").Append(entry, "height_above_grade"))
	if !known || height <= 0 {
		return Figure{}, false
	}
	openings := seenOpenings(job, system, id, terms)
	left, right := -2.0, 2.0
	high := 1.5
	for _, o := range openings {
		left, right, high = math.Min(left, o.across-1), math.Max(right, o.across+o.width+1), math.Max(high, o.top+0.5)
	}
	if terms.Clearance > 0 {
		left, right, high = math.Min(left, -terms.Clearance-0.3), math.Max(right, terms.Clearance+0.3), math.Max(high, terms.Clearance*0.35)
	}
	const width, margin = 720.0, 20.0
	scale := (width - 2*margin) / (right - left) // px per m
	canvasHeight := (height+high)*scale + 70
	c := newCanvas(width, canvasHeight)
	x := func(m float64) float64 { return margin + (m-left)*scale }
	y := func(m float64) float64 { return 20 + (high-m)*scale }

	c.rect("ground", 0, y(-height), width, canvasHeight-y(-height))
	c.line("ink", 0, y(-height), width, y(-height))
	c.text("small", "start", 8, y(-height)+16, "ground nearest to the outlet")
	if above, ok := job.si(place.Pointer("/derived/discharges").Append(entry, "height_above_eave")); ok {
		c.line("thin dot", 0, y(-above), width, y(-above))
		c.text("small", "start", 8, y(-above)-4, "eave")
	}
	if terms.Clearance > 0 {
		c.circle("zone", x(0), y(0), terms.Clearance*scale)
	}
	if terms.Waiver > 0 {
		c.line("thin dash", 0, y(-terms.Waiver), width, y(-terms.Waiver))
		c.text("small", "end", width-8, y(-terms.Waiver)-4, "openings wholly below this line are exempt")
	}
	for _, o := range openings {
		drawOpening(c, o, x, y, scale)
	}
	c.line("ink", x(0)-4, y(0), x(0)-4, y(-height))
	c.line("ink", x(0)+4, y(0), x(0)+4, y(-height))
	c.circle("solid", x(0), y(0), 4)
	c.text("strong", "middle", x(0), y(0)-10, "outlet "+id)
	c.line("thin", x(0)+16, y(0), x(0)+16, y(-height))
	c.text("small", "start", x(0)+20, y(-height/2), job.words(place.Pointer("/derived/discharges").Append(entry, "height_above_grade"))+" above ground")

	title := "Outlet " + id + " and the openings round it"
	return Figure{Name: "elevation-" + id, Title: title, Alt: elevationWords(job, entry, openings), SVG: c.svg("elevation-"+id, title, elevationWords(job, entry, openings))}, true
}

func drawOpening(c *canvas, o seen, x, y func(float64) float64, scale float64) {
	class := "ink"
	if o.adjacent || !o.sized {
		class += " dash"
	}
	from := o.across
	if o.across < 0 {
		from -= o.width
	}
	c.rect(class, x(from), y(o.top), o.width*scale, (o.top-o.bottom)*scale)
	c.text("small", "middle", x(from+o.width/2), y(o.bottom)+14, o.id)
	line, words, label := "good", "small", o.words
	if o.bad {
		line, words, label = "bad", "badtext", o.words+" too close"
	}
	c.line(line, x(0), y(0), x(o.across), y(o.nearest))
	c.text(words, "middle", x(o.across/2), y(o.nearest/2)-5, label)
}

// seenOpenings reads the derived clearances of one system. Openings alternate
// between left and right where their side is not known.
func seenOpenings(job view, system int, id string, terms Terms) []seen {
	var out []seen
	outlet := place.Root.Append("systems", system, "discharge", "position")
	ox, oy, sided := job.point(outlet)
	for i := range job.list("/derived/clearances") {
		at := place.Pointer("/derived/clearances").Append(i)
		distance, ok := job.si(at.Append("distance"))
		if job.text(at.Append("system")) != id || !ok {
			continue
		}
		o := seen{
			id: job.text(at.Append("opening")), words: job.words(at.Append("distance")), distance: distance,
			bad: terms.TooClose[job.text(at.Append("id"))], adjacent: job.text(at.Append("building")) == "adjacent",
			width: 0.9, top: 0.6, bottom: -0.6,
		}
		tall := 1.2
		side := 1.0
		if len(out)%2 == 1 {
			side = -1
		}
		if n := job.indexOf("/house/openings", o.id); n >= 0 {
			opening := place.Pointer("/house/openings").Append(n)
			w, okW := job.si(opening.Append("width"))
			h, okH := job.si(opening.Append("height"))
			if okW && okH {
				o.width, tall, o.sized = w, h, true
			}
			if px, py, ok := job.point(opening.Append("corner")); ok && sided {
				if math.Abs(px-ox) >= math.Abs(py-oy) {
					side = math.Copysign(1, px-ox)
				} else {
					side = math.Copysign(1, py-oy)
				}
			}
		}
		if drop, ok := job.si(at.Append("drop")); ok {
			o.top = -drop
			o.bottom = o.top - tall
		}
		o.nearest = math.Max(o.bottom, math.Min(o.top, 0))
		if math.Abs(o.nearest) > o.distance {
			o.nearest = math.Copysign(o.distance, o.nearest)
		}
		o.across = side * math.Sqrt(o.distance*o.distance-o.nearest*o.nearest)
		out = append(out, o)
	}
	return out
}

func elevationWords(job view, entry int, openings []seen) string {
	var parts []string
	for _, o := range openings {
		part := fmt.Sprintf("%s is %s away", o.id, o.words)
		if o.bad {
			part += ", too close"
		}
		parts = append(parts, part)
	}
	said := "The outlet is " + job.words(place.Pointer("/derived/discharges").Append(entry, "height_above_grade")) + " above the ground nearest to it."
	if len(parts) > 0 {
		said += " " + strings.Join(parts, "; ") + "."
	}
	return said
}
