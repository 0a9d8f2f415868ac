package drawing

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/quantity"
)

// result is one radon test, in the unit of the chart.
type result struct {
	id, phase, words, upperWords string
	value                        float64
	low, high                    float64 // ends of the uncertainty bar; equal when there is none
	below                        bool    // the value is the least that could have been found
	usual                        bool    // the uncertainty is what is usual for the device
}

// radonChart shows every test before and after the work on a log scale, with
// its uncertainty and the levels that the profiles name.
func radonChart(job view, levels []Level) (Figure, bool) {
	results, unit := readResults(job)
	if len(results) == 0 {
		return Figure{}, false
	}
	low, high := math.Inf(1), 0.0
	for _, r := range results {
		low, high = math.Min(low, r.low), math.Max(high, r.high)
	}
	for _, l := range levels {
		if value, ok := convert(quantity.Radon, l.Concentration, unit); ok && value > 0 {
			low, high = math.Min(low, value), math.Max(high, value)
		}
	}
	c := newCanvas(300)
	inside := box{48, 26, figureWidth - 48 - 12, 218}
	p := plot{canvas: c, box: inside,
		x: axis{low: -0.6, high: float64(len(results)) - 0.4, from: inside.x, to: inside.x + inside.w},
		y: axis{low: low / 1.5, high: high * 1.5, from: inside.y + inside.h, to: inside.y, log: true}}
	p.frame("", "radon, "+unit+", log scale", false)
	p.results(results)
	p.levels(levels, unit)
	p.values(results)
	return drawn(c, "radon", "Radon before and after", radonWords(job, results, levels), radonKey(results, levels)), true
}

func readResults(job view) (results []result, unit string) {
	for i := range job.list("/derived/tests") {
		at := place.Pointer("/derived/tests").Append(i)
		recorded := place.Pointer(job.text(at.Append("at")))
		if unit == "" {
			unit = job.text(at.Append("concentration", "unit"))
		}
		value, ok := job.in(at.Append("concentration"), quantity.Radon, unit)
		if !ok || value <= 0 || job.yes(recorded.Append("blank")) {
			continue
		}
		r := result{id: job.text(at.Append("id")), phase: job.text(at.Append("phase")), words: job.words(at.Append("concentration")),
			value: value, low: value, high: value, below: job.yes(recorded.Append("below_detection"))}
		if bound, ok := job.in(at.Append("upper_bound"), quantity.Radon, unit); ok && bound > value && !r.below {
			r.upperWords = job.words(at.Append("upper_bound"))
			r.high, r.low = bound, math.Max(2*value-bound, value/10)
			r.usual = len(job.list(at.Append("upper_bound", "assumed"))) > 0
		}
		results = append(results, r)
	}
	return results, unit
}

// levels draws a line for each level; names of levels close to each other are
// put apart.
func (p plot) levels(levels []Level, unit string) {
	for _, l := range levels {
		value, ok := convert(quantity.Radon, l.Concentration, unit)
		if !ok || value <= 0 {
			continue
		}
		y := p.y.px(value)
		p.line("bad dash", p.box.x, y, p.box.x+p.box.w, y)
		p.labels.takeLine(p.box.x, y, p.box.x+p.box.w, y)
	}
	for _, l := range levels {
		value, ok := convert(quantity.Radon, l.Concentration, unit)
		if !ok || value <= 0 {
			continue
		}
		y, right, left := p.y.px(value), p.box.x+p.box.w-4, p.box.x+6
		p.label("small badtext", short(l.Name, 28)+" "+l.Text,
			spot{"end", right, y - 6}, spot{"end", right, y + 16}, spot{"start", left, y - 6}, spot{"start", left, y + 16}, spot{"middle", (left + right) / 2, y - 6}, spot{"middle", (left + right) / 2, y + 16},
			spot{"end", right, y - 20}, spot{"end", right, y + 30})
	}
}

// results draws a stem, an uncertainty bar and a mark for each test: a ring
// before the work, a disc after it, an arrow below what can be detected.
func (p plot) results(results []result) {
	bottom := p.box.y + p.box.h
	room := p.box.w / float64(len(results)) // px for each
	for i, r := range results {
		x, y := p.x.px(float64(i)), p.y.px(r.value)
		p.line("cool", x, bottom, x, y)
		p.labels.takeLine(x, bottom, x, y)
		if r.high > r.low {
			top, foot := p.y.px(r.high), p.y.px(r.low)
			class := "ink"
			if r.usual {
				class = "ink dash"
			}
			p.line(class, x, top, x, foot)
			p.line("ink", x-6, top, x+6, top)
			p.line("ink", x-6, foot, x+6, foot)
			p.labels.take(box{x - 6, top, 12, foot - top})
		}
		switch {
		case r.below:
			p.path("solid", [][2]float64{{x - 6, y}, {x + 6, y}, {x, y + 10}}, true)
		case r.phase == "before":
			p.circle("hole", x, y, 5)
		default:
			p.circle("solid", x, y, 5)
		}
		p.labels.take(box{x - 6, y - 6, 12, 12})
		p.text("number", "middle", x, bottom+17, strconv.Itoa(i+1))
		if room > 60 {
			p.text("small", "middle", x, bottom+33, short(r.id, int(room/7)))
			p.text("small soft", "middle", x, bottom+48, r.phase)
		}
	}
}

// values writes the results beside their marks, as far as there is room.
func (p plot) values(results []result) {
	room := p.box.w / float64(len(results))
	for i, r := range results {
		if room <= 34 {
			break
		}
		x, y := p.x.px(float64(i)), p.y.px(r.value)
		words := r.words
		if r.below {
			words = "below " + words
		}
		if room <= 60 {
			words = tickText(r.value)
		}
		p.label("strong", words, spot{"start", x + 10, y + 4}, spot{"end", x - 10, y + 4}, spot{"start", x + 10, y - 10}, spot{"start", x + 10, y + 18}, spot{"end", x - 10, y - 10}, spot{"end", x - 10, y + 18})
	}
}

func radonWords(job view, results []result, levels []Level) string {
	said := []string{fmt.Sprintf("%d tests", len(results))}
	if len(results) == 1 {
		said[0] = "One test"
	}
	if before, after := job.words("/derived/radon/before"), job.words("/derived/radon/after"); before != "" && after != "" {
		words := "the worst room went from " + before + " to " + after
		if reduction := job.words("/derived/radon/reduction"); reduction != "" {
			words += ", " + reduction + " less"
		}
		said = append(said, words)
	}
	for _, l := range levels {
		said = append(said, l.Name+" "+l.Text)
	}
	return strings.Join(said, "; ") + "."
}

func radonKey(results []result, levels []Level) []string {
	var key []string
	for i, r := range results {
		words := r.id
		if r.phase != "" {
			words += ", " + r.phase
		}
		switch {
		case r.below:
			words += ": below detection, at most " + r.words
		case r.usual:
			words += ": " + r.words + ", uncertainty not recorded; by what is usual for the device not above " + r.upperWords
		case r.upperWords != "":
			words += ": " + r.words + ", with 95 % certainty not above " + r.upperWords
		default:
			words += ": " + r.words + ", uncertainty not recorded"
		}
		key = append(key, numbered(i+1, words))
	}
	for _, l := range levels {
		key = append(key, "Broken line: "+l.Name+" "+l.Text+", profile "+l.Profile+".")
	}
	return append(key, "Ring: before the work. Disc: after it. Upright bar: how far the true value may lie off, broken where that is not recorded.")
}
