package drawing

import (
	"fmt"
	"math"
	"strings"

	"github.com/slablint/slablint/internal/place"
)

// slabPlan shows a foundation area from above: its outline, walls of hollow
// block, suction points, test holes with their pressure, the measured reach and
// the entry routes by state of treatment.
func slabPlan(job view, foundation int) (Figure, bool) {
	at := place.Pointer("/house/foundations").Append(foundation)
	id := job.text(at.Append("id"))
	var outline [][2]float64
	for i := range job.list(at.Append("outline")) {
		x, y, ok := job.point(at.Append("outline", i))
		if !ok {
			return Figure{}, false
		}
		outline = append(outline, [2]float64{x, y})
	}
	if len(outline) < 3 {
		return Figure{}, false
	}
	lowX, lowY, highX, highY := bounds(outline)
	if highX-lowX <= 0 || highY-lowY <= 0 {
		return Figure{}, false
	}
	const width, margin = 720.0, 40.0
	scale := math.Min((width-2*margin)/(highX-lowX), 460/(highY-lowY))
	bottom := margin + (highY-lowY)*scale
	c := newCanvas(width, bottom+100)
	p := plan{c, func(x float64) float64 { return margin + (x-lowX)*scale }, func(y float64) float64 { return bottom - (y-lowY)*scale }, scale}

	wall := "ink"
	if job.text(at.Append("wall_kind")) == "hollow-block" {
		wall = "block"
	}
	scaled := make([][2]float64, len(outline))
	for i, corner := range outline {
		scaled[i] = [2]float64{p.x(corner[0]), p.y(corner[1])}
	}
	c.path(wall, scaled, true)
	said := p.field(job, id)
	said = append(said, p.suctionPoints(job, id)...)
	said = append(said, p.entryRoutes(job, id)...)
	p.legend(job, at, bottom)

	title := "Plan of " + id
	alt := strings.Join(said, ". ")
	if alt == "" {
		alt = "The outline of the area; nothing in it has a recorded position"
	}
	return Figure{Name: "plan-" + id, Title: title, Alt: alt + ".", SVG: c.svg("plan-"+id, title, alt+".")}, true
}

// plan draws in plan coordinates, m, x to the right and y up.
type plan struct {
	c     *canvas
	x, y  func(float64) float64
	scale float64
}

func (p plan) suctionPoints(job view, foundation string) []string {
	var said []string
	for s := range job.list("/systems") {
		for i := range job.list(place.Root.Append("systems", s, "suction_points")) {
			at := place.Root.Append("systems", s, "suction_points", i)
			x, y, ok := job.point(at.Append("position"))
			if !ok || job.text(at.Append("foundation")) != foundation {
				continue
			}
			p.c.circle("ink", p.x(x), p.y(y), 9)
			p.c.circle("solid", p.x(x), p.y(y), 4)
			p.c.text("strong", "middle", p.x(x), p.y(y)-13, job.text(at.Append("id")))
			said = append(said, "Suction point "+job.text(at.Append("id")))
		}
	}
	return said
}

// field draws the tests of the area: reach and holes with their pressure.
func (p plan) field(job view, foundation string) []string {
	var said []string
	for t := range job.list("/diagnostics/communication_tests") {
		at := place.Pointer("/diagnostics/communication_tests").Append(t)
		if job.text(at.Append("foundation")) != foundation {
			continue
		}
		x, y, ok := job.point(at.Append("source"))
		if n := job.indexOf("/derived/communication", job.text(at.Append("id"))); ok && n >= 0 {
			if reach, known := job.si(place.Pointer("/derived/communication").Append(n, "reach")); known && reach > 0 {
				p.c.circle("reach", p.x(x), p.y(y), reach*p.scale)
				said = append(said, "Suction reached "+job.words(place.Pointer("/derived/communication").Append(n, "reach")))
			}
		}
		for h := range job.list(at.Append("holes")) {
			hole := at.Append("holes", h)
			hx, hy, ok := job.point(hole.Append("position"))
			pressure, known := job.si(hole.Append("pressure"))
			if !ok || !known {
				continue
			}
			words := job.words(hole.Append("pressure"))
			text, class := words, "small"
			if pressure >= 0 {
				text, class = words+" does not pull", "badtext"
				p.c.line("bad", p.x(hx)-5, p.y(hy)-5, p.x(hx)+5, p.y(hy)+5)
				p.c.line("bad", p.x(hx)-5, p.y(hy)+5, p.x(hx)+5, p.y(hy)-5)
			} else {
				p.c.circle("good", p.x(hx), p.y(hy), 5)
			}
			p.c.text(class, "middle", p.x(hx), p.y(hy)+19, text)
			said = append(said, fmt.Sprintf("Hole %s: %s", job.text(hole.Append("id")), text))
		}
	}
	return said
}

func (p plan) entryRoutes(job view, foundation string) []string {
	var said []string
	for i := range job.list("/entry_routes") {
		at := place.Pointer("/entry_routes").Append(i)
		x, y, ok := job.point(at.Append("position"))
		if !ok || job.text(at.Append("foundation")) != foundation {
			continue
		}
		state := job.text(at.Append("treatment"))
		class, words := "ink", state
		switch state {
		case "left-open", "not-reachable":
			class = "bad"
		case "":
			class, words = "ink dash", "treatment not recorded"
		}
		p.c.rect(class, p.x(x)-13, p.y(y)-13, 26, 26)
		p.c.text("small", "middle", p.x(x), p.y(y)+28, job.text(at.Append("id"))+": "+strings.ReplaceAll(words, "-", " "))
		said = append(said, fmt.Sprintf("%s: %s", job.text(at.Append("id")), strings.ReplaceAll(words, "-", " ")))
	}
	return said
}

func (p plan) legend(job view, at place.Pointer, bottom float64) {
	parts := []string{"circle with dot: suction point", "ring: hole that pulls", "cross: hole that does not", "square: entry route"}
	if job.text(at.Append("wall_kind")) == "hollow-block" {
		parts = append(parts, "broken wall: hollow block")
	}
	p.c.text("small", "start", 40, bottom+56, strings.Join(parts[:3], "; "))
	p.c.text("small", "start", 40, bottom+72, strings.Join(parts[3:], "; "))
	p.c.line("ink", 40, bottom+88, 40+3.048*p.scale, bottom+88)
	p.c.text("small", "start", 46+3.048*p.scale, bottom+92, "10 ft (3.05 m)")
}

func bounds(points [][2]float64) (lowX, lowY, highX, highY float64) {
	lowX, lowY = math.Inf(1), math.Inf(1)
	highX, highY = math.Inf(-1), math.Inf(-1)
	for _, p := range points {
		lowX, highX = math.Min(lowX, p[0]), math.Max(highX, p[0])
		lowY, highY = math.Min(lowY, p[1]), math.Max(highY, p[1])
	}
	return lowX, lowY, highX, highY
}
