package drawing

import (
	"gonum.org/v1/plot/font"
	"gonum.org/v1/plot/text"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"
	"gonum.org/v1/plot/vg/recorder"
)

// ink is a class of the style sheet where the plotting library asks for a
// colour. So a plot follows the page in light, dark and print like everything
// else that is drawn.
type ink struct{ class, anchor string }

// RGBA implements color.Color: black, for whoever does not know classes.
func (ink) RGBA() (r, g, b, a uint32) { return 0, 0, 0, 0xffff }

// replay writes what the plotting library has drawn as SVG. The library counts
// upwards, SVG downwards.
func (c *canvas) replay(actions []recorder.Action) {
	var now ink
	for _, action := range actions {
		switch a := action.(type) {
		case *recorder.SetColor:
			now, _ = a.Color.(ink)
		case *recorder.Stroke:
			c.trace(now.class, a.Path)
		case *recorder.Fill:
			c.trace(now.class, a.Path)
		case *recorder.FillString:
			c.text(now.class, now.anchor, float64(a.Point.X), c.height-float64(a.Point.Y), a.String)
		}
	}
}

// trace writes a path as the simplest element that has its shape.
func (c *canvas) trace(class string, path vg.Path) {
	var points [][2]float64
	closed := false
	for _, part := range path {
		x, y := float64(part.Pos.X), c.height-float64(part.Pos.Y)
		switch part.Type {
		case vg.ArcComp: // of the marks of a plot only whole circles have arcs
			c.circle(class, x, y, float64(part.Radius))
			return
		case vg.CloseComp:
			closed = true
		default:
			points = append(points, [2]float64{x, y})
		}
	}
	if len(points) == 2 && !closed {
		c.line(class, points[0][0], points[0][1], points[1][0], points[1][1])
		return
	}
	c.path(class, points, closed)
}

// Heights of a small letter and of the line that it stands in, px.
const (
	capital = 8.0
	lineUp  = 12.0
)

// lettering sets the texts of a plot as texts, in the letters of the page.
type lettering struct{}

// lettered gives a text of a plot a class.
func lettered(style *text.Style, class string) {
	style.Color, style.Handler = ink{class: class}, lettering{}
}

// Cache implements text.Handler.
func (lettering) Cache() *font.Cache { return font.DefaultCache }

// Extents implements text.Handler.
func (lettering) Extents(font.Font) font.Extents { return font.Extents{Ascent: lineUp, Height: lineUp} }

// Lines implements text.Handler.
func (lettering) Lines(words string) []string { return []string{words} }

// Box implements text.Handler.
func (lettering) Box(words string, _ font.Font) (width, height, depth vg.Length) {
	return vg.Length(spot{}.extent("small", words).w), lineUp, 0
}

// Draw implements text.Handler.
func (lettering) Draw(c vg.Canvas, words string, style text.Style, at vg.Point) {
	how, _ := style.Color.(ink)
	switch style.XAlign {
	case draw.XRight:
		how.anchor = "end"
	case draw.XCenter:
		how.anchor = "middle"
	default:
		how.anchor = "start"
	}
	if style.YAlign == draw.YCenter {
		at.Y -= capital / 2
	} else {
		at.Y += vg.Length(style.YAlign) * lineUp
	}
	c.SetColor(how)
	c.FillString(font.Face{Font: style.Font}, at, words)
}
