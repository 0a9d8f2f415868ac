package drawing

import (
	"fmt"
	"math"
	"slices"

	"github.com/slablint/slablint/internal/place"
)

const (
	slabMargin = 34.0  // px
	deepest    = 332.0 // px, from top to bottom of a plan
)

// plan draws in plan coordinates: m to the right and up become px.
type plan struct {
	*canvas
	x, y     func(float64) float64
	scale    float64
	outline  [][2]float64 // m
	inMetres bool
	key      []string // what its numbers stand for
	notes    []string // what its other signs stand for
	numbers  int
	later    []func() // words, which are written when all marks stand
}

// slabPlan shows a foundation area from above: its outline, walls of hollow
// block, suction points, test holes with their pressure, the measured reach and
// the entry routes by what was done about them.
func slabPlan(job view, foundation int) (Figure, bool) {
	at := place.Pointer("/house/foundations").Append(foundation)
	id := job.text(at.Append("id"))
	outline, ok := job.outline(at)
	if !ok {
		return Figure{}, false
	}
	lowX, lowY, highX, highY := bounds(outline)
	if highX-lowX <= 0 || highY-lowY <= 0 {
		return Figure{}, false
	}
	scale := math.Min((figureWidth-2*slabMargin)/(highX-lowX), deepest/(highY-lowY))
	left := (figureWidth - (highX-lowX)*scale) / 2
	bottom := slabMargin + (highY-lowY)*scale
	p := &plan{
		canvas: newCanvas(bottom + 62), scale: scale, outline: outline,
		x:        func(x float64) float64 { return left + (x-lowX)*scale },
		y:        func(y float64) float64 { return bottom - (y-lowY)*scale },
		inMetres: metric(job.text(at.Append("outline", 0, "x", "unit"))),
	}
	p.reach(job, id)
	p.walls(job.text(at.Append("wall_kind")) == "hollow-block")
	p.sizes()
	p.routes(job, id)
	p.points(job, id)
	p.holes(job, id)
	for _, write := range p.later {
		write()
	}
	p.scaleBar(slabMargin, bottom+46, scale, p.inMetres)
	if job.anyRoute(id) {
		p.notes = append(p.notes, "Squares: entry routes, with a check mark when treated, a cross when left open, a question mark when out of reach or not recorded.")
	}
	if job.text(at.Append("wall_kind")) == "hollow-block" {
		p.notes = append(p.notes, "Walls drawn in blocks: hollow block, through which soil gas travels.")
	}
	return drawn(p.canvas, "plan-"+id, "Plan of "+id, planWords(job, id), slices.Concat(p.key, p.notes, p.unplaced(job, id))), true
}

func (v view) outline(foundation place.Pointer) (outline [][2]float64, ok bool) {
	for i := range v.list(foundation.Append("outline")) {
		x, y, ok := v.point(foundation.Append("outline", i))
		if !ok {
			return nil, false
		}
		outline = append(outline, [2]float64{x, y})
	}
	return outline, len(outline) >= 3
}

// reach tints what the measured reach of each test covers, inside the walls.
func (p *plan) reach(job view, foundation string) {
	for t := range job.list("/diagnostics/communication_tests") {
		at := place.Pointer("/diagnostics/communication_tests").Append(t)
		n := job.indexOf("/derived/communication", job.text(at.Append("id")))
		x, y, ok := job.point(at.Append("source"))
		if job.text(at.Append("foundation")) != foundation || !ok || n < 0 {
			continue
		}
		reach, known := job.si(place.Pointer("/derived/communication").Append(n, "reach"))
		if !known || reach <= 0 {
			continue
		}
		lowX, lowY, highX, highY := bounds(p.outline)
		p.openWindow(box{p.x(lowX), p.y(highY), (highX - lowX) * p.scale, (highY - lowY) * p.scale})
		p.circle("reach", p.x(x), p.y(y), reach*p.scale)
		p.closeWindow()
		p.notes = append(p.notes, "Tinted: within "+job.words(place.Pointer("/derived/communication").Append(n, "reach"))+" of the drawing hole, the farthest hole that pulls in test "+job.text(at.Append("id"))+".")
	}
}

func (p *plan) walls(block bool) {
	corners := make([][2]float64, len(p.outline))
	for i, c := range p.outline {
		corners[i] = [2]float64{p.x(c[0]), p.y(c[1])}
	}
	for i, from := range corners {
		to := corners[(i+1)%len(corners)]
		p.labels.takeLine(from[0], from[1], to[0], to[1])
	}
	if !block {
		p.path("heavy", corners, true)
		return
	}
	for i, from := range corners {
		p.blocks(from, corners[(i+1)%len(corners)])
	}
}

// blocks draws a wall as two lines with joints between.
func (p *plan) blocks(from, to [2]float64) {
	const thick, long = 6.0, 14.0 // px
	length := math.Hypot(to[0]-from[0], to[1]-from[1])
	if length == 0 {
		return
	}
	ux, uy := (to[0]-from[0])/length, (to[1]-from[1])/length
	nx, ny := -uy*thick/2, ux*thick/2
	p.line("ink", from[0]+nx, from[1]+ny, to[0]+nx, to[1]+ny)
	p.line("ink", from[0]-nx, from[1]-ny, to[0]-nx, to[1]-ny)
	count := math.Max(1, math.Round(length/long))
	for i := range int(count) + 1 {
		x, y := from[0]+ux*length*float64(i)/count, from[1]+uy*length*float64(i)/count
		p.line("ink", x+nx, y+ny, x-nx, y-ny)
	}
}

// sizes writes the length of each side outside of it.
func (p *plan) sizes() {
	area := 0.0
	for i, a := range p.outline {
		b := p.outline[(i+1)%len(p.outline)]
		area += a[0]*b[1] - b[0]*a[1]
	}
	turn := math.Copysign(1, area) // 1 when the corners go round against the clock
	for i, a := range p.outline {
		b := p.outline[(i+1)%len(p.outline)]
		length := math.Hypot(b[0]-a[0], b[1]-a[1])
		if length*p.scale < 44 {
			continue
		}
		mx, my := p.x((a[0]+b[0])/2), p.y((a[1]+b[1])/2)
		ox, oy := (b[1]-a[1])/length*turn, (b[0]-a[0])/length*turn // outward, px
		words := lengthText(length, p.inMetres)
		switch {
		case math.Abs(oy) > 0.7 && oy < 0:
			p.label("small", words, spot{"middle", mx, my - 9})
		case math.Abs(oy) > 0.7:
			p.label("small", words, spot{"middle", mx, my + 19})
		default: // along the wall
			x := mx + ox*10
			if ox > 0 {
				x += 8
			}
			p.labels.take(box{x - 10, my - 26, 12, 52})
			p.add(`<text class="small" text-anchor="middle" transform="translate(%s %s) rotate(-90)">%s</text>`, num(x), num(my), escape(words))
		}
	}
}

// number gives the next number to a mark of a size, and keeps a line of the key
// for it.
func (p *plan) number(x, y, mark float64, words string) {
	p.numbers++
	number := fmt.Sprint(p.numbers)
	p.key = append(p.key, numbered(p.numbers, words))
	p.later = append(p.later, func() { p.badge(number, x, y, mark) })
}

func (p *plan) points(job view, foundation string) {
	for s := range job.list("/systems") {
		for i := range job.list(place.Root.Append("systems", s, "suction_points")) {
			at := place.Root.Append("systems", s, "suction_points", i)
			x, y, ok := job.point(at.Append("position"))
			if !ok || job.text(at.Append("foundation")) != foundation {
				continue
			}
			p.circle("hole", p.x(x), p.y(y), 9)
			p.circle("solid", p.x(x), p.y(y), 4.5)
			p.labels.take(box{p.x(x) - 10, p.y(y) - 10, 20, 20})
			words := "suction point " + job.text(at.Append("id"))
			if through := job.text(at.Append("through")); through != "" {
				words += ", through " + plain(through)
			}
			if suction := job.words(at.Append("suction")); suction != "" {
				words += ", " + suction
			}
			p.number(p.x(x), p.y(y), 9, words+" (disc in a ring)")
		}
	}
}

// holes draws the test holes: a ring that pulls, a cross that does not, a
// broken ring where the pressure is not recorded.
func (p *plan) holes(job view, foundation string) {
	for t := range job.list("/diagnostics/communication_tests") {
		at := place.Pointer("/diagnostics/communication_tests").Append(t)
		if job.text(at.Append("foundation")) != foundation {
			continue
		}
		for h := range job.list(at.Append("holes")) {
			hole := at.Append("holes", h)
			x, y, ok := job.point(hole.Append("position"))
			if !ok {
				continue
			}
			pressure, known := job.si(hole.Append("pressure"))
			words, class := job.words(hole.Append("pressure")), "small"
			said := "pulls"
			switch {
			case !known:
				p.circle("ink dash", p.x(x), p.y(y), 6)
				words, said = "?", "pressure not recorded"
			case pressure >= 0:
				p.cross(p.x(x), p.y(y), 6)
				class, said = "badtext", "does not pull"
			default:
				p.circle("hole", p.x(x), p.y(y), 6)
			}
			p.labels.take(box{p.x(x) - 7, p.y(y) - 7, 14, 14})
			p.later = append(p.later, func() { p.label(class, words, around(p.x(x), p.y(y), 7)...) })
			line := "test hole " + job.text(hole.Append("id")) + ": " + said
			if known {
				line = "test hole " + job.text(hole.Append("id")) + ": " + words + ", " + said
				if n := job.indexOf("/derived/holes", job.text(hole.Append("id"))); n >= 0 && pressure < 0 {
					line += classWords(job.text(place.Pointer("/derived/holes").Append(n, "class")))
				}
			}
			p.number(p.x(x), p.y(y), 6, line)
		}
	}
}

// classWords says how well a hole pulls.
func classWords(class string) string {
	switch class {
	case "strong":
		return " strongly"
	case "adequate":
		return " well enough"
	case "marginal":
		return ", but only just"
	case "fails":
		return ", but too little"
	}
	return ""
}

// routeState is what the drawing shows of a treatment: done, open, out of
// reach, or not recorded.
func routeState(treatment string) (sign, words string) {
	switch treatment {
	case "left-open":
		return "cross", "left open"
	case "not-reachable":
		return "question", "not reachable"
	case "":
		return "question", "treatment not recorded"
	}
	return "done", plain(treatment)
}

func (p *plan) routes(job view, foundation string) {
	for i := range job.list("/entry_routes") {
		at := place.Pointer("/entry_routes").Append(i)
		x, y, ok := job.point(at.Append("position"))
		if !ok || job.text(at.Append("foundation")) != foundation {
			continue
		}
		px, py := p.x(x), p.y(y)
		sign, _ := routeState(job.text(at.Append("treatment")))
		const half = 14.0
		switch sign {
		case "cross":
			p.rect("bad", px-half, py-half, 2*half, 2*half)
			p.cross(px+half-6, py-half+6, 3.5)
		case "question":
			p.rect("ink dash", px-half, py-half, 2*half, 2*half)
			p.text("number", "end", px+half-2, py-half+11, "?")
		default:
			p.rect("ink", px-half, py-half, 2*half, 2*half)
			p.path("ink", [][2]float64{{px + half - 11, py - half + 7}, {px + half - 8, py - half + 10}, {px + half - 3, py - half + 4}}, false)
		}
		p.labels.take(box{px - half, py - half, 2 * half, 2 * half})
		p.number(px, py, half, routeWords(job, at))
	}
}

// anyRoute tells whether an entry route of the area has a position.
func (v view) anyRoute(foundation string) bool {
	for i := range v.list("/entry_routes") {
		at := place.Pointer("/entry_routes").Append(i)
		if _, _, ok := v.point(at.Append("position")); ok && v.text(at.Append("foundation")) == foundation {
			return true
		}
	}
	return false
}

func routeWords(job view, at place.Pointer) string {
	_, state := routeState(job.text(at.Append("treatment")))
	words := job.text(at.Append("id"))
	if kind := plain(job.text(at.Append("kind"))); kind != "" && kind != words {
		words += ", " + kind
	}
	return words + ": " + state
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
