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
	tallest         = 420.0 // px, from the ground to the top of an elevation
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
	e.zone(openings, terms, height, grounded, inMetres)
	e.outlines(openings)
	e.outlet(id, grounded, job.words(at.Append("height_above_grade")))
	e.distances(openings)
	e.scaleBar(elevationMargin, e.height-12, e.scale, inMetres)

	return drawn(e.canvas, "elevation-"+id, "Outlet of "+id+" and the openings round it",
		elevationWords(job, at, openings, grounded, terms), elevationKey(job, id, openings, levels, terms)), true
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
	e.labels.frame.w = wide
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
		name := math.Max(y, free)
		e.line("thin", e.wide, y, e.wide+8, name)
		for _, part := range strings.Split(l.name, ", ") {
			e.text("small", "start", e.wide+11, name+4, part)
			name += 14
		}
		free = name
	}
}

// zone draws where an opening would be too close: its nearest place inside the
// circle and not below the line under which openings do not count. Openings of
// neighbors count there too.
func (e upright) zone(openings []seen, terms Terms, height float64, grounded, inMetres bool) {
	if terms.Clearance <= 0 {
		return
	}
	radius := terms.Clearance * e.scale
	window := box{0, 0, e.wide, e.floor}
	if terms.Waiver > 0 && (!grounded || terms.Waiver < height) {
		line := e.y(-terms.Waiver)
		if slices.ContainsFunc(openings, func(o seen) bool { return o.adjacent }) {
			e.openWindow(box{0, line, e.wide, e.floor - line})
			e.circle("thin dash", e.x(0), e.y(0), radius)
			e.closeWindow()
		}
		window.h = line
		half := math.Sqrt(math.Max(0, terms.Clearance*terms.Clearance-terms.Waiver*terms.Waiver))
		e.line("bad dash", e.x(-half), line, e.x(half), line)
		e.labels.takeLine(e.x(-half), line, e.x(half), line)
		e.label("small", lengthText(terms.Waiver, inMetres)+" below", spot{"start", e.x(-half) + 4, line + 15}, spot{"end", e.x(half) - 4, line + 15},
			spot{"end", e.x(-half) - 4, line + 4}, spot{"start", e.x(half) + 4, line + 4})
	}
	e.openWindow(window)
	e.circle("zone", e.x(0), e.y(0), radius)
	e.closeWindow()
	e.labels.takeArc(e.x(0), e.y(0), radius)
	e.radius(openings, terms, inMetres)
}

// radius draws how far the zone reaches, on the side where fewer openings are.
func (e upright) radius(openings []seen, terms Terms, inMetres bool) {
	side := 1.0
	for _, o := range openings {
		if o.drawnToScale && o.across > 0 {
			side = -1
		}
	}
	up := math.Min(math.Pi/7, math.Asin(math.Min(1, 0.9*e.high/terms.Clearance)))
	x, y := e.x(side*math.Cos(up)*terms.Clearance), e.y(math.Sin(up)*terms.Clearance)
	e.line("thin", e.x(0), e.y(0), x, y)
	e.leave(x, y)
	text := terms.ClearanceText
	if text == "" {
		text = lengthText(terms.Clearance, inMetres)
	}
	mx, my := (e.x(0)+2*x)/3, (e.y(0)+2*y)/3
	e.label("small", text, spot{"middle", mx, my - 8}, spot{"middle", mx, my + 18}, spot{"middle", mx - side*20, my + 22})
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
		for _, m := range []float64{o.left, o.right} {
			e.labels.takeLine(e.x(m), e.y(o.top), e.x(m), e.y(o.bottom))
		}
		e.leave(e.x(o.across), e.y(o.nearest))
	}
}

// distances draws a line from the outlet to each opening: whole and crossed
// when too close, broken when far enough, dotted when neither is known.
func (e upright) distances(openings []seen) {
	direct := 0
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
		e.badge(fmt.Sprint(i+1), e.x((o.left+o.right)/2), e.y((o.top+o.bottom)/2))
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
		e.label(style, fmt.Sprintf("%d: %s", i+1, o.words), e.beside(e.x(o.across), e.y(o.nearest))...)
	}
}

// beside are spots along a line from the outlet, just above and below it.
func (e upright) beside(x, y float64) []spot {
	var spots []spot
	at := func(share float64) (float64, float64) {
		return e.x(0) + share*(x-e.x(0)), e.y(0) + share*(y-e.y(0))
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
		spots = append(spots, spot{"start", mx + 9, my + 4}, spot{"end", mx - 9, my + 4}, spot{"middle", mx, my - 20}, spot{"middle", mx, my + 30})
	}
	mx, my := at(0.5)
	spots = append(spots, around(mx, my, 26)...)
	return spots
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

// outlet draws the pipe and how high it ends.
func (e upright) outlet(id string, grounded bool, words string) {
	x, y := e.x(0), e.y(0)
	bottom := e.floor
	e.line("ink", x-4, y, x-4, bottom)
	e.line("ink", x+4, y, x+4, bottom)
	e.circle("solid", x, y, 4)
	e.labels.take(box{x - 8, y - 9, 16, bottom - y + 9})
	e.label("strong", "outlet "+short(id, 24), spot{"middle", x, y - 10}, spot{"start", x + 10, y - 8}, spot{"end", x - 10, y - 8},
		spot{"middle", x, y - 26}, spot{"middle", x, y - 42})
	if !grounded {
		return
	}
	dim := x + 13
	e.line("thin", dim, y, dim, bottom)
	e.line("thin", dim-4, y, dim+4, y)
	e.line("thin", dim-4, bottom, dim+4, bottom)
	e.labels.take(box{dim - 4, y, 8, bottom - y})
	low := bottom - 8
	e.label("small", words+" above ground", spot{"start", dim + 6, low}, spot{"end", x - 9, low}, spot{"start", dim + 6, low - 16}, spot{"end", x - 9, low - 16},
		spot{"start", dim + 6, (y + bottom) / 2}, spot{"end", x - 9, (y + bottom) / 2})
}
