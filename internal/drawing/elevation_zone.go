package drawing

import (
	"math"
	"slices"
)

// zone draws where an opening would be too close: its nearest place inside the
// circle and not below the line under which openings do not count. Openings of
// neighbors count there too.
func (e upright) zone(openings []seen, terms Terms, height float64, grounded bool) {
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
	}
	e.openWindow(window)
	e.circle("zone", e.x(0), e.y(0), radius)
	e.closeWindow()
	e.labels.takeArc(e.x(0), e.y(0), radius, window.h)
	x, y, _ := e.radius(openings, terms)
	e.line("thin", e.x(0), e.y(0), x, y)
	e.leave(x, y)
}

// radius is where the line ends that shows how far the zone reaches, px: on the
// side where fewer openings are, 1 for right and -1 for left.
func (e upright) radius(openings []seen, terms Terms) (x, y, side float64) {
	side = 1
	for _, o := range openings {
		if o.drawnToScale && o.across > 0 {
			side = -1
		}
	}
	up := math.Min(math.Pi/7, math.Asin(math.Min(1, 0.9*e.high/terms.Clearance)))
	return e.x(side * math.Cos(up) * terms.Clearance), e.y(math.Sin(up) * terms.Clearance), side
}

// radiusName writes how far the zone reaches.
func (e upright) radiusName(openings []seen, terms Terms, inMetres bool) {
	if terms.Clearance <= 0 {
		return
	}
	text := terms.ClearanceText
	if text == "" {
		text = lengthText(terms.Clearance, inMetres)
	}
	x, y, side := e.radius(openings, terms)
	x, y = (e.x(0)+2*x)/3, (e.y(0)+2*y)/3
	e.label("small", text, spot{"middle", x, y - 8}, spot{"middle", x, y + 18}, spot{"middle", x - side*20, y + 22})
}
