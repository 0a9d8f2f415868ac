package drawing

import (
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/slablint/slablint/internal/place"
)

// perMetre is the scale of an elevation, px, read off its zone.
func perMetre(t *testing.T, root shape, clearance float64) float64 {
	t.Helper()
	zones := find(root, "circle", "zone")
	if len(zones) != 1 {
		t.Fatalf("%d zones, want 1", len(zones))
	}
	return zones[0].num(t, "r") / clearance
}

// distances are the lengths of the lines from the outlet to openings, px.
func distances(t *testing.T, root shape) []float64 {
	t.Helper()
	zone := find(root, "circle", "zone")[0]
	x, y := zone.num(t, "cx"), zone.num(t, "cy")
	ends := map[[2]float64]bool{} // nearest places of openings are marked
	for _, dot := range find(root, "circle", "solid") {
		if dot.attr("r") == "2.5" {
			ends[[2]float64{dot.num(t, "cx"), dot.num(t, "cy")}] = true
		}
	}
	var out []float64
	for _, l := range find(root, "line") {
		if l.num(t, "x1") == x && l.num(t, "y1") == y && ends[[2]float64{l.num(t, "x2"), l.num(t, "y2")}] {
			out = append(out, l.length(t))
		}
	}
	slices.Sort(out)
	return out
}

// The line from the outlet to each opening, by the scale, is the distance that
// was derived, with positions, with measured distances, in feet and in metres.
func TestElevationIsToScale(t *testing.T) {
	metric := []edit{
		{"height_above_grade: 19 ft 3 in", "height_above_grade: 5.87 m"},
		{"height_above_eave: 14 in", "height_above_eave: 0.4 m"},
	}
	measured := []edit{
		{"      position: {x: 12 ft, y: 30 ft 4 in, z: 19 ft 6 in}\n", ""},
		{"      guard: none\n", "      guard: none\n      clearances:\n        - {id: c-1, opening: win-bed, distance: 8 ft, drop: 1 ft}\n        - {id: c-2, opening: win-stair, distance: 12 ft 6 in, drop: 9 ft}\n        - {id: c-3, kind: window, building: adjacent, distance: 15 ft, drop: -2 ft}\n"},
	}
	far := []edit{{"corner: {x: 30 ft, y: 29 ft 6 in, z: 0 ft 6 in}", "corner: {x: 60 ft, y: 29 ft 6 in, z: 0 ft 6 in}"}}
	corner := []edit{{"corner: {x: 30 ft, y: 29 ft 6 in, z: 0 ft 6 in}, width: 3 ft, height: 6 ft 8 in, facing: north", "corner: {x: 40 ft, y: 10 ft, z: 0 ft 6 in}, width: 3 ft, height: 6 ft 8 in, facing: east"}}
	for _, c := range []struct {
		name, fixture string
		edits         []edit
	}{
		{"feet", house, nil},
		{"metres", house, metric},
		{"measured", house, measured},
		{"wide", house, far},
		{"round the corner", house, corner},
		{"roof", "slab", nil},
		{"crawlspace", "crawlspace", nil},
		{"blocks", "block-wall", nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			in := input(t, c.fixture, c.edits...)
			terms := terms()
			root := parse(t, figure(t, Figures(in, terms), "elevation-sys-1").SVG)
			scale := perMetre(t, root, terms.Clearance)

			job := view{in}
			var want []float64
			for i := range job.list("/derived/clearances") {
				if m, ok := job.si(place.Pointer("/derived/clearances").Append(i, "straight_distance")); ok {
					want = append(want, m*scale)
				}
			}
			slices.Sort(want)
			got := distances(t, root)
			if len(got) != len(want) || len(want) < 2 {
				t.Fatalf("%d lines for %d openings", len(got), len(want))
			}
			for i := range want {
				near(t, "distance, px", got[i], want[i], rounding)
			}

			outlet := find(root, "circle", "zone")[0].num(t, "cy")
			height, _ := job.si("/derived/discharges/0/height_above_grade")
			ground := find(root, "line", "heavy")[0].num(t, "y1")
			near(t, "outlet above ground, px", ground-outlet, height*scale, rounding)
			eave, _ := job.si("/derived/discharges/0/height_above_eave")
			found := false
			for _, l := range find(root, "line", "thin", "dash") {
				found = found || math.Abs(l.num(t, "y1")-outlet-eave*scale) <= rounding
			}
			if !found {
				t.Errorf("no line at the eave, %.2f px below the outlet", eave*scale)
			}
			checkScaleBar(t, root, scale)
		})
	}
}

// checkScaleBar compares the bar with the length written beside it.
func checkScaleBar(t *testing.T, root shape, scale float64) {
	t.Helper()
	bars := map[string]float64{"2 ft": 0.6096, "5 ft": 1.524, "10 ft": 3.048, "20 ft": 6.096, "50 ft": 15.24, "1 m": 1, "2 m": 2, "5 m": 5, "10 m": 10, "20 m": 20}
	for _, label := range find(root, "text", "small") {
		length, ok := bars[label.Text]
		if !ok || label.attr("text-anchor") != "start" {
			continue
		}
		for _, l := range find(root, "line", "ink") {
			if l.num(t, "y1") == l.num(t, "y2") && math.Abs(l.num(t, "x2")+6-label.num(t, "x")) <= rounding {
				near(t, "scale bar "+label.Text+", px", l.length(t), length*scale, rounding)
				return
			}
		}
	}
	t.Error("no scale bar")
}

// An opening is drawn at its own size, its nearest place at the end of the line.
func TestOpeningsHaveTheirSize(t *testing.T) {
	root := parse(t, figure(t, Figures(input(t, house), terms()), "elevation-sys-1").SVG)
	scale := perMetre(t, root, terms().Clearance)
	rects := find(root, "rect", "ink")
	sizes := [][2]float64{{3, 4.5}, {2.5, 4}, {3, 6 + 8./12}} // ft, in the order of the record
	if len(rects) != len(sizes) {
		t.Fatalf("%d openings drawn, want %d", len(rects), len(sizes))
	}
	for i, want := range sizes {
		near(t, "width", rects[i].num(t, "width"), want[0]*0.3048*scale, rounding)
		near(t, "height", rects[i].num(t, "height"), want[1]*0.3048*scale, rounding)
	}
	for _, dot := range find(root, "circle", "solid") {
		if dot.attr("r") != "2.5" {
			continue
		}
		on := false
		for _, r := range rects {
			on = on || onRectangle(t, r, dot.num(t, "cx"), dot.num(t, "cy"))
		}
		if !on {
			t.Errorf("the nearest place %s,%s is on no opening", dot.attr("cx"), dot.attr("cy"))
		}
	}
}

func onRectangle(t *testing.T, r shape, x, y float64) bool {
	t.Helper()
	left, top := r.num(t, "x"), r.num(t, "y")
	right, bottom := left+r.num(t, "width"), top+r.num(t, "height")
	return x >= left-rounding && x <= right+rounding && y >= top-rounding && y <= bottom+rounding
}

// What fails is told by a cross and by words, not by its colour.
func TestTooCloseIsToldWithoutColour(t *testing.T) {
	f := figure(t, Figures(input(t, house), terms()), "elevation-sys-1")
	if !strings.Contains(f.Alt, "Too close, with 10 ft called for: win-bed at") || !strings.Contains(f.Key[0], "win-bed, window: ") || !strings.HasSuffix(f.Key[0], "too close") {
		t.Errorf("alternative %q and key %q do not name the opening that is too close", f.Alt, f.Key)
	}
	crossed := 0
	for _, l := range find(parse(t, f.SVG), "line", "bad") {
		if math.Abs(math.Abs(l.num(t, "x2")-l.num(t, "x1"))-10) <= rounding && math.Abs(math.Abs(l.num(t, "y2")-l.num(t, "y1"))-10) <= rounding {
			crossed++
		}
	}
	if crossed != 2 {
		t.Errorf("%d strokes of a cross, want 2", crossed)
	}
	free := terms()
	free.Standings = map[string]Standing{"sys-1/win-bed": FarEnough}
	f = figure(t, Figures(input(t, house), free), "elevation-sys-1")
	if !strings.Contains(f.Key[0], "far enough below the outlet (4 ft)") {
		t.Errorf("key %q does not say why 5 ft will do", f.Key[0])
	}
}

// Missing information: the figure says so, or there is none.
func TestElevationWithoutHeights(t *testing.T) {
	noHeight := []edit{{"      height_above_grade: 19 ft 3 in\n", ""}, {"      grade_level: 0 ft 3 in\n", ""}}
	f := figure(t, Figures(input(t, house, noHeight...), terms()), "elevation-sys-1")
	if !strings.Contains(f.Alt, "is not recorded") || !strings.Contains(f.SVG, "The height above the ground is not recorded.") {
		t.Errorf("nothing says that the height is missing: %q", f.Alt)
	}
	nothing := append(noHeight, edit{"      position: {x: 12 ft, y: 30 ft 4 in, z: 19 ft 6 in}\n", ""})
	for _, f := range Figures(input(t, house, nothing...), terms()) {
		if strings.HasPrefix(f.Name, "elevation") {
			t.Errorf("an elevation was drawn of nothing: %s", f.Alt)
		}
	}
	unknown := figure(t, Figures(input(t, house, edit{"corner: {x: 6 ft, y: 29 ft 6 in, z: 11 ft}, ", ""}), terms()), "elevation-sys-1")
	if !strings.Contains(unknown.Key[0], "win-bed, window: a distance that is not recorded") {
		t.Errorf("key %q hides that a distance is missing", unknown.Key[0])
	}
}

// An opening on the far side of the street is listed and does not shrink the
// rest.
func TestFarOpeningsAreListed(t *testing.T) {
	f := figure(t, Figures(input(t, house, edit{"corner: {x: 30 ft, y: 29 ft 6 in, z: 0 ft 6 in}", "corner: {x: 300 ft, y: 29 ft 6 in, z: 0 ft 6 in}"}), terms()), "elevation-sys-1")
	if !strings.Contains(f.Key[2], "too far away to be drawn") {
		t.Errorf("key %q", f.Key)
	}
	if got := len(distances(t, parse(t, f.SVG))); got != 2 {
		t.Errorf("%d openings drawn, want 2", got)
	}
}
