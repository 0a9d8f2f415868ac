package drawing

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

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
	beside := 0.0 // px for the names of levels on the right
	if len(levels) > 0 {
		beside = 112
	}
	c := newCanvas(256)
	p := newChart(c, box{12, 26, figureWidth - 12 - 12 - beside, 190},
		span{-0.6, float64(len(results)) - 0.4}, span{low / 1.5, high * 1.5},
		"", "radon, "+unit+", log scale")
	p.plot.Y.Scale, p.plot.Y.Tick.Marker = plot.LogScale{}, decades{}
	lettered(&p.plot.X.Tick.Label, "number")
	places := plot.ConstantTicks{}
	for i := range results {
		places = append(places, plot.Tick{Value: float64(i), Label: strconv.Itoa(i + 1)})
	}
	p.plot.X.Tick.Marker = places
	marked := p.levelLines(levels, unit)
	p.results(results)
	p.draw()
	p.clearOf(results)
	p.levelNames(marked)
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

// levelLine is a level with its value in the unit of the chart.
type levelLine struct {
	Level
	value float64
}

// levelLines adds a line for each level.
func (ch *chart) levelLines(levels []Level, unit string) []levelLine {
	var marked []levelLine
	for _, l := range levels {
		value, ok := convert(quantity.Radon, l.Concentration, unit)
		if !ok || value <= 0 {
			continue
		}
		ch.curve("bad dash", [2]float64{ch.x.low, value}, [2]float64{ch.x.high, value})
		marked = append(marked, levelLine{l, value})
	}
	return marked
}

// levelNames names the lines on the right of the plot; names of levels close to
// each other move apart.
func (ch *chart) levelNames(marked []levelLine) {
	slices.SortStableFunc(marked, func(a, b levelLine) int { return cmp.Compare(b.value, a.value) })
	const tall = 14 // px, of a line of words
	right := ch.box.x + ch.box.w
	names := make([][]string, len(marked))
	below := 0 // lines of words still to come
	for i, l := range marked {
		ch.keepClear([2]float64{ch.x.low, l.value}, [2]float64{ch.x.high, l.value})
		names[i] = broken(l.Name, l.Text, 15)
		below += len(names[i])
	}
	free := 26.0
	for i, l := range marked {
		lines := names[i]
		y := math.Max(free, ch.down(l.value)-tall*float64(len(lines)-1)/2)
		y = math.Min(y, ch.box.y+ch.box.h-tall*float64(below-1))
		middle := y + tall*float64(len(lines)-1)/2
		ch.line("thin", right, ch.down(l.value), right+8, middle)
		ch.labels.takeLine(right, ch.down(l.value), right+8, middle)
		for _, words := range lines {
			ch.label("small badtext", words, spot{"start", right + 11, y + 4})
			y += tall
		}
		free, below = y+3, below-len(lines)
	}
}

// broken sets a name in lines of at most so many characters, with a quantity,
// which stays in one piece, after it.
func broken(name, quantity string, most int) []string {
	var lines []string
	for _, part := range append(strings.Fields(name), quantity) {
		if n := len(lines); n > 0 && utf8.RuneCountInString(lines[n-1]+" "+part) <= most {
			lines[n-1] += " " + part
		} else {
			lines = append(lines, short(part, most))
		}
	}
	return lines
}

// results adds a stem, an uncertainty bar and a mark for each test: a ring
// before the work, a disc after it, an arrow below what can be detected.
func (ch *chart) results(results []result) {
	for i, r := range results {
		at := plotter.XYs{{X: float64(i), Y: r.value}}
		ch.curve("cool", [2]float64{float64(i), ch.y.low}, [2]float64{float64(i), r.value})
		if r.high > r.low {
			bar := &plotter.YErrorBars{XYs: at, LineStyle: stroke("ink"), CapWidth: 12,
				YErrors: plotter.YErrors{{Low: r.value - r.low, High: r.high - r.value}}}
			if r.usual {
				bar.LineStyle = stroke("ink dash")
			}
			ch.plot.Add(bar)
		}
		mark := draw.GlyphStyle{Color: ink{class: "solid"}, Radius: 5, Shape: draw.CircleGlyph{}}
		switch {
		case r.below:
			mark.Shape, mark.Radius = downwards{}, 6
		case r.phase == "before":
			mark.Color = ink{class: "hole"}
		}
		ch.plot.Add(&plotter.Scatter{XYs: at, GlyphStyle: mark})
	}
}

// downwards is a mark that points down from the value.
type downwards struct{}

// DrawGlyph implements draw.GlyphDrawer.
func (downwards) DrawGlyph(c *draw.Canvas, style draw.GlyphStyle, at vg.Point) {
	var p vg.Path
	p.Move(vg.Point{X: at.X - style.Radius, Y: at.Y})
	p.Line(vg.Point{X: at.X + style.Radius, Y: at.Y})
	p.Line(vg.Point{X: at.X, Y: at.Y - 1.7*style.Radius})
	p.Close()
	c.Fill(p)
}

// clearOf keeps words off the results, and writes below each what it is as far
// as there is room.
func (ch *chart) clearOf(results []result) {
	bottom := ch.box.y + ch.box.h
	room := ch.box.w / float64(len(results)) // px for each
	for i, r := range results {
		x, y := ch.across(float64(i)), ch.down(r.value)
		ch.labels.takeLine(x, bottom, x, y)
		if r.high > r.low {
			ch.labels.take(box{x - 6, ch.down(r.high), 12, ch.down(r.low) - ch.down(r.high)})
		}
		ch.labels.take(box{x - 6, y - 6, 12, 12})
		if room > 60 {
			ch.text("small", "middle", x, bottom+33, short(r.id, int(room/7)))
			ch.text("small soft", "middle", x, bottom+48, r.phase)
		}
	}
}

// values writes the results beside their marks, as far as there is room.
func (ch *chart) values(results []result) {
	room := ch.box.w / float64(len(results))
	for i, r := range results {
		if room <= 34 {
			break
		}
		x, y := ch.across(float64(i)), ch.down(r.value)
		words := r.words
		if r.below {
			words = "below " + words
		}
		if room <= 60 {
			words = tickText(r.value)
		}
		var spots []spot
		for _, off := range []float64{4, -10, 18, -4, 12, -24, 32, -34, 42} {
			spots = append(spots, spot{"start", x + 10, y + off}, spot{"end", x - 10, y + off})
		}
		ch.label("strong", words, spots...)
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
