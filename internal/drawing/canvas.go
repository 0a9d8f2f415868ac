package drawing

import (
	"fmt"
	"html"
	"strconv"
	"strings"
	"unicode"
)

// Every figure is as wide as this, px. It fits a telephone; on a sheet two stand
// side by side, and their small letters are still 7 pt.
const figureWidth = 420.0

// canvas writes SVG. Colours come from classes, so that they follow the page in
// light, dark and print; shapes, line kinds and words say the same without them.
type canvas struct {
	b      strings.Builder
	height float64
	labels labels
}

func newCanvas(height float64) *canvas {
	c := &canvas{height: height}
	c.labels.frame = box{0, 0, figureWidth, height}
	c.rect("paper", 0, 0, figureWidth, height)
	return c
}

func (c *canvas) add(format string, args ...any) {
	fmt.Fprintf(&c.b, format, args...)
	c.b.WriteByte('\n')
}

// svg closes the drawing with the words that a screen reader says for it.
func (c *canvas) svg(words string) string {
	return `<svg xmlns="http://www.w3.org/2000/svg" class="fig" viewBox="0 0 ` + num(figureWidth) + ` ` + num(c.height) +
		`" role="img" aria-label="` + escape(words) + `">` + style + "\n" + c.b.String() + "</svg>"
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
		if i == 0 {
			d.WriteByte('M')
		} else {
			d.WriteByte('L')
		}
		d.WriteString(num(p[0]) + " " + num(p[1]))
	}
	if closed {
		d.WriteByte('Z')
	}
	c.add(`<path class="%s" d="%s"/>`, class, d.String())
}

// cross is the sign for what must not be.
func (c *canvas) cross(x, y, r float64) {
	c.line("bad", x-r, y-r, x+r, y+r)
	c.line("bad", x-r, y+r, x+r, y-r)
}

// openWindow clips what follows to a part of the canvas until closeWindow.
func (c *canvas) openWindow(b box) {
	c.add(`<svg x="%s" y="%s" width="%s" height="%s" viewBox="%s %s %s %s">`,
		num(b.x), num(b.y), num(b.w), num(b.h), num(b.x), num(b.y), num(b.w), num(b.h))
}

func (c *canvas) closeWindow() { c.add("</svg>") }

// text writes words; anchors are start, middle and end.
func (c *canvas) text(class, anchor string, x, y float64, words string) {
	c.add(`<text class="%s" text-anchor="%s" x="%s" y="%s">%s</text>`, class, anchor, num(x), num(y), escape(words))
}

func escape(s string) string {
	return html.EscapeString(strings.Map(func(r rune) rune {
		if unicode.IsControl(r) || r == unicode.ReplacementChar {
			return ' '
		}
		return r
	}, s))
}

// short cuts words to a number of characters.
func short(words string, most int) string {
	runes := []rune(words)
	if len(runes) <= most {
		return words
	}
	return string(runes[:most-1]) + "…"
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
