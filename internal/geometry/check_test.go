package geometry

import (
	"encoding/json"
	"math"
	"os"
	"testing"
)

const foot = 0.3048 // m, exact

// checkValue is one figure from outside this program.
type checkValue struct {
	ID        string         `json:"id"`
	Quantity  string         `json:"quantity"`
	Inputs    map[string]any `json:"inputs"`
	Expected  float64        `json:"expected"`
	Unit      string         `json:"unit"`
	Tolerance struct{ Abs, Rel float64 }
	Source    string `json:"source"`
	Seen      bool   `json:"seen"`
}

// number is the figure at a path of keys and indices into the inputs.
func (c checkValue) number(t *testing.T, path ...any) float64 {
	t.Helper()
	var v any = c.Inputs
	for _, step := range path {
		switch s := step.(type) {
		case string:
			v = v.(map[string]any)[s]
		case int:
			v = v.([]any)[s]
		}
	}
	f, ok := v.(float64)
	if !ok {
		t.Fatalf("%s: input %v is not a number: %v", c.ID, path, v)
	}
	return f
}

func (c checkValue) feet(t *testing.T, path ...any) float64 { return foot * c.number(t, path...) }

func (c checkValue) pointFeet(t *testing.T, key string) Point {
	return Point{c.feet(t, key, 0), c.feet(t, key, 1), c.feet(t, key, 2)}
}

func must[T any](t testing.TB) func(T, error) T {
	return func(v T, err error) T {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
		return v
	}
}

// checks has one handler for each id, returning the figure in the entry's unit.
var checks = map[string]func(*testing.T, checkValue) float64{
	"G01": toOpening, "G02": toOpening, "G03": toOpening, "G04": toOpening,
	"G05": toOpening, "G06": toOpening, "G07": toOpening, "G08": toOpening,
	"G09": roundCorner, "G10": roundCorner,
	"G11": func(t *testing.T, c checkValue) float64 {
		x, z := [2]float64{c.feet(t, "opening_x_ft", 0), c.feet(t, "opening_x_ft", 1)}, c.feet(t, "opening_z_ft")
		y := [2]float64{c.feet(t, "opening_y_ft", 0), c.feet(t, "opening_y_ft", 1)}
		centre := Point{(x[0] + x[1]) / 2, (y[0] + y[1]) / 2, z}
		light := must[Rect](t)(newRoofLight(centre, PlanPoint{X: 1}, x[1]-x[0], y[1]-y[0]))
		return light.Distance(c.pointFeet(t, "discharge_ft")) / foot
	},
	"X01": func(t *testing.T, c checkValue) float64 {
		// The constant of the source is g P/R.
		barometer := c.number(t, "constant") * gasConstantDryAir / standardGravity
		return must[float64](t)(Stack{c.number(t, "h_m"), c.number(t, "Tin_K"), c.number(t, "Tout_K"), barometer}.Pressure())
	},
	"X02": func(t *testing.T, c checkValue) float64 {
		return must[float64](t)(Stack{c.number(t, "h_m"), c.number(t, "Tin_K"), c.number(t, "Tout_K"), c.number(t, "P")}.Pressure())
	},
	"X03": func(t *testing.T, c checkValue) float64 {
		// One metre and one kelvin, outdoor air of the given density.
		inside := c.number(t, "Tin_K")
		barometer := c.number(t, "rho") * gasConstantDryAir * (inside - 1)
		return must[float64](t)(Stack{1, inside, inside - 1, barometer}.Pressure())
	},
	"X04": func(t *testing.T, c checkValue) float64 {
		return must[float64](t)(Stack{c.number(t, "h_npl_above_slab_m"), celsius(c.number(t, "Tin_C")), celsius(c.number(t, "Tout_C")), c.number(t, "P")}.Pressure())
	},
	"X05": func(t *testing.T, c checkValue) float64 {
		test := Stack{c.number(t, "h_npl_m"), celsius(c.number(t, "Tin_C")), celsius(c.number(t, "test_Tout_C")), c.number(t, "P")}
		design := test
		design.Outdoor = celsius(c.number(t, "design_Tout_C"))
		return must[float64](t)(CarryToDesign(c.number(t, "measured_Pa"), test, design))
	},
	"X06": func(t *testing.T, c checkValue) float64 {
		f := must[Field](t)(FitField([]Reading{{0, c.number(t, "p0")}, {10 * foot, c.number(t, "p10")}}, 0))
		return 100 * f.ShareLost(10*foot)
	},
	"X07": func(t *testing.T, c checkValue) float64 { return besselK0(c.number(t, "x")) },
	"X08": func(t *testing.T, c checkValue) float64 { return besselK0(c.number(t, "x")) },
	"X09": func(t *testing.T, c checkValue) float64 {
		side := c.feet(t, "side")
		slab := must[Polygon](t)(NewPolygon([]PlanPoint{{0, 0}, {side, 0}, {side, side}, {0, side}}))
		return must[float64](t)(slab.ShareWithin([]PlanPoint{{side / 2, side / 2}}, c.feet(t, "R")))
	},
	"X10": func(t *testing.T, c checkValue) float64 {
		var corners []PlanPoint
		for i := range c.Inputs["poly"].([]any) {
			corners = append(corners, PlanPoint{c.feet(t, "poly", i, 0), c.feet(t, "poly", i, 1)})
		}
		return must[Polygon](t)(NewPolygon(corners)).Area() / (foot * foot)
	},
	"X11": func(t *testing.T, c checkValue) float64 {
		w, d := c.feet(t, "w"), c.feet(t, "d")
		slab := must[Polygon](t)(NewPolygon([]PlanPoint{{0, 0}, {w, 0}, {w, d}, {0, d}}))
		return must[Gap](t)(slab.Farthest([]PlanPoint{{0, 0}})).Distance / foot
	},
	"X12": func(t *testing.T, c checkValue) float64 {
		f := must[Field](t)(fieldFromShare(c.number(t, "p0_Pa"), c.number(t, "percent_left_per_10ft")/100, 10*foot))
		return must[float64](t)(f.Radius(1)) / foot
	},
}

func toOpening(t *testing.T, c checkValue) float64 {
	x0, x1 := c.feet(t, "opening_x_ft", 0), c.feet(t, "opening_x_ft", 1)
	z0, z1 := c.feet(t, "opening_z_ft", 0), c.feet(t, "opening_z_ft", 1)
	sill := Point{(x0 + x1) / 2, c.feet(t, "wall_y_ft"), z0}
	opening := must[Rect](t)(newWallOpening(sill, PlanPoint{X: 1}, x1-x0, z1-z0))
	return opening.Distance(c.pointFeet(t, "discharge_ft")) / foot
}

func roundCorner(t *testing.T, c checkValue) float64 {
	// Corner at the origin, the opening's near jamb along the second wall.
	near := c.feet(t, "corner_to_opening_ft")
	sill := Point{0, near + 0.5, -c.feet(t, "dz_ft") - 1}
	opening := must[Rect](t)(newWallOpening(sill, PlanPoint{Y: 1}, 1, 1))
	return pathRound(Point{X: -c.feet(t, "discharge_to_corner_ft")}, []PlanPoint{{}}, opening) / foot
}

func celsius(c float64) float64 { return c + 273.15 }

func TestCheckValues(t *testing.T) {
	data, err := os.ReadFile("testdata/check_values.json")
	if err != nil {
		t.Fatal(err)
	}
	var values []checkValue
	if err := json.Unmarshal(data, &values); err != nil {
		t.Fatal(err)
	}
	done := map[string]bool{}
	for _, c := range values {
		t.Run(c.ID, func(t *testing.T) {
			handler, ok := checks[c.ID]
			if !ok {
				t.Fatalf("no handler for %s (%s)", c.ID, c.Quantity)
			}
			got := handler(t, c)
			t.Logf("%s %s: got %.12g, expected %.12g %s; source: %s (seen: %t)", c.ID, c.Quantity, got, c.Expected, c.Unit, c.Source, c.Seen)
			if !(math.Abs(got-c.Expected) <= c.Tolerance.Abs+c.Tolerance.Rel*math.Abs(c.Expected)) {
				t.Errorf("got %.12g, expected %.12g %s within %+v", got, c.Expected, c.Unit, c.Tolerance)
			}
		})
		done[c.ID] = true
	}
	for id := range checks {
		if !done[id] {
			t.Errorf("handler %s has no entry", id)
		}
	}
}
