package drawing

import (
	"math"
	"strings"
	"testing"

	"github.com/slablint/slablint/internal/place"
)

// area is what corners enclose, by the shoelace formula.
func area(corners [][2]float64) float64 {
	sum := 0.0
	for i, a := range corners {
		b := corners[(i+1)%len(corners)]
		sum += a[0]*b[1] - b[0]*a[1]
	}
	return math.Abs(sum) / 2
}

// planScale is px per metre, from the drawn outline and the record's longest
// side.
func planScale(t *testing.T, root shape, metres float64) float64 {
	t.Helper()
	corners := find(root, "path", "heavy")[0].corners(t)
	longest := 0.0
	for i, a := range corners {
		b := corners[(i+1)%len(corners)]
		longest = math.Max(longest, math.Hypot(b[0]-a[0], b[1]-a[1]))
	}
	return longest / metres
}

// Areas are to scale: the footprints are plain arithmetic on the outlines.
func TestPlanIsToScale(t *testing.T) {
	const square = "outline: [{x: 0 ft, y: 0 ft}, {x: 40 ft, y: 0 ft}, {x: 40 ft, y: 29 ft 6 in}, {x: 0 ft, y: 29 ft 6 in}]"
	const ell = "outline: [{x: 0 ft, y: 0 ft}, {x: 40 ft, y: 0 ft}, {x: 40 ft, y: 12 ft}, {x: 18 ft, y: 12 ft}, {x: 18 ft, y: 29 ft 6 in}, {x: 0 ft, y: 29 ft 6 in}]"
	for _, c := range []struct {
		name    string
		edits   []edit
		longest float64 // m
		area    float64 // m2
	}{
		{"rectangle", nil, 40 * 0.3048, 40 * 29.5 * 0.3048 * 0.3048},
		{"L", []edit{{square, ell}}, 40 * 0.3048, (40*12 + 18*17.5) * 0.3048 * 0.3048},
		{"metres", []edit{{square, "outline: [{x: 0 m, y: 0 m}, {x: 12.5 m, y: 0 m}, {x: 12.5 m, y: 9 m}, {x: 0 m, y: 9 m}]"}}, 12.5, 112.5},
	} {
		t.Run(c.name, func(t *testing.T) {
			f := figure(t, Figures(input(t, house, c.edits...), terms()), "plan-basement")
			root := parse(t, f.SVG)
			scale := planScale(t, root, c.longest)
			corners := find(root, "path", "heavy")[0].corners(t)
			near(t, "area, m2", area(corners)/scale/scale, c.area, c.area*0.0005)
			checkScaleBar(t, root, scale)
			if (c.name == "metres") != strings.Contains(f.SVG, ">12.5 m<") {
				t.Error("sides are not in the unit of the record")
			}
		})
	}
}

// Things stand where the record puts them: distances between them are those of
// their positions.
func TestPlanPlacesThings(t *testing.T) {
	in := input(t, house)
	root := parse(t, figure(t, Figures(in, terms()), "plan-basement").SVG)
	scale := planScale(t, root, 40*0.3048)
	var rings [][2]float64
	var point shape
	for _, c := range find(root, "circle", "hole") {
		if c.attr("r") == "6" {
			rings = append(rings, [2]float64{c.num(t, "cx"), c.num(t, "cy")})
		} else {
			point = c
		}
	}
	job := view{in}
	if len(rings) != 4 {
		t.Fatalf("%d rings for the four holes that pull", len(rings))
	}
	px, py, _ := job.point("/systems/0/suction_points/0/position")
	for i, ring := range rings {
		x, y, ok := job.point(place.Pointer("/diagnostics/communication_tests/0/holes").Append(i, "position"))
		if !ok {
			t.Fatalf("hole %d has no position", i)
		}
		near(t, "hole to suction point, px", math.Hypot(ring[0]-point.num(t, "cx"), ring[1]-point.num(t, "cy")), math.Hypot(x-px, y-py)*scale, rounding)
	}
	reach, _ := job.si("/derived/communication/0/reach")
	near(t, "reach, px", find(root, "circle", "reach")[0].num(t, "r"), reach*scale, rounding)
}

// State is told by sign and words: a hole that does not pull, an entry route
// left open, one of which nothing is recorded, a wall of hollow block.
func TestPlanTellsStates(t *testing.T) {
	f := figure(t, Figures(input(t, house,
		edit{"pressure: -0.035 inH2O", "pressure: 0.004 inH2O"},
		edit{"treatment: covered-and-sealed", "treatment: left-open"},
		edit{"kind: wall-floor-joint, foundation: basement, treatment: sealed", "kind: wall-floor-joint, foundation: basement, position: {x: 20 ft, y: 2 ft}"},
		edit{"wall_kind: poured", "wall_kind: hollow-block"}), terms()), "plan-basement")
	key := strings.Join(f.Key, "\n")
	for _, want := range []string{"0.004 inH2O, does not pull", "sump: left open", "joint, wall floor joint: treatment not recorded", "hollow block, through which soil gas travels", "Entry routes without a recorded position: tub"} {
		if !strings.Contains(key, want) {
			t.Errorf("the key does not say %q:\n%s", want, key)
		}
	}
	if !strings.Contains(f.Alt, "3 of 4 test holes pull") || !strings.Contains(f.Alt, "1 of 3 entry routes are treated") {
		t.Errorf("alternative %q", f.Alt)
	}
	root := parse(t, f.SVG)
	if crosses := len(find(root, "line", "bad")); crosses != 4 {
		t.Errorf("%d strokes of crosses, want 4: one hole, one route", crosses)
	}
	if boxes := find(root, "rect", "ink", "dash"); len(boxes) != 1 {
		t.Errorf("%d broken squares, want 1", len(boxes))
	}
	if len(find(root, "path", "heavy")) != 0 || len(find(root, "line", "ink")) < 100 {
		t.Error("the walls are not drawn in blocks")
	}
}
