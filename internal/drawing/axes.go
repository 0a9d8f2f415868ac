package drawing

import (
	"math"
	"strconv"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"
	"gonum.org/v1/plot/vg/recorder"
)

// chart is a canvas with a plot on it. Axes, grid, curves, bars and marks are
// the library's; what is written on them stands where no other words do.
type chart struct {
	*canvas
	plot *plot.Plot
	room box // for plot, tick labels and the name of the axis below, px
	box  box // the part inside the axes, px; known once it has been drawn
	x, y span
}

// span is what an axis reaches over, in values.
type span struct{ low, high float64 }

// newChart prepares a chart with a name for each axis. That of the upright axis
// stands level above it, where it is read without turning the head.
func newChart(c *canvas, room box, x, y span, below, beside string) *chart {
	ch := &chart{canvas: c, plot: plot.New(), room: room, x: x, y: y}
	p := ch.plot
	p.BackgroundColor = nil
	for _, axis := range []*plot.Axis{&p.X, &p.Y} {
		axis.Color, axis.Padding = ink{class: "ink"}, 0
		axis.Tick.Color, axis.Tick.Length = ink{class: "thin"}, 4
		lettered(&axis.Tick.Label, "small")
		lettered(&axis.Label.TextStyle, "small strong")
		axis.Tick.Marker = steps{6.5}
	}
	p.X.Label.Text, p.X.Label.Position, p.X.Label.Padding = below, draw.PosRight, 4
	grid := plotter.NewGrid()
	grid.Horizontal.Color, grid.Vertical.Color = ink{class: "faint"}, ink{class: "faint"}
	p.Add(grid)
	c.text("small strong", "start", 8, 15, beside)
	return ch
}

// curve adds a line through points given in values.
func (ch *chart) curve(class string, points ...[2]float64) {
	ch.plot.Add(&plotter.Line{XYs: values(points), LineStyle: stroke(class)})
}

// stroke is a line of a class. How wide it is the class says.
func stroke(class string) draw.LineStyle {
	return draw.LineStyle{Color: ink{class: class}, Width: 1}
}

func values(points [][2]float64) plotter.XYs {
	out := make(plotter.XYs, len(points))
	for i, v := range points {
		out[i].X, out[i].Y = v[0], v[1]
	}
	return out
}

// draw puts the plot on the canvas.
func (ch *chart) draw() {
	p := ch.plot // what was added to it may have widened the axes
	p.X.Min, p.X.Max, p.Y.Min, p.Y.Max = ch.x.low, ch.x.high, ch.y.low, ch.y.high
	var record recorder.Canvas
	whole := draw.NewCanvas(&record, figureWidth, vg.Length(ch.height))
	part := draw.Crop(whole, vg.Length(ch.room.x), vg.Length(ch.room.x+ch.room.w-figureWidth),
		vg.Length(ch.height-ch.room.y-ch.room.h), vg.Length(-ch.room.y))
	p.Draw(part)
	ch.replay(record.Actions)
	inside := p.DataCanvas(part)
	ch.box = box{float64(inside.Min.X), ch.height - float64(inside.Max.Y), float64(inside.Size().X), float64(inside.Size().Y)}
}

// across is where a value of the level axis stands on the canvas, px.
func (ch *chart) across(value float64) float64 { return ch.box.x + ch.plot.X.Norm(value)*ch.box.w }

// down is where a value of the upright axis stands on the canvas, px.
func (ch *chart) down(value float64) float64 {
	return ch.box.y + (1-ch.plot.Y.Norm(value))*ch.box.h
}

// keepClear keeps words off a line through points given in values.
func (ch *chart) keepClear(points ...[2]float64) {
	for i := 1; i < len(points); i++ {
		ch.labels.takeLine(ch.across(points[i-1][0]), ch.down(points[i-1][1]), ch.across(points[i][0]), ch.down(points[i][1]))
	}
}

// steps marks an axis at round values, about as many as it says. (The library's
// own choice has two or three, such as 0, 80 and 160.)
type steps struct{ about float64 }

// Ticks implements plot.Ticker.
func (s steps) Ticks(low, high float64) []plot.Tick {
	step := math.Pow(10, math.Floor(math.Log10((high-low)/s.about)))
	for _, m := range []float64{1, 2, 5, 10} {
		if (high-low)/(m*step) <= s.about {
			step *= m
			break
		}
	}
	var out []plot.Tick
	for i := math.Ceil(low/step - 1e-9); i*step <= high*(1+1e-9); i++ {
		out = append(out, tick(i*step))
	}
	return out
}

// decades marks a log axis at 1, 2 and 5 of each decade, or at whole decades
// when there are many. (The library names whole decades only, and results of
// one house often lie within one.)
type decades struct{}

// Ticks implements plot.Ticker.
func (decades) Ticks(low, high float64) []plot.Tick {
	steps := []float64{1, 2, 5}
	if math.Log10(high/low) > 3 {
		steps = steps[:1]
	}
	var out []plot.Tick
	for decade := math.Floor(math.Log10(low)); decade <= math.Ceil(math.Log10(high)); decade++ {
		for _, m := range steps {
			if value := m * math.Pow(10, decade); value >= low && value <= high {
				out = append(out, tick(value))
			}
		}
	}
	return out
}

func tick(value float64) plot.Tick { return plot.Tick{Value: value, Label: tickText(value)} }

// tickText writes a round value without the noise of the arithmetic.
func tickText(value float64) string {
	if math.Abs(value) < 1e-12 {
		return "0"
	}
	return strconv.FormatFloat(value, 'g', 6, 64)
}
