package drawing

import (
	"math"
	"strings"
)

// box is an upright rectangle of the canvas, px.
type box struct{ x, y, w, h float64 }

// overlap is the area that two boxes share, px2.
func (b box) overlap(o box) float64 {
	w := math.Min(b.x+b.w, o.x+o.w) - math.Max(b.x, o.x)
	h := math.Min(b.y+b.h, o.y+o.h) - math.Max(b.y, o.y)
	if w <= 0 || h <= 0 {
		return 0
	}
	return w * h
}

// labels knows which parts of the canvas words would hide or be hidden in.
type labels struct {
	frame box
	taken []box
}

// take keeps later words off a part of the canvas.
func (l *labels) take(b box) { l.taken = append(l.taken, b) }

// takeLine keeps later words off a line.
func (l *labels) takeLine(x1, y1, x2, y2 float64) {
	steps := math.Ceil(math.Hypot(x2-x1, y2-y1) / 6)
	for i := 0.0; i <= steps; i++ {
		share := i / math.Max(steps, 1)
		l.take(box{x1 + (x2-x1)*share - 2, y1 + (y2-y1)*share - 2, 4, 4})
	}
}

// takeArc keeps later words off a circle.
func (l *labels) takeArc(x, y, r float64) {
	steps := math.Ceil(2 * math.Pi * r / 6)
	for i := 0.0; i < steps; i++ {
		turn := 2 * math.Pi * i / steps
		l.take(box{x + r*math.Cos(turn) - 2, y + r*math.Sin(turn) - 2, 4, 4})
	}
}

// cost is how badly words would stand there.
func (l *labels) cost(b box) float64 {
	cost := 20 * (b.w*b.h - b.overlap(l.frame))
	for _, t := range l.taken {
		cost += b.overlap(t)
	}
	return cost
}

// spot is a place for words: anchor start, middle or end, at the baseline.
type spot struct {
	anchor string
	x, y   float64
}

// Sizes of letters, px. The style sets the same ones.
const (
	textSize  = 13.0
	smallSize = 11.5
)

// extent is the part of the canvas that words take, by the width of common
// sans-serif letters.
func (s spot) extent(class, words string) box {
	size, letter := textSize, 0.56
	if strings.Contains(class, "small") {
		size = smallSize
	}
	if strings.Contains(class, "strong") || strings.Contains(class, "badtext") {
		letter = 0.61
	}
	width := 0.0
	for _, r := range words {
		if r > 0x2e80 {
			width += size
		} else {
			width += size * letter
		}
	}
	b := box{s.x, s.y - size*0.8, width, size * 1.05}
	switch s.anchor {
	case "middle":
		b.x -= width / 2
	case "end":
		b.x -= width
	}
	return b
}

// farther is what a place further down the list costs, px2: words that hide a
// little of a line are better than words far from what they are about.
const farther = 5

// label writes words at the first of the spots that is free, or else at the
// one where they hide least.
func (c *canvas) label(class, words string, spots ...spot) {
	best, least := spots[0], math.Inf(1)
	for i, s := range spots {
		cost := c.labels.cost(s.extent(class, words))
		if cost += float64(farther * i); cost < least {
			best, least = s, cost
		}
	}
	c.labels.take(best.extent(class, words))
	c.text("over "+class, best.anchor, best.x, best.y, words)
}

// around are spots next to a mark of a size, the nearest first.
func around(x, y, r float64) []spot {
	var spots []spot
	for _, far := range []float64{0, 10, 22} {
		d := r + 4 + far
		spots = append(spots,
			spot{"middle", x, y - d}, spot{"middle", x, y + d + 9},
			spot{"start", x + d, y + 4}, spot{"end", x - d, y + 4},
			spot{"start", x + d*0.7, y - d*0.7}, spot{"end", x - d*0.7, y - d*0.7},
			spot{"start", x + d*0.7, y + d*0.7 + 8}, spot{"end", x - d*0.7, y + d*0.7 + 8},
		)
	}
	return spots
}

// badge is a number that a line of the key explains. It stands near the place
// it is about, with a leader when it had to move.
func (c *canvas) badge(number string, x, y float64) {
	const r = 8.5
	best, least := [2]float64{x, y}, math.Inf(1)
	for _, far := range []float64{0, 20, 30, 44} {
		for turn := range 8 {
			bx, by := x+far*math.Cos(float64(turn)*math.Pi/4), y-far*math.Sin(float64(turn)*math.Pi/4)
			cost := c.labels.cost(box{bx - r, by - r, 2 * r, 2 * r}) + far/100
			if cost < least {
				best, least = [2]float64{bx, by}, cost
			}
			if far == 0 {
				break
			}
		}
	}
	bx, by := best[0], best[1]
	if away := math.Hypot(bx-x, by-y); away > r+2 {
		c.line("thin", x, y, bx-(bx-x)/away*r, by-(by-y)/away*r)
	}
	c.labels.take(box{bx - r, by - r, 2 * r, 2 * r})
	c.circle("badge", bx, by, r)
	c.text("number", "middle", bx, by+4, number)
}
