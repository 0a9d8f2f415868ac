package drawing

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"github.com/slablint/slablint/internal/place"
)

const (
	elevationMargin = 14.0  // px
	tallest         = 368.0 // px, from the ground to the top of an elevation
	farAway         = 6.0   // times the clearance, beyond which an opening is only listed
)

// upright is an elevation being drawn: m to the right of the outlet and above
// it become px.
type upright struct {
	*canvas
	left, high, scale, shift float64
	floor                    float64 // px, the lowest level drawn
	wide                     float64 // px, without the names of levels on the right
}

func (e upright) x(m float64) float64 { return e.shift + (m-e.left)*e.scale }
func (e upright) y(m float64) float64 { return elevationMargin + (e.high-m)*e.scale }

// gutter is the strip on the right in which levels are named, px.
const gutter = 90.0

// level is a height worth a line, above the outlet, m.
type level struct {
	at    float64
	name  string
	words string // with the height
}

// elevation shows the outlet, ground, eave and roof, and each opening at its
// true distance.
func elevation(job view, system int, terms Terms) (Figure, bool) {
	id := job.text(place.Root.Append("systems", system, "id"))
	entry := job.indexOf("/derived/discharges", id)
	if entry < 0 {
		return Figure{}, false
	}
	at := place.Pointer("/derived/discharges").Append(entry)
	height, grounded := job.si(at.Append("height_above_grade"))
	grounded = grounded && height > 0
	openings := seenOpenings(job, system, id, terms)
	if !grounded && !slices.ContainsFunc(openings, func(o seen) bool { return o.drawnToScale }) {
		return Figure{}, false
	}
	setAside(openings, terms.Clearance)
	inMetres := metric(job.text(at.Append("height_above_grade", "unit")))

	levels := job.levels(system, at)
	e := lay(openings, levels, height, grounded, terms)
	e.ground(job, system, height, grounded)
	e.levels(levels)
	e.zone(openings, terms, height, grounded)
	e.outlines(openings)
	e.pipe()
	e.outletNames(id, grounded, job.words(at.Append("height_above_grade")))
	e.radiusName(openings, terms, inMetres)
	e.distances(openings)
	e.scaleBar(elevationMargin, e.height-12, e.scale, inMetres)

	return drawn(e.canvas, "elevation-"+id, "Outlet of "+id+" and the openings round it",
		elevationWords(job, at, openings, grounded, terms), elevationKey(job, id, openings, levels, terms, inMetres)), true
}

// setAside keeps an opening far away from shrinking all the rest.
func setAside(openings []seen, clearance float64) {
	limit := 18.0 // m
	if clearance > 0 {
		limit = farAway * clearance
	}
	for i := range openings {
		if openings[i].distance > limit {
			openings[i].drawnToScale = false
		}
	}
}

// levels are the heights of eave and roof as far as the record tells them.
func (v view) levels(system int, derived place.Pointer) []level {
	discharge := place.Root.Append("systems", system, "discharge")
	var out []level
	for _, known := range []struct {
		at          place.Pointer
		name, words string
	}{
		{derived.Append("height_above_eave"), "eave", "eave"},
		{discharge.Append("height_above_roof_edge"), "roof edge", "roof edge"},
		{discharge.Append("height_above_roof"), "roof", "roof where the pipe passes"},
		{discharge.Append("height_above_highest_roof"), "highest roof", "highest roof"},
	} {
		above, ok := v.si(known.at)
		if !ok {
			continue
		}
		height := v.words(known.at) + " below the outlet"
		if above < 0 {
			height = strings.TrimPrefix(v.words(known.at), "-") + " above the outlet"
		}
		if n := len(out); n > 0 && out[n-1].at == -above {
			out[n-1].words = out[n-1].name + " and " + known.words + ": " + height
			out[n-1].name += ", " + known.name
			continue
		}
		out = append(out, level{-above, known.name, known.words + ": " + height})
	}
	return out
}

// lay finds the scale at which everything has room.
func lay(openings []seen, levels []level, height float64, grounded bool, terms Terms) upright {
	left, right, high, low := -1.5, 1.5, 1.0, -1.5
	for _, o := range openings {
		if o.drawnToScale {
			left, right = math.Min(left, o.left-0.6), math.Max(right, o.right+0.6)
			high, low = math.Max(high, o.top+0.5), math.Min(low, o.bottom-0.5)
		}
	}
	for _, l := range levels {
		high = math.Max(high, l.at+0.6)
	}
	if terms.Clearance > 0 {
		left, right = math.Min(left, -terms.Clearance-0.4), math.Max(right, terms.Clearance+0.4)
		high = math.Max(high, terms.Clearance+0.2)
	}
	if grounded {
		low = -height
	}
	wide := figureWidth
	if len(levels) > 0 {
		wide -= gutter
	}
	scale := math.Min((wide-2*elevationMargin)/(right-left), tallest/(high-low))
	e := upright{left: left, high: high, scale: scale, shift: (wide - (right-left)*scale) / 2, wide: wide}
	e.floor = elevationMargin + (high-low)*scale
	e.canvas = newCanvas(e.floor + 52)
	e.labels.frame.h = e.floor
	return e
}

// ground draws soil and the wall of the house up to its eave.
func (e upright) ground(job view, system int, height float64, grounded bool) {
	if !grounded {
		e.text("small soft", "start", elevationMargin, e.floor+18, "The height above the ground is not recorded.")
		return
	}
	above, known := job.si(place.Pointer("/derived/discharges").Append(job.indexOf("/derived/discharges", job.text(place.Root.Append("systems", system, "id"))), "height_above_eave"))
	if left, right, ok := job.wall(system); ok && known {
		left, right = math.Max(e.x(left), 0), math.Min(e.x(right), e.wide)
		if right > left && -above > -height {
			e.rect("wall", left, e.y(-above), right-left, e.y(-height)-e.y(-above))
			e.line("thin", left, e.y(-above), left, e.y(-height))
			e.line("thin", right, e.y(-above), right, e.y(-height))
			e.labels.takeLine(left, e.y(-above), left, e.y(-height))
			e.labels.takeLine(right, e.y(-above), right, e.y(-height))
		}
	}
	e.rect("ground", 0, e.floor, figureWidth, e.height-e.floor)
	e.line("heavy", 0, e.floor, figureWidth, e.floor)
	e.labels.takeLine(0, e.floor, figureWidth, e.floor)
	e.text("small", "start", elevationMargin, e.floor+17, "ground nearest to the outlet")
}

// wall is how far the walls of the house reach to both sides of the outlet, m.
func (v view) wall(system int) (left, right float64, ok bool) {
	ox, oy, known := v.point(place.Root.Append("systems", system, "discharge", "position"))
	if !known {
		return 0, 0, false
	}
	toRight := outward[v.facingSide(v.text(place.Root.Append("systems", system, "id")))]
	left, right = math.Inf(1), math.Inf(-1)
	for i := range v.list("/house/foundations") {
		outline := place.Pointer("/house/foundations").Append(i, "outline")
		for k := range v.list(outline) {
			x, y, placed := v.point(outline.Append(k))
			if !placed {
				continue
			}
			m := (x-ox)*toRight[0] + (y-oy)*toRight[1]
			left, right = math.Min(left, m), math.Max(right, m)
		}
	}
	return left, right, right > left
}

// levels draws eave and roof as lines across, and names them on the right; names
// of levels close to each other move apart.
func (e upright) levels(levels []level) {
	levels = slices.Clone(levels)
	slices.SortFunc(levels, func(a, b level) int { return cmp.Compare(b.at, a.at) })
	free := 12.0
	for _, l := range levels {
		y := e.y(l.at)
		e.line("thin dash", 0, y, e.wide, y)
		e.labels.takeLine(0, y, e.wide, y)
		name := math.Max(y, free)
		e.line("thin", e.wide, y, e.wide+8, name)
		e.labels.takeLine(e.wide, y, e.wide+8, name)
		for _, part := range strings.Split(l.name, ", ") {
			e.label("small", part, spot{"start", e.wide + 11, name + 4})
			name += 14
		}
		free = name
	}
}

// outlines draws the openings themselves.
func (e upright) outlines(openings []seen) {
	for _, o := range openings {
		if !o.drawnToScale {
			continue
		}
		class := "ink"
		if o.adjacent || !o.sized {
			class = "ink dash"
		}
		e.rect(class, e.x(o.left), e.y(o.top), (o.right-o.left)*e.scale, (o.top-o.bottom)*e.scale)
		left, right, top, bottom := e.x(o.left), e.x(o.right), e.y(o.top), e.y(o.bottom)
		e.labels.takeLine(left, top, left, bottom)
		e.labels.takeLine(right, top, right, bottom)
		e.labels.takeLine(left, top, right, top)
		e.labels.takeLine(left, bottom, right, bottom)
		e.leave(e.x(o.across), e.y(o.nearest))
		e.labels.take(box{e.x(o.across) - 4, e.y(o.nearest) - 4, 8, 8})
	}
}

// distances draws a line from the outlet to each opening: whole and crossed
// when too close, broken when far enough, dotted when neither is known.
func (e upright) distances(openings []seen) {
	direct, badges := 0, make([][2]float64, len(openings))
	for _, o := range openings {
		if o.drawnToScale {
			direct++
		}
	}
	for i, o := range openings {
		if !o.drawnToScale {
			continue
		}
		x, y := e.x(o.across), e.y(o.nearest)
		class := "good"
		switch o.standing {
		case TooClose, Allowed:
			class = "bad"
			e.cross((e.x(0)+2*x)/3, (e.y(0)+2*y)/3, 5)
		case Exempt, Undecided, NotJudged:
			class = "thin dot"
		case FarEnough:
		}
		e.line(class, e.x(0), e.y(0), x, y)
		e.solid(x, y)
		bx, by := e.badge(fmt.Sprint(i+1), e.x((o.left+o.right)/2), e.y((o.top+o.bottom)/2), 0)
		badges[i] = [2]float64{bx, by}
	}
	for i, o := range openings {
		failing := o.standing == TooClose || o.standing == Allowed
		if !o.drawnToScale || direct > 6 && !failing {
			continue
		}
		style := "small"
		if failing {
			style = "badtext"
		}
		e.label(style, fmt.Sprintf("%d: %s", i+1, o.words), e.beside(o, badges[i])...)
	}
}

// beside are spots along the line from the outlet to an opening, just above and
// below it, then those round the opening and its badge.
func (e upright) beside(o seen, badge [2]float64) []spot {
	var spots []spot
	at := func(share float64) (float64, float64) {
		return e.x(share * o.across), e.y(share * o.nearest)
	}
	shares := []float64{0.55, 0.75, 0.4, 0.9}
	for _, off := range []float64{-6, 16} {
		for _, share := range shares {
			mx, my := at(share)
			spots = append(spots, spot{"middle", mx, my + off})
		}
	}
	for _, share := range shares {
		mx, my := at(share)
		spots = append(spots, spot{"start", mx + 9, my + 4}, spot{"end", mx - 9, my + 4})
	}
	bx, by := badge[0], badge[1]
	spots = append(spots, spot{"start", bx + 13, by + 4}, spot{"end", bx - 13, by + 4}, spot{"middle", bx, by - 13}, spot{"middle", bx, by + 22},
		spot{"start", bx + 13, by - 2}, spot{"end", bx - 13, by - 2})
	left, right, top, bottom := e.x(o.left), e.x(o.right), e.y(o.top), e.y(o.bottom)
	for _, off := range []float64{0, 12} {
		up, down := top-6-off, bottom+14+off
		spots = append(spots, spot{"middle", (left + right) / 2, up}, spot{"middle", (left + right) / 2, down},
			spot{"start", left, up}, spot{"end", right, up}, spot{"start", left, down}, spot{"end", right, down},
			spot{"start", right + 6 + off, (top+bottom)/2 + 4}, spot{"end", left - 6 - off, (top+bottom)/2 + 4})
	}
	mx, my := at(0.5)
	return append(spots, around(mx, my, 26)...)
}

// leave keeps words off a line from the outlet, but for its beginning, where all
// lines meet.
func (e upright) leave(x, y float64) {
	fromX, fromY := e.x(0), e.y(0)
	if length := math.Hypot(x-fromX, y-fromY); length > 14 {
		fromX, fromY = fromX+(x-fromX)*14/length, fromY+(y-fromY)*14/length
	}
	e.labels.takeLine(fromX, fromY, x, y)
}

// solid marks the nearest place of an opening.
func (e upright) solid(x, y float64) { e.circle("solid", x, y, 2.5) }

// pipe draws the pipe up to the outlet.
func (e upright) pipe() {
	x, y := e.x(0), e.y(0)
	e.line("ink", x-4, y, x-4, e.floor)
	e.line("ink", x+4, y, x+4, e.floor)
	e.circle("solid", x, y, 4)
	e.labels.take(box{x - 8, y - 9, 16, e.floor - y + 9})
}

// outletNames writes whose outlet it is and how high it ends.
func (e upright) outletNames(id string, grounded bool, words string) {
	x, y, bottom := e.x(0), e.y(0), e.floor
	dim := x + 13
	if grounded {
		e.line("thin", dim, y, dim, bottom)
		e.line("thin", dim-4, y, dim+4, y)
		e.line("thin", dim-4, bottom, dim+4, bottom)
		e.labels.take(box{dim - 4, y, 8, bottom - y})
	}
	e.label("strong", "outlet "+short(id, 24), spot{"middle", x, y - 10}, spot{"start", x + 10, y - 8}, spot{"end", x - 10, y - 8},
		spot{"middle", x, y - 26}, spot{"middle", x, y - 42}, spot{"end", x + 4, y - 10}, spot{"end", x + 4, y - 26}, spot{"start", dim + 6, y + 16}, spot{"end", x - 10, y + 16},
		spot{"start", dim + 6, y + 36}, spot{"end", x - 10, y + 36})
	if !grounded {
		return
	}
	low := bottom - 8
	e.label("small", words+" above ground", spot{"start", dim + 6, low}, spot{"end", x - 9, low}, spot{"start", dim + 6, low - 16}, spot{"end", x - 9, low - 16},
		spot{"start", dim + 6, (y + bottom) / 2}, spot{"end", x - 9, (y + bottom) / 2})
}
