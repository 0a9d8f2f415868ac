package drawing

import (
	"fmt"
	"html"
	"strconv"
	"strings"
)

// canvas writes SVG. Colours come from classes with a fallback, so that a page
// can set them for light, dark and print; line kinds and words carry the same
// meaning without colour.
type canvas struct {
	b             strings.Builder
	width, height float64
}

// style gives every class a colour with enough contrast on white and, where the
// page asks for dark, on near black.
const style = `<style>
.ink{stroke:#1f2933;fill:none;stroke-width:1.5}.thin{stroke:#5b6770;fill:none;stroke-width:1}
.solid{fill:#1f2933;stroke:none}.ground{fill:#e4e0d8;stroke:none}.paper{fill:#ffffff;stroke:none}
.zone{fill:#b4412f;fill-opacity:.08;stroke:#9a3324;stroke-width:1.5;stroke-dasharray:7 4}
.bad{stroke:#9a3324;fill:none;stroke-width:3}.good{stroke:#2b5d8a;fill:none;stroke-width:1.5}
.curve{stroke:#2b5d8a;fill:none;stroke-width:2.5}.curve2{stroke:#6a4a1f;fill:none;stroke-width:2.5;stroke-dasharray:9 4}
.reach{fill:#2b5d8a;fill-opacity:.12;stroke:#2b5d8a;stroke-width:1;stroke-dasharray:2 3}
.dash{stroke-dasharray:6 4}.dot{stroke-dasharray:2 3}.block{stroke:#1f2933;stroke-width:5;stroke-dasharray:8 4;fill:none}
text{font:13px system-ui,sans-serif;fill:#1f2933;stroke:none}.small{font-size:11.5px}.strong{font-weight:700}.badtext{fill:#8c2d1f;font-weight:700}
@media (prefers-color-scheme:dark){.ink{stroke:#e3e8ec}.thin{stroke:#a3b0ba}.solid{fill:#e3e8ec}.ground{fill:#3a3a34}.paper{fill:#161b20}
.zone{fill:#ff9c8a;stroke:#ff9c8a;fill-opacity:.1}.bad{stroke:#ff9c8a}.good,.curve{stroke:#8cc4f5}.curve2{stroke:#e0bd84}.reach{fill:#8cc4f5;stroke:#8cc4f5;fill-opacity:.15}
.block{stroke:#e3e8ec}text{fill:#e3e8ec}.badtext{fill:#ff9c8a}}
@media print{.ink{stroke:#000}.solid{fill:#000}.paper{fill:#fff}.ground{fill:#e8e8e8}.thin{stroke:#444}.zone{fill:#999;fill-opacity:.12;stroke:#000}.bad{stroke:#000}.good,.curve{stroke:#222}.curve2{stroke:#444}.block{stroke:#000}text,.badtext{fill:#000}}
</style>`

func newCanvas(width, height float64) *canvas {
	c := &canvas{width: width, height: height}
	c.add(`<rect class="paper" x="0" y="0" width="%s" height="%s"/>`, num(width), num(height))
	return c
}

func (c *canvas) add(format string, args ...any) {
	fmt.Fprintf(&c.b, format, args...)
	c.b.WriteByte('\n')
}

// svg closes the drawing. Title and alternative are what a screen reader says.
func (c *canvas) svg(id, title, alt string) string {
	return fmt.Sprintf(`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 %s %s" role="img" aria-labelledby="%s-t %s-d"><title id="%s-t">%s</title><desc id="%s-d">%s</desc>%s
%s</svg>`, num(c.width), num(c.height), id, id, id, escape(title), id, escape(alt), style, c.b.String())
}

func (c *canvas) line(class string, x1, y1, x2, y2 float64) {
	c.add(`<line class="%s" x1="%s" y1="%s" x2="%s" y2="%s"/>`, class, num(x1), num(y1), num(x2), num(y2))
}

func (c *canvas) rect(class string, x, y, w, h float64) {
	c.add(`<rect class="%s" x="%s" y="%s" width="%s" height="%s"/>`, class, num(x), num(y), num(w), num(h))
}

func (c *canvas) circle(class string, x, y, r float64) {
	c.add(`<circle class="%s" cx="%s" cy="%s" r="%s"/>`, class, num(x), num(y), num(r))
}

func (c *canvas) path(class string, points [][2]float64, closed bool) {
	var d strings.Builder
	for i, p := range points {
		d.WriteString(map[bool]string{true: "M", false: "L"}[i == 0] + num(p[0]) + " " + num(p[1]))
	}
	if closed {
		d.WriteString("Z")
	}
	c.add(`<path class="%s" d="%s"/>`, class, d.String())
}

// text anchors are start, middle and end.
func (c *canvas) text(class, anchor string, x, y float64, words string) {
	c.add(`<text class="%s" text-anchor="%s" x="%s" y="%s">%s</text>`, class, anchor, num(x), num(y), escape(words))
}

func escape(s string) string {
	return html.EscapeString(strings.Map(func(r rune) rune {
		if r < ' ' {
			return ' '
		}
		return r
	}, s))
}

// num writes a coordinate with at most two decimals.
func num(f float64) string {
	s := strconv.FormatFloat(f, 'f', 2, 64)
	s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	if s == "-0" {
		return "0"
	}
	return s
}
