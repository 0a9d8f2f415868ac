package drawing

import (
	"math"
	"strconv"
)

// axis turns values of one unit into px.
type axis struct {
	low, high float64 // values at the ends
	from, to  float64 // px at the ends
	log       bool    // equal steps stand for equal ratios
}

func (a axis) px(value float64) float64 {
	low, high := a.low, a.high
	if a.log {
		value, low, high = math.Log(value), math.Log(low), math.Log(high)
	}
	return a.from + (value-low)/(high-low)*(a.to-a.from)
}

// ticks are round values: on a log axis 1, 2 and 5 of each decade, else
// about as many as asked for.
func (a axis) ticks(about int) []float64 {
	if a.log {
		return a.decades()
	}
	step := math.Pow(10, math.Floor(math.Log10((a.high-a.low)/float64(about))))
	for _, m := range []float64{1, 2, 5, 10} {
		if (a.high-a.low)/(m*step) <= float64(about) {
			step *= m
			break
		}
	}
	var out []float64
	for i := math.Ceil(a.low/step - 1e-9); i*step <= a.high*(1+1e-9); i++ {
		out = append(out, i*step)
	}
	return out
}

func (a axis) decades() []float64 {
	steps := []float64{1, 2, 5}
	if math.Log10(a.high/a.low) > 3 {
		steps = steps[:1]
	}
	var out []float64
	for decade := math.Floor(math.Log10(a.low)); decade <= math.Ceil(math.Log10(a.high)); decade++ {
		for _, m := range steps {
			if value := m * math.Pow(10, decade); value >= a.low && value <= a.high {
				out = append(out, value)
			}
		}
	}
	return out
}

// tickText writes a round value without the noise of the arithmetic.
func tickText(value float64) string {
	if math.Abs(value) < 1e-12 {
		return "0"
	}
	return strconv.FormatFloat(value, 'g', 6, 64)
}

// plot is a canvas with two axes.
type plot struct {
	*canvas
	x, y axis
	box  box // the part inside the axes
}

// frame draws the axes with their ticks. A plot without ticks along the bottom
// has places there instead of values.
func (p plot) frame(below, beside string, ticks bool) {
	for _, v := range p.y.ticks(6) {
		y := p.y.px(v)
		p.line("faint", p.box.x, y, p.box.x+p.box.w, y)
		p.text("small", "end", p.box.x-6, y+4, tickText(v))
	}
	if ticks {
		for _, v := range p.x.ticks(7) {
			x := p.x.px(v)
			p.line("faint", x, p.box.y, x, p.box.y+p.box.h)
			p.text("small", "middle", x, p.box.y+p.box.h+16, tickText(v))
		}
	}
	p.line("ink", p.box.x, p.box.y, p.box.x, p.box.y+p.box.h)
	p.line("ink", p.box.x, p.box.y+p.box.h, p.box.x+p.box.w, p.box.y+p.box.h)
	p.text("small strong", "start", 8, 15, beside)
	p.text("small strong", "end", p.box.x+p.box.w, p.box.y+p.box.h+32, below)
}

// curve draws a line through points given in values and keeps words off it.
func (p plot) curve(class string, points [][2]float64) {
	scaled := make([][2]float64, len(points))
	for i, v := range points {
		scaled[i] = [2]float64{p.x.px(v[0]), p.y.px(v[1])}
		if i > 0 {
			p.labels.takeLine(scaled[i-1][0], scaled[i-1][1], scaled[i][0], scaled[i][1])
		}
	}
	p.path(class, scaled, false)
}
