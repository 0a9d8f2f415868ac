package drawing

import (
	"math"
	"strings"
	"unicode"
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
	taken []box // lines and marks
	words []box
}

// take keeps later words off a mark.
func (l *labels) take(b box) { l.taken = append(l.taken, b) }

// write keeps later words off words.
func (l *labels) write(b box) { l.words = append(l.words, b) }

// takeLine keeps later words off a line.
func (l *labels) takeLine(x1, y1, x2, y2 float64) {
	steps := math.Ceil(math.Hypot(x2-x1, y2-y1) / 6)
	for i := 0.0; i <= steps; i++ {
		share := i / math.Max(steps, 1)
		l.take(box{x1 + (x2-x1)*share - 2, y1 + (y2-y1)*share - 2, 4, 4})
	}
}

// takeArc keeps later words off a circle, down to where it is cut off.
func (l *labels) takeArc(x, y, r, cut float64) {
	steps := math.Ceil(2 * math.Pi * r / 6)
	for i := 0.0; i < steps; i++ {
		turn := 2 * math.Pi * i / steps
		if down := y + r*math.Sin(turn); down <= cut {
			l.take(box{x + r*math.Cos(turn) - 2, down - 2, 4, 4})
		}
	}
}

// cost is how badly words would stand there. A line can be followed behind
// words; words on words cannot be read.
func (l *labels) cost(b box) float64 {
	cost := 20 * (b.w*b.h - b.overlap(l.frame))
	for _, t := range l.taken {
		cost += b.overlap(t)
	}
	for _, w := range l.words {
		cost += 20 * b.overlap(w)
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

// letter is about how wide a letter is, as a share of its size: in Arial and
// what is made to its measure, rounded up (common practice).
func letter(r rune) float64 {
	switch {
	case r > 0x2e80: // as wide as tall
		return 1
	case strings.ContainsRune("mwMW%@", r):
		return 0.95
	case strings.ContainsRune(" .,:;!'()-/|fijlrtI", r):
		return 0.34
	case unicode.IsUpper(r):
		return 0.74
	}
	return 0.57
}

// extent is the part of the canvas that words take.
func (s spot) extent(class, words string) box {
	size, bold := textSize, 1.0
	if strings.Contains(class, "small") {
		size = smallSize
	}
	if strings.Contains(class, "strong") || strings.Contains(class, "badtext") {
		bold = 1.09
	}
	width := 0.0
	for _, r := range words {
		width += size * bold * letter(r)
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
const farther = 1

// label writes words at the first of the spots that is free, or else at the
// one where they hide least.
func (c *canvas) label(class, words string, spots ...spot) {
	best, least := spots[0], math.Inf(1)
	for i, s := range spots {
		cost := float64(farther * i)
		if cost >= least { // and so do those that follow
			break
		}
		if cost += c.labels.cost(s.extent(class, words)); cost < least {
			best, least = s, cost
		}
	}
	c.labels.write(best.extent(class, words))
	c.text("over "+class, best.anchor, best.x, best.y, words)
}

// around are spots next to a mark of a size, the nearest first.
func around(x, y, r float64) []spot {
	var spots []spot
	for _, far := range []float64{0, 10, 22} {
		d := r + 4 + far
		up, down, corner := y-d, y+d+9, d*0.7
		spots = append(spots,
			spot{"middle", x, up}, spot{"middle", x, down}, spot{"start", x + d, y + 4}, spot{"end", x - d, y + 4},
			spot{"start", x + corner, y - corner - 2}, spot{"end", x - corner, y - corner - 2},
			spot{"start", x + corner, y + corner + 10}, spot{"end", x - corner, y + corner + 10},
			spot{"start", x - r, up}, spot{"end", x + r, up}, spot{"start", x - r, down}, spot{"end", x + r, down},
		)
	}
	return spots
}

// badge is a number that a line of the key explains. It stands on the place
// that it is about, or else beside it with a leader; beside it in any case where
// there is a mark, which reaches so far from its middle to each side. Where the
// badge came to stand is returned.
func (c *canvas) badge(number string, x, y, mark float64) (bx, by float64) {
	const r = 8.5
	least := math.Inf(1)
	var edge [2]float64 // where the leader begins
	for turn := range 8 {
		dx, dy := math.Cos(float64(turn)*math.Pi/4), -math.Sin(float64(turn)*math.Pi/4)
		reach := mark / math.Max(math.Abs(dx), math.Abs(dy))
		for _, away := range []float64{-r, 3, 11, 21, 35} {
			far := reach + r + away
			if mark > 0 && away < 0 || 2*far >= least {
				continue
			}
			tryX, tryY := x+dx*far, y+dy*far
			if cost := c.labels.cost(box{tryX - r, tryY - r, 2 * r, 2 * r}) + 2*far; cost < least {
				bx, by, least = tryX, tryY, cost
				edge = [2]float64{x + dx*reach, y + dy*reach}
			}
		}
	}
	if gap := math.Hypot(bx-edge[0], by-edge[1]); gap > r {
		c.line("thin", edge[0], edge[1], bx-(bx-edge[0])/gap*r, by-(by-edge[1])/gap*r)
	}
	c.labels.write(box{bx - r, by - r, 2 * r, 2 * r})
	c.circle("badge", bx, by, r)
	c.text("number", "middle", bx, by+4, number)
	return bx, by
}
