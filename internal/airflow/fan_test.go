package airflow

import (
	"errors"
	"math"
	"strings"
	"testing"
)

func TestFanCurveNamesTheBadPoint(t *testing.T) {
	for _, c := range []struct {
		name   string
		points []CurvePoint
		index  int
		says   string
	}{
		{"rises", []CurvePoint{{0, 300}, {0.02, 250}, {0.04, 260}, {0.06, 0}}, 2, "rises"},
		{"out of order", []CurvePoint{{0, 300}, {0.04, 250}, {0.02, 200}}, 2, "rising order"},
		{"twice the same flow", []CurvePoint{{0, 300}, {0, 250}}, 1, "rising order"},
		{"negative flow", []CurvePoint{{-0.01, 300}, {0, 250}}, 0, "not a flow"},
		{"negative pressure", []CurvePoint{{0, 300}, {0.02, -1}}, 1, "not a flow"},
		{"not a number", []CurvePoint{{0, 300}, {0.02, math.NaN()}}, 1, "not a flow"},
		{"infinite", []CurvePoint{{0, 300}, {math.Inf(1), 0}}, 1, "not a flow"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := NewFanCurve(c.points, CurveOptions{})
			var bad *CurvePointError
			if !errors.As(err, &bad) || bad.Index != c.index || !strings.Contains(err.Error(), c.says) {
				t.Errorf("error %v", err)
			}
		})
	}
	for _, o := range []CurveOptions{{Density: -1}, {Density: math.NaN()}, {Rating: 7}} {
		if _, err := NewFanCurve([]CurvePoint{{0, 300}, {0.02, 0}}, o); err == nil {
			t.Errorf("options %+v, no error", o)
		}
	}
	for _, points := range [][]CurvePoint{nil, {{0, 300}}} {
		if _, err := NewFanCurve(points, CurveOptions{}); err == nil {
			t.Errorf("%d points, no error", len(points))
		}
	}
}

func TestStallDipKeepsTheFallingPart(t *testing.T) {
	c, err := NewFanCurve([]CurvePoint{{0, 300}, {0.01, 240}, {0.02, 280}, {0.04, 200}, {0.06, 0}}, CurveOptions{StallDip: true})
	if err != nil {
		t.Fatal(err)
	}
	if first, shutOff := c.First(); first != (CurvePoint{0.02, 280}) || shutOff {
		t.Errorf("first point %+v, shut-off %t", first, shutOff)
	}
	var off *CurveRangeError
	if _, _, err := c.Pressure(0.015); !errors.As(err, &off) || off.Side != AboveShutOff || off.Measured {
		t.Errorf("left of the peak: %v", err)
	}
	// A fan that only rises has no part to work in.
	if _, err := NewFanCurve([]CurvePoint{{0, 200}, {0.02, 300}}, CurveOptions{StallDip: true}); err == nil {
		t.Error("rising curve, no error")
	}
}

func TestFanCurveStaysOnItsPoints(t *testing.T) {
	c := bigFan(t)
	var off *CurveRangeError
	if _, _, err := c.Pressure(196 * cfm); !errors.As(err, &off) || off.Side != BeyondFreeDelivery || !off.Measured {
		t.Errorf("past free delivery: %v", err)
	}
	if _, err := c.Flow(2.41 * inchOfWater); !errors.As(err, &off) || off.Side != AboveShutOff || !off.Measured {
		t.Errorf("above shut-off: %v", err)
	}
	part, err := NewFanCurve([]CurvePoint{{0.01, 300}, {0.03, 100}}, CurveOptions{})
	if err != nil {
		t.Fatal(err)
	}
	if _, err := part.Flow(50); !errors.As(err, &off) || off.Side != BeyondFreeDelivery || off.Measured || !strings.Contains(err.Error(), "recorded") {
		t.Errorf("below the last point: %v", err)
	}
	for _, x := range []float64{math.NaN(), math.Inf(1), -1} {
		if _, _, err := c.Pressure(x); err == nil {
			t.Errorf("flow %g, no error", x)
		}
		if _, err := c.Flow(x); err == nil {
			t.Errorf("pressure %g, no error", x)
		}
	}
}

func TestFanCurveFallsAndInverts(t *testing.T) {
	for _, linear := range []bool{false, true} {
		points := []CurvePoint{{0, 600}, {0.01, 590}, {0.02, 400}, {0.05, 395}, {0.06, 100}, {0.08, 20}}
		c, err := NewFanCurve(points, CurveOptions{Linear: linear})
		if err != nil {
			t.Fatal(err)
		}
		c = c.AtDensity(1.1)
		previous := math.Inf(1)
		for q := 0.0; q <= 0.08; q += 1e-4 {
			p, slope, err := c.Pressure(q)
			if err != nil {
				t.Fatal(err)
			}
			if p >= previous || slope > 0 {
				t.Fatalf("pressure %g Pa, slope %g at %g m3/s", p, slope, q)
			}
			previous = p
			back, err := c.Flow(p)
			if err != nil || math.Abs(back-q) > 1e-9 {
				t.Fatalf("%g m3/s came back as %g: %v", q, back, err)
			}
			if h := 1e-8; q > h && q+h < 0.08 && !linear {
				above, _, _ := c.Pressure(q + h)
				below, _, _ := c.Pressure(q - h)
				if want := (above - below) / (2 * h); math.Abs(slope-want) > 1e-3*math.Abs(want)+1 {
					t.Fatalf("slope %g at %g m3/s, expected %g", slope, q, want)
				}
			}
		}
		for _, p := range points {
			if got, _, err := c.Pressure(p.Flow); err != nil || math.Abs(got-p.Pressure*1.1/StandardDensity) > 1e-9 {
				t.Errorf("at a recorded point %g Pa: %v", got, err)
			}
		}
	}
}

func TestLevelStretchIsAmbiguous(t *testing.T) {
	c, err := NewFanCurve([]CurvePoint{{0, 300}, {0.01, 200}, {0.02, 200}, {0.03, 200}, {0.04, 0}}, CurveOptions{})
	if err != nil {
		t.Fatal(err)
	}
	if _, err := c.Flow(200); err == nil || !strings.Contains(err.Error(), "0.01 to 0.03") {
		t.Errorf("level pressure: %v", err)
	}
	least, most, err := c.FlowBand(200, 0)
	if err != nil || math.Abs(least-0.01) > 1e-9 || math.Abs(most-0.03) > 1e-9 {
		t.Errorf("band %g to %g m3/s: %v", least, most, err)
	}
}

func TestFlowBandWidensTowardsShutOff(t *testing.T) {
	c := bigFan(t)
	width := func(p float64) float64 {
		least, most, err := c.FlowBand(p*inchOfWater, 0.02*inchOfWater)
		if err != nil {
			t.Fatal(err)
		}
		q, err := c.Flow(p * inchOfWater)
		if err != nil || q < least || q > most {
			t.Errorf("%g in of water: %g m3/s outside %g to %g: %v", p, q, least, most, err)
		}
		return (most - least) / cfm
	}
	if near, far := width(2.39), width(1.5); near < 3*far {
		t.Errorf("band of %g cfm near shut-off, %g at mid curve", near, far)
	}
	if _, _, err := c.FlowBand(700, 10); err == nil {
		t.Error("band above shut-off, no error")
	}
	if least, _, err := c.FlowBand(2.41*inchOfWater, 0.02*inchOfWater); err != nil || least != 0 {
		t.Errorf("band across shut-off starts at %g: %v", least, err)
	}
	if _, _, err := c.FlowBand(100, -1); err == nil {
		t.Error("negative error, no error")
	}
}
