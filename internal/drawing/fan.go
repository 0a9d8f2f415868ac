package drawing

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"github.com/slablint/slablint/internal/airflow"
	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/quantity"
)

// fanState is what one system's fan chart shows, in the units of its curve.
type fanState struct {
	id                 string
	flowUnit, unit     string
	fan, pipe          [][2]float64 // flow and pressure
	operating, byGauge *[2]float64
	reading, mark      *float64
	shutOff            float64
	measured           *float64 // flow
}

// fanChart shows the fan's curve and that of pipe and soil, where they cross,
// and what the gauge says.
func fanChart(job view, system int, terms Terms) (Figure, bool) {
	s, at, ok := readFan(job, system)
	if !ok {
		return Figure{}, false
	}
	c := newCanvas(250)
	highFlow, high := 0.0, s.shutOff
	for _, p := range s.fan {
		highFlow, high = math.Max(highFlow, p[0]), math.Max(high, p[1])
	}
	for _, p := range []*float64{s.reading, s.mark} {
		if p != nil {
			high = math.Max(high, *p)
		}
	}
	if s.operating != nil {
		high = math.Max(high, s.operating[1])
	}
	const strip = 104 // px for the gauge on the right
	p := newChart(c, box{12, 26, figureWidth - 12 - 12 - strip, 212},
		span{0, highFlow * 1.04}, span{math.Min(0, lowest(s.reading)) * 1.1, high * 1.12},
		"flow, "+s.flowUnit, "static pressure, "+s.unit)
	p.fanLines(s)
	p.gauge(s, terms)
	p.labels.take(box{p.box.x + p.box.w + 4, 0, figureWidth, p.box.y + p.box.h})
	p.fanPoints(s)
	key := []string{"Solid line: the fan's curve at the density of the gas."}
	if len(s.pipe) > 1 {
		key[0] += " Broken line: what pipe and soil take."
	} else {
		key = append(key, "What pipe and soil take is not drawn: too little of the pipe is recorded.")
	}
	if s.reading != nil {
		key = append(key, "Dotted line: the last gauge reading. Column on the right: the gauge; its tinted part is where a reading is fit to tell the flow.")
	}
	if s.mark != nil && terms.GaugeRise > 0 && terms.GaugeFall < 0 {
		key = append(key, "Bracket beside the gauge: how far a reading may move from the start mark.")
	}
	return drawn(c, "fan-"+s.id, "Fan and pipe of "+s.id, fanWords(job, at, s), key), true
}

func lowest(reading *float64) float64 {
	if reading == nil {
		return 0
	}
	return *reading
}

func readFan(job view, system int) (s fanState, at place.Pointer, ok bool) {
	recorded := place.Root.Append("systems", system)
	s.id = job.text(recorded.Append("id"))
	n := job.indexOf("/derived/systems", s.id)
	if n < 0 {
		return s, at, false
	}
	at = place.Pointer("/derived/systems").Append(n)
	first := recorded.Append("fan", "curve", 0)
	s.flowUnit, s.unit = job.text(first.Append("flow", "unit")), job.text(first.Append("pressure", "unit"))
	if s.fan = job.curve(at.Append("fan_curve"), s); len(s.fan) < 2 {
		return s, at, false
	}
	s.shutOff, _ = job.in(at.Append("shutoff_pressure"), quantity.Pressure, s.unit)
	s.pipe = job.curve(at.Append("system_curve"), s)
	s.operating = job.pair(at.Append("operating_flow"), at.Append("operating_pressure"), s)
	s.byGauge = job.pair(at.Append("gauge_flow"), at.Append("gauge_reading"), s)
	s.reading = job.maybe(at.Append("gauge_reading"), quantity.Pressure, s.unit)
	s.mark = job.maybe(recorded.Append("gauge", "start_mark"), quantity.Pressure, s.unit)
	s.measured = job.maybe(recorded.Append("commissioning", "measured_flow"), quantity.Flow, s.flowUnit)
	return s, at, true
}

// fanLines draws the curves and the reading.
func (ch *chart) fanLines(s fanState) {
	ch.curve("cool", s.fan...)
	ch.curve("warm", s.pipe...)
	var reading [][2]float64
	if s.reading != nil {
		reading = [][2]float64{{ch.x.low, *s.reading}, {ch.x.high, *s.reading}}
		ch.curve("ink dot", reading...)
	}
	ch.draw()
	ch.keepClear(s.fan...)
	ch.keepClear(ch.within(s.pipe)...)
	ch.keepClear(reading...)
}

// fanPoints draws the points on the curves, and names both.
func (ch *chart) fanPoints(s fanState) {
	foot := ch.box.y + ch.box.h
	if s.measured != nil && *s.measured <= ch.x.high {
		x := ch.across(*s.measured)
		ch.line("thin", x, foot, x, foot-12)
		ch.path("solid", [][2]float64{{x, foot - 12}, {x - 5, foot - 3}, {x + 5, foot - 3}}, true)
		ch.label("small", "measured flow", spot{"middle", x, foot - 18}, spot{"start", x + 9, foot - 6}, spot{"end", x - 9, foot - 6})
	}
	var names []func() // written when both marks stand
	mark := func(at *[2]float64, draw func(x, y float64), class, words string, besides ...spot) {
		if at == nil {
			return
		}
		x, y := ch.across(at[0]), ch.down(at[1])
		draw(x, y)
		ch.labels.take(box{x - 6, y - 6, 12, 12})
		spots := around(x, y, 6)[2:]
		for i, s := range besides {
			spots = slices.Insert(spots, 6+i, spot{s.anchor, x + s.x, y + s.y})
		}
		names = append(names, func() { ch.label(class, words, spots...) })
	}
	mark(s.operating, func(x, y float64) { ch.circle("hole", x, y, 5.5) }, "strong", "operating point")
	mark(s.byGauge, func(x, y float64) { ch.rect("hole", x-5, y-5, 10, 10) }, "small", "flow by gauge",
		spot{"start", 28, 14}, spot{"start", 38, 14}) // right of where the fan's curve falls
	for _, write := range names {
		write()
	}
	ch.name("fan", s.fan, 0.2)
	ch.name("pipe and soil", ch.within(s.pipe), 0.9)
}

// within are the points of a curve from its start to where it leaves the plot.
func (ch *chart) within(points [][2]float64) [][2]float64 {
	for i, point := range points {
		if point[0] > ch.x.high || point[1] > ch.y.high {
			return points[:i]
		}
	}
	return points
}

// name writes what a curve is beside a place of it.
func (ch *chart) name(words string, points [][2]float64, share float64) {
	if len(points) < 2 {
		return
	}
	at := points[int(share*float64(len(points)-1))]
	x, y := ch.across(at[0]), ch.down(at[1])
	ch.label("small", words, spot{"start", x + 4, y - 9}, spot{"start", x + 4, y + 16}, spot{"end", x - 6, y - 8}, spot{"start", x + 10, y + 4}, spot{"end", x - 6, y + 14})
}

// gauge draws the gauge beside the plot at the same scale: where readings are
// fit to tell the flow, the start mark with what it may move, and the reading.
func (ch *chart) gauge(s fanState, terms Terms) {
	x := ch.box.x + ch.box.w + 20
	const width = 13
	ch.text("small strong", "middle", x+width/2, 15, "gauge")
	if s.shutOff > 0 {
		low, high := airflow.UsableShares()
		top, bottom := ch.down(high*s.shutOff), ch.down(low*s.shutOff)
		ch.rect("tint", x, top, width, bottom-top)
		for _, y := range []float64{top, bottom} {
			ch.line("thin", x, y, x+width, y)
		}
	}
	ch.rect("ink", x, ch.box.y, width, ch.box.h)
	labelled := x + width + 11
	if s.reading != nil {
		y := ch.down(*s.reading)
		ch.line("ink dot", ch.box.x+ch.box.w, y, x, y)
		ch.path("solid", [][2]float64{{x + width, y}, {x + width + 8, y - 5}, {x + width + 8, y + 5}}, true)
		ch.labels.take(box{x, y - 5, width + 8, 10})
		ch.label("small", "reads "+tickText(*s.reading), spot{"start", labelled, y + 4})
	}
	if s.mark != nil {
		y := ch.down(*s.mark)
		if terms.GaugeRise > 0 && terms.GaugeFall < 0 {
			top, bottom := ch.down(*s.mark*(1+terms.GaugeRise)), ch.down(*s.mark*(1+terms.GaugeFall))
			ch.line("heavy", x+width+3, top, x+width+3, bottom)
			ch.line("ink", x+width, top, x+width+5, top)
			ch.line("ink", x+width, bottom, x+width+5, bottom)
		}
		ch.line("heavy", x-4, y, x+width, y)
		ch.label("small", "mark "+tickText(*s.mark), spot{"start", labelled, y + 4}, spot{"start", labelled, y + 18}, spot{"start", labelled, y - 10})
	}
}

func fanWords(job view, at place.Pointer, s fanState) string {
	said := []string{"The fan gives " + job.words(at.Append("shutoff_pressure")) + " at no flow"}
	if s.operating != nil {
		said = append(said, fmt.Sprintf("fan and pipe meet at %s and %s", job.words(at.Append("operating_flow")), job.words(at.Append("operating_pressure"))))
	}
	if s.reading != nil {
		words := "the gauge reads " + job.words(at.Append("gauge_reading"))
		if verdict := job.text(at.Append("gauge_plausibility")); verdict != "" {
			words += " (" + readingWords(verdict) + ")"
		}
		said = append(said, words)
	}
	if s.byGauge != nil {
		said = append(said, "which stands for "+job.words(at.Append("gauge_flow")))
	}
	return strings.Join(said, "; ") + "."
}

// readingWords says what a class of reading means.
func readingWords(class string) string {
	words := map[airflow.GaugeVerdict]string{
		airflow.GaugeReversed:     "below zero: the tube is reversed or on the discharge side",
		airflow.GaugeNoSuction:    "no suction: fan or tube off, or gauge dry",
		airflow.GaugeOpenPipe:     "hardly any: as if the pipe were open",
		airflow.GaugeUsable:       "fit to tell the flow",
		airflow.GaugeNoFlow:       "close to shut-off: hardly any flow",
		airflow.GaugeAboveShutOff: "above what this fan can give: look again",
		airflow.GaugeOverRange:    "at the end of its scale",
	}
	if w, ok := words[airflow.GaugeVerdict(class)]; ok {
		return w
	}
	return plain(class)
}

// curve converts the points of a derived curve to the units of the chart.
func (v view) curve(ptr place.Pointer, s fanState) [][2]float64 {
	var out [][2]float64
	for i := range v.list(ptr) {
		q, okQ := v.number(ptr.Append(i, "flow"))
		pressure, okP := v.number(ptr.Append(i, "pressure"))
		x, knownX := convert(quantity.Flow, q, s.flowUnit)
		y, knownY := convert(quantity.Pressure, pressure, s.unit)
		if okQ && okP && knownX && knownY {
			out = append(out, [2]float64{x, y})
		}
	}
	return out
}

// pair is a point of the chart from two derived values, or nil.
func (v view) pair(flow, pressure place.Pointer, s fanState) *[2]float64 {
	x, okX := v.in(flow, quantity.Flow, s.flowUnit)
	y, okY := v.in(pressure, quantity.Pressure, s.unit)
	if !okX || !okY {
		return nil
	}
	return &[2]float64{x, y}
}

func (v view) maybe(ptr place.Pointer, dim quantity.Dimension, unit string) *float64 {
	value, ok := v.in(ptr, dim, unit)
	if !ok {
		return nil
	}
	return &value
}
