package drawing

import (
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"

	"gonum.org/v1/plot"

	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/quantity"
)

// scale is an axis read off the texts of its ticks: position and value of two
// of them.
type scale struct {
	from, to    float64 // px
	first, last float64
	log, known  bool
}

// readAxis finds an axis from its tick labels: small numbers in one line.
func readAxis(t *testing.T, root shape, anchor, along, across string, log bool) scale {
	t.Helper()
	s := scale{log: log}
	line := math.NaN()
	for _, label := range find(root, "text", "small") {
		value, err := strconv.ParseFloat(label.Text, 64)
		if err != nil || label.attr("text-anchor") != anchor {
			continue
		}
		if !math.IsNaN(line) && label.num(t, across) != line {
			t.Fatalf("%s stands out of line with the numbers along %s", label.Text, along)
		}
		line = label.num(t, across)
		at := label.num(t, along)
		if along == "y" {
			at -= 4 // the baseline is below the middle
		}
		if !s.known {
			s.from, s.first, s.known = at, value, true
		}
		s.to, s.last = at, value
	}
	if s.from == s.to {
		t.Fatalf("no axis along %s", along)
	}
	return s
}

// at is the value that the axis has at a place of the canvas.
func (s scale) at(px float64) float64 {
	first, last := s.first, s.last
	if s.log {
		first, last = math.Log(first), math.Log(last)
	}
	value := first + (px-s.from)/(s.to-s.from)*(last-first)
	if s.log {
		return math.Exp(value)
	}
	return value
}

// The marks of the fan chart stand, by its axes, where the derived values say,
// in the units of the fan's data sheet.
func TestFanChartByItsAxes(t *testing.T) {
	for _, fixture := range allFixtures {
		in := input(t, fixture)
		job := view{in}
		root := parse(t, figure(t, Figures(in, terms()), "fan-sys-1").SVG)
		flow := readAxis(t, root, "middle", "x", "y", false)
		pressure := readAxis(t, root, "end", "y", "x", false)
		at := place.Pointer("/derived/systems/0")

		circle := find(root, "circle", "hole")[0]
		q, okQ := job.in(at.Append("operating_flow"), quantity.Flow, "cfm")
		p, okP := job.in(at.Append("operating_pressure"), quantity.Pressure, "inH2O")
		if !okQ || !okP {
			t.Fatalf("%s: no operating point", fixture)
		}
		near(t, fixture+": operating flow, cfm", flow.at(circle.num(t, "cx")), q, 0.02)
		near(t, fixture+": operating pressure, inH2O", pressure.at(circle.num(t, "cy")), p, 0.0005)

		// The operating point is where both curves pass.
		for _, class := range []string{"cool", "warm"} {
			curve := find(root, "path", class)[0].corners(t)
			if off := distanceTo(curve, circle.num(t, "cx"), circle.num(t, "cy")); off > 1 {
				t.Errorf("%s: the %s curve passes %.2f px from the operating point", fixture, class, off)
			}
		}
		shut, _ := job.in(at.Append("shutoff_pressure"), quantity.Pressure, "inH2O")
		first := find(root, "path", "cool")[0].corners(t)[0]
		near(t, fixture+": pressure at no flow, inH2O", pressure.at(first[1]), shut, 0.0005)
		near(t, fixture+": no flow, cfm", flow.at(first[0]), 0, 0.02)

		reading, ok := job.in(at.Append("gauge_reading"), quantity.Pressure, "inH2O")
		if !ok {
			t.Fatalf("%s: no reading", fixture)
		}
		near(t, fixture+": gauge reading, inH2O", pressure.at(find(root, "line", "ink", "dot")[0].num(t, "y1")), reading, 0.0005)
		checkGauge(t, job, root, pressure, shut)
	}
}

// checkGauge looks at the column beside the plot: its tinted part reaches from
// 5 to 95 % of shut-off (common practice), its bracket 20 % round the mark.
func checkGauge(t *testing.T, job view, root shape, pressure scale, shut float64) {
	t.Helper()
	tint := find(root, "rect", "tint")[0]
	near(t, "fit from, inH2O", pressure.at(tint.num(t, "y")+tint.num(t, "height")), 0.05*shut, 0.001)
	near(t, "fit to, inH2O", pressure.at(tint.num(t, "y")), 0.95*shut, 0.001)
	mark, ok := job.in("/systems/0/gauge/start_mark", quantity.Pressure, "inH2O")
	if !ok {
		t.Fatal("no start mark")
	}
	var bracket, line shape
	for _, l := range find(root, "line", "heavy") {
		if l.num(t, "x1") == l.num(t, "x2") {
			bracket = l
		} else {
			line = l
		}
	}
	near(t, "mark, inH2O", pressure.at(line.num(t, "y1")), mark, 0.0005)
	near(t, "bracket from, inH2O", pressure.at(bracket.num(t, "y2")), mark*0.8, 0.001)
	near(t, "bracket to, inH2O", pressure.at(bracket.num(t, "y1")), mark*1.2, 0.001)
}

// distanceTo is how far a broken line passes from a point, px.
func distanceTo(line [][2]float64, x, y float64) float64 {
	least := math.Inf(1)
	for i := 1; i < len(line); i++ {
		ax, ay, bx, by := line[i-1][0], line[i-1][1], line[i][0], line[i][1]
		length := (bx-ax)*(bx-ax) + (by-ay)*(by-ay)
		share := 0.0
		if length > 0 {
			share = math.Max(0, math.Min(1, ((x-ax)*(bx-ax)+(y-ay)*(by-ay))/length))
		}
		least = math.Min(least, math.Hypot(x-ax-share*(bx-ax), y-ay-share*(by-ay)))
	}
	return least
}

// A reading that the fan cannot give stays inside the picture and is called so.
func TestImpossibleReadingIsShown(t *testing.T) {
	in := input(t, house, edit{`at: "2026-03-27T10:00:00-04:00", value: 0.9 inH2O`, `at: "2026-03-27T10:00:00-04:00", value: 2.2 inH2O`})
	f := figure(t, Figures(in, terms()), "fan-sys-1")
	if !strings.Contains(f.Alt, "the gauge reads 2.2 inH2O (above what this fan can give: look again)") {
		t.Errorf("alternative %q", f.Alt)
	}
	y := find(parse(t, f.SVG), "line", "ink", "dot")[0].num(t, "y1")
	if y < 26 || y > 250 {
		t.Errorf("the reading stands at y=%v, outside the plot", y)
	}
}

// The radon chart is logarithmic: marks, uncertainty and levels stand where its
// axis says, in the record's unit.
func TestRadonChartByItsAxis(t *testing.T) {
	for _, c := range []struct {
		unit  string
		edits []edit
		level float64
	}{
		{"pCi/L", nil, 4},
		{"Bq/m3", []edit{{"result: 12.4 pCi/L", "result: 459 Bq/m3"}, {"result: 0.9 pCi/L", "result: 33 Bq/m3"}}, 148},
	} {
		t.Run(c.unit, func(t *testing.T) {
			in := input(t, house, c.edits...)
			job := view{in}
			root := parse(t, figure(t, Figures(in, terms()), "radon").SVG)
			axis := readAxis(t, root, "end", "y", "x", true)
			marks := append(find(root, "circle", "hole"), find(root, "circle", "solid")...)
			bars := 0
			for i, m := range marks {
				at := place.Pointer("/derived/tests").Append(i)
				want, _ := job.in(at.Append("concentration"), quantity.Radon, c.unit)
				near(t, "result, share of the derived", axis.at(m.num(t, "cy"))/want, 1, 0.001)
				upper, _ := job.in(at.Append("upper_bound"), quantity.Radon, c.unit)
				for _, l := range find(root, "line", "ink") {
					if l.num(t, "x1") == m.num(t, "cx") && l.num(t, "x2") == m.num(t, "cx") {
						bars++
						top, foot := min(l.num(t, "y1"), l.num(t, "y2")), max(l.num(t, "y1"), l.num(t, "y2"))
						near(t, "upper end, share of the derived bound", axis.at(top)/upper, 1, 0.001)
						near(t, "lower end, as far below", axis.at(foot)/(2*want-upper), 1, 0.001)
					}
				}
			}
			if len(marks) != 2 || bars != 2 {
				t.Fatalf("%d marks and %d bars, want 2 and 2", len(marks), bars)
			}
			levels := find(root, "line", "bad", "dash")
			if len(levels) != 1 {
				t.Fatalf("%d levels, want 1", len(levels))
			}
			near(t, "level", axis.at(levels[0].num(t, "y1"))/c.level, 1, 0.001)
		})
	}
}

// Levels near each other, of one value, at the edge, and results near them: no
// line runs through words, no words cover others, and each name stays whole.
func TestLevelsAndResultsKeepApart(t *testing.T) {
	// 148, 100 and 74 Bq/m3 are 4.0, 2.7 and 2.0 pCi/L; 200 is Canada's guideline.
	named := []Level{
		{Name: "action level", Concentration: 148, Text: "4.0 pCi/L"}, {Name: "guideline", Concentration: 200, Text: "200 Bq/m3"},
		{Name: "reference level", Concentration: 100, Text: "100 Bq/m3"}, {Name: "worth lowering from", Concentration: 74, Text: "2.0 pCi/L"},
	}
	alike := slices.Clone(named)
	for i := range alike {
		alike[i].Concentration = 100
	}
	for name, levels := range map[string][]Level{"four": named, "three": named[1:], "alike": alike, "one": named[:1], "none": nil} {
		for _, result := range []string{"0.9", "1.9", "2.05", "2.7", "3.9", "4.1", "12.4", "90"} {
			f := figure(t, Figures(input(t, house, edit{"result: 0.9 pCi/L", "result: " + result + " pCi/L"}), Terms{Levels: levels}), "radon")
			root := parse(t, f.SVG)
			texts, rooms := words(t, root)
			for i, room := range rooms {
				for _, line := range strokes(t, root) {
					if length := struck(t, line, room); length > 4 {
						t.Errorf("%s levels, %s pCi/L: %.0f px of a line (%s) run through %q", name, result, length, line.attr("class"), texts[i].Text)
					}
				}
				for k, other := range rooms[:i] {
					if room.overlap(other) > 0.15*math.Min(room.w*room.h, other.w*other.h) {
						t.Errorf("%s levels, %s pCi/L: %q and %q cover each other", name, result, texts[i].Text, texts[k].Text)
					}
				}
			}
			var said []string
			for _, s := range texts {
				said = append(said, s.Text)
			}
			for _, l := range levels {
				if !strings.Contains(strings.Join(said, " "), l.Name+" "+l.Text) {
					t.Errorf("%s levels: %s %s is not written as a whole in %q", name, l.Name, l.Text, said)
				}
			}
		}
	}
}

// A result below detection is drawn as a bound, a blank not at all, and a test
// whose uncertainty is not recorded says so.
func TestRadonChartOfWhatIsLessThanAResult(t *testing.T) {
	f := figure(t, Figures(input(t, house,
		edit{"result: 0.9 pCi/L, below_detection: false, uncertainty: 12 %", "result: 0.9 pCi/L, below_detection: true"},
		edit{"below_detection: false, uncertainty: 10 %}", "below_detection: false}\n    - {id: blank-1, phase: after, device: charcoal, result: 0.2 pCi/L, blank: true}"}), terms()), "radon")
	key := strings.Join(f.Key, "\n")
	for _, want := range []string{
		"1 pre-1, before: 12.4 pCi/L, uncertainty not recorded; by what is usual for the device not above 14.4 pCi/L",
		"2 post-1, after: below detection, at most 0.9 pCi/L",
	} {
		if !strings.Contains(key, want) {
			t.Errorf("the key does not say %q:\n%s", want, key)
		}
	}
	if strings.Contains(key, "blank-1") {
		t.Errorf("a blank stands for no air:\n%s", key)
	}
	broken := 0
	for _, l := range find(parse(t, f.SVG), "line", "ink", "dash") {
		if l.attr("x1") == l.attr("x2") {
			broken++
		}
	}
	if broken != 1 {
		t.Errorf("%d uncertainties are drawn broken, want the one that is only usual", broken)
	}
}

// Ticks are round, and of a chart of one house there are several.
func TestTicks(t *testing.T) {
	for _, c := range []struct {
		ticker    plot.Ticker
		low, high float64
		want      string
	}{
		{steps{7}, 0, 172, "0 50 100 150"},
		{steps{7}, 0, 1.9, "0 0.5 1 1.5"},
		{steps{7}, -0.3, 1, "-0.2 0 0.2 0.4 0.6 0.8 1"},
		{decades{}, 0.6, 18.6, "1 2 5 10"},
		{decades{}, 30, 700, "50 100 200 500"},
		{decades{}, 0.5, 20000, "1 10 100 1000 10000"},
	} {
		var got []string
		for _, tick := range c.ticker.Ticks(c.low, c.high) {
			got = append(got, tick.Label)
		}
		if strings.Join(got, " ") != c.want {
			t.Errorf("%T from %v to %v: got %v, want %s", c.ticker, c.low, c.high, got, c.want)
		}
	}
}
