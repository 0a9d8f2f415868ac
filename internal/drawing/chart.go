package drawing

import (
	"bytes"
	"fmt"
	"image/color"
	"math"
	"regexp"
	"strconv"
	"strings"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"
	"gonum.org/v1/plot/vg/vgsvg"

	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/quantity"
)

// Chart colours: dark enough on the white ground that charts keep in every
// mode; line kinds tell them apart without colour.
var (
	blue  = color.RGBA{R: 0x2b, G: 0x5d, B: 0x8a, A: 0xff}
	brown = color.RGBA{R: 0x6a, G: 0x4a, B: 0x1f, A: 0xff}
	ink   = color.RGBA{R: 0x1f, G: 0x29, B: 0x33, A: 0xff}
	red   = color.RGBA{R: 0x9a, G: 0x33, B: 0x24, A: 0xff}
)

const (
	chartWidth  = 7.2 * vg.Inch
	chartHeight = 3.6 * vg.Inch
)

// fanChart shows the fan's curve and the pipe's, where they cross, and what the
// gauge says.
func fanChart(job view, system int) (Figure, bool) {
	id := job.text(place.Root.Append("systems", system, "id"))
	n := job.indexOf("/derived/systems", id)
	if n < 0 {
		return Figure{}, false
	}
	at := place.Pointer("/derived/systems").Append(n)
	flowUnit, pressureUnit := job.units(system)
	fan := job.curve(at.Append("fan_curve"), flowUnit, pressureUnit)
	if len(fan) < 2 {
		return Figure{}, false
	}
	p := newPlot("Flow, "+flowUnit, "Static pressure, "+pressureUnit)
	said := []string{fmt.Sprintf("The fan gives %s at no flow", job.words(at.Append("shutoff_pressure")))}
	addLine(p, "fan", fan, blue, nil)
	if pipe := job.curve(at.Append("system_curve"), flowUnit, pressureUnit); len(pipe) > 1 {
		addLine(p, "pipe and soil", clip(pipe, fan), brown, []vg.Length{vg.Points(6), vg.Points(3)})
	}
	if q, ok := job.in(at.Append("operating_flow"), flowUnit); ok {
		if pressure, ok := job.in(at.Append("operating_pressure"), pressureUnit); ok {
			addMark(p, "operating point", plotter.XY{X: q, Y: pressure}, draw.CircleGlyph{})
			said = append(said, fmt.Sprintf("fan and pipe meet at %s and %s", job.words(at.Append("operating_flow")), job.words(at.Append("operating_pressure"))))
		}
	}
	if reading, ok := job.in(at.Append("gauge_reading"), pressureUnit); ok {
		said = append(said, "the gauge reads "+job.words(at.Append("gauge_reading"))+" ("+strings.ReplaceAll(job.text(at.Append("gauge_plausibility")), "-", " ")+")")
		last := fan[len(fan)-1].X
		addLine(p, "gauge reading", plotter.XYs{{X: 0, Y: reading}, {X: last, Y: reading}}, ink, []vg.Length{vg.Points(2), vg.Points(2)})
		if q, ok := job.in(at.Append("gauge_flow"), flowUnit); ok {
			addMark(p, "flow by gauge", plotter.XY{X: q, Y: reading}, draw.BoxGlyph{})
			said = append(said, "which stands for "+job.words(at.Append("gauge_flow")))
		}
	}
	title, alt := "Fan and pipe of "+id, strings.Join(said, "; ")+"."
	return Figure{Name: "fan-" + id, Title: title, Alt: alt, SVG: plotted(p, "fan-"+id, title, alt)}, true
}

// radonChart shows every test before and after on a log scale with its
// uncertainty, and the levels of the profiles.
func radonChart(job view, levels []Level) (Figure, bool) {
	unit := ""
	type result struct {
		label      string
		value, off float64
	}
	var results []result
	var said []string
	for i := range job.list("/derived/tests") {
		at := place.Pointer("/derived/tests").Append(i)
		if unit == "" {
			unit = job.text(at.Append("concentration", "unit"))
		}
		value, ok := job.in(at.Append("concentration"), unit)
		if !ok || value <= 0 {
			continue
		}
		id := job.text(at.Append("id"))
		off := 0.0
		if bound, ok := job.in(at.Append("upper_bound"), unit); ok {
			off = bound - value
		}
		results = append(results, result{id + ", " + job.text(at.Append("phase")), value, off})
		said = append(said, id+" "+job.text(at.Append("phase"))+": "+job.words(at.Append("concentration")))
	}
	if len(results) == 0 {
		return Figure{}, false
	}
	p := newPlot("", "Radon, "+unit+", log scale")
	p.Y.Scale, p.Y.Tick.Marker = plot.LogScale{}, plainLog{}
	names := make([]string, len(results))
	low, high := math.Inf(1), 0.0
	for i, r := range results {
		names[i] = r.label
		low, high = math.Min(low, r.value), math.Max(high, r.value+r.off)
	}
	for _, l := range levels {
		if value, ok := convert(l.Concentration, unit); ok {
			low, high = math.Min(low, value), math.Max(high, value)
			addLine(p, l.Name+" "+l.Text, plotter.XYs{{X: -0.6, Y: value}, {X: float64(len(results)) - 0.4, Y: value}}, red, []vg.Length{vg.Points(5), vg.Points(3)})
			said = append(said, l.Name+" "+l.Text)
		}
	}
	p.X.Min, p.X.Max, p.Y.Min, p.Y.Max = -0.6, float64(len(results))-0.4, low/1.6, high*1.6
	for i, r := range results {
		x := float64(i)
		addLine(p, "", plotter.XYs{{X: x, Y: p.Y.Min}, {X: x, Y: r.value}}, blue, nil)
		if r.off > 0 {
			addLine(p, "", plotter.XYs{{X: x, Y: math.Max(r.value-r.off, p.Y.Min)}, {X: x, Y: r.value + r.off}}, ink, nil)
		}
		addMark(p, "", plotter.XY{X: x, Y: r.value}, draw.CircleGlyph{})
	}
	p.NominalX(names...)
	p.X.Min, p.X.Max = -0.6, float64(len(results))-0.4
	title, alt := "Radon before and after", strings.Join(said, "; ")+"."
	return Figure{Name: "radon", Title: title, Alt: alt, SVG: plotted(p, "radon", title, alt)}, true
}

func newPlot(x, y string) *plot.Plot {
	p := plot.New()
	p.X.Label.Text, p.Y.Label.Text = x, y
	p.Legend.Top, p.Legend.Padding = true, vg.Points(3)
	grid := plotter.NewGrid()
	grid.Horizontal.Color, grid.Vertical.Color = color.Gray{Y: 0xdd}, color.Gray{Y: 0xee}
	p.Add(grid)
	return p
}

func addLine(p *plot.Plot, name string, points plotter.XYs, c color.Color, dashes []vg.Length) {
	line := &plotter.Line{XYs: points}
	line.LineStyle = draw.LineStyle{Color: c, Width: vg.Points(1.8), Dashes: dashes}
	p.Add(line)
	if name != "" {
		p.Legend.Add(name, line)
	}
}

func addMark(p *plot.Plot, name string, at plotter.XY, shape draw.GlyphDrawer) {
	mark := &plotter.Scatter{XYs: plotter.XYs{at}, GlyphStyle: draw.GlyphStyle{Color: ink, Radius: vg.Points(4.5), Shape: shape}}
	p.Add(mark)
	if name != "" {
		p.Legend.Add(name, mark)
	}
}

var opening = regexp.MustCompile(`(?s)^.*?<svg[^>]*viewBox="([^"]+)"[^>]*>`)

// plotted renders a chart and gives it title and text alternative.
func plotted(p *plot.Plot, id, title, alt string) string {
	canvas := vgsvg.New(chartWidth, chartHeight)
	p.Draw(draw.New(canvas))
	var out bytes.Buffer
	if _, err := canvas.WriteTo(&out); err != nil {
		return ""
	}
	head := fmt.Sprintf(`<svg xmlns="http://www.w3.org/2000/svg" viewBox="$1" role="img" aria-labelledby="%s-t %s-d"><title id="%s-t">%s</title><desc id="%s-d">%s</desc><rect width="100%%" height="100%%" fill="#ffffff"/>`,
		id, id, id, strings.ReplaceAll(escape(title), "$", "$$"), id, strings.ReplaceAll(escape(alt), "$", "$$"))
	return opening.ReplaceAllString(out.String(), head)
}

// plainLog labels a log axis with 1, 2 and 5 of each decade.
type plainLog struct{}

func (plainLog) Ticks(low, high float64) []plot.Tick {
	var ticks []plot.Tick
	for decade := math.Floor(math.Log10(low)); decade <= math.Ceil(math.Log10(high)); decade++ {
		for _, m := range []float64{1, 2, 5} {
			value := m * math.Pow(10, decade)
			if value >= low && value <= high {
				ticks = append(ticks, plot.Tick{Value: value, Label: strconv.FormatFloat(value, 'g', 4, 64)})
			}
		}
	}
	return ticks
}

// units are those in which the record writes the fan's curve.
func (v view) units(system int) (flow, pressure string) {
	at := place.Root.Append("systems", system, "fan", "curve", 0)
	return v.text(at.Append("flow", "unit")), v.text(at.Append("pressure", "unit"))
}

// curve converts the points of a derived curve.
func (v view) curve(ptr place.Pointer, flowUnit, pressureUnit string) plotter.XYs {
	var out plotter.XYs
	for i := range v.list(ptr) {
		q, okQ := v.number(ptr.Append(i, "flow"))
		pressure, okP := v.number(ptr.Append(i, "pressure"))
		x, knownX := convertTo(quantity.Flow, q, flowUnit)
		y, knownY := convertTo(quantity.Pressure, pressure, pressureUnit)
		if okQ && okP && knownX && knownY {
			out = append(out, plotter.XY{X: x, Y: y})
		}
	}
	return out
}

// clip leaves out what lies above the fan's highest pressure.
func clip(points, fan plotter.XYs) plotter.XYs {
	high := 0.0
	for _, p := range fan {
		high = math.Max(high, p.Y)
	}
	var out plotter.XYs
	for _, p := range points {
		if p.Y <= high*1.15 {
			out = append(out, p)
		}
	}
	return out
}

// in is a derived value in another unit of its dimension.
func (v view) in(ptr place.Pointer, unit string) (float64, bool) {
	si, ok := v.si(ptr)
	if !ok {
		return 0, false
	}
	for _, dim := range []quantity.Dimension{quantity.Flow, quantity.Pressure, quantity.Radon} {
		if value, ok := convertTo(dim, si, unit); ok {
			return value, true
		}
	}
	return 0, false
}

func convert(si float64, unit string) (float64, bool) { return convertTo(quantity.Radon, si, unit) }

func convertTo(dim quantity.Dimension, si float64, unit string) (float64, bool) {
	q, err := quantity.FromSI(dim, si, unit)
	if err != nil {
		return 0, false
	}
	value, err := strconv.ParseFloat(q.Value(), 64)
	return value, err == nil
}
