package geometry

import (
	"math"
	"testing"
)

const inch = 0.0254 // m, exact

// ANSI/AARST SGM-SF 2017 (12/20) 6.2.2, worked case 15 and a 16 ft run: 1/8 in
// per ft asks 1.5 in of 12 ft and 2 in of 16 ft.
func TestFalls(t *testing.T) {
	slope := inch / 8 / foot
	run := []Segment{{12 * foot, 1.25 * inch}, {16 * foot, 2 * inch}, {9 * foot, 9 * foot}, {foot, -inch}}
	each, whole, err := falls(run, slope)
	if err != nil {
		t.Fatal(err)
	}
	for i, want := range []fall{{1.5 * inch, 1.25 * inch}, {2 * inch, 2 * inch}, {9 * inch / 8, 9 * foot}, {inch / 8, -inch}} {
		if !near(each[i].Required, want.Required, 1e-15) || each[i].Actual != want.Actual {
			t.Errorf("segment %d: %+v, want %+v", i, each[i], want)
		}
	}
	if !near(whole.Required, 38*inch/8, 1e-15) || !near(whole.Actual, 2.25*inch+9*foot, 1e-12) {
		t.Errorf("whole run: %+v", whole)
	}
	if _, _, err := falls(run, -slope); err == nil {
		t.Error("a negative slope was accepted")
	}
}

func TestLowPoints(t *testing.T) {
	for _, c := range []struct {
		name string
		run  []Segment
		want []LowPoint
	}{
		{"rising all the way", []Segment{{3, 0.1}, {2, 2}, {1, 0}, {2, 1}}, nil},
		{"falling to the open end", []Segment{{3, 0.1}, {2, -0.1}}, nil},
		{"falling to the soil end and up from it", []Segment{{1, 0}, {2, 1}}, nil},
		{"one sag, lower rim upstream", []Segment{{2, 1}, {3, -0.2}, {4, 3}}, []LowPoint{{1, 5, 0.2}}},
		{"one sag, lower rim downstream", []Segment{{2, 1}, {3, -0.2}, {4, 0.1}, {1, -0.5}}, []LowPoint{{1, 5, 0.1}}},
		{"spills over the soil end", []Segment{{3, -0.3}, {4, 3}}, []LowPoint{{0, 3, 0.3}}},
		{"level bottom", []Segment{{2, 1}, {3, -0.2}, {1, 0}, {4, 3}}, []LowPoint{{1, 5, 0.2}}},
		{"level step on the way down", []Segment{{2, 1}, {3, -0.2}, {1, 0}, {1, -0.1}, {4, 3}}, []LowPoint{{3, 7, 0.3}}},
		{"a step up by rounding only", []Segment{{2, 1}, {3, -0.2}, {1, 1e-15}, {1, -0.1}, {4, 3}}, []LowPoint{{3, 7, 0.3}}},
		{"level to the open end", []Segment{{2, 1}, {3, -0.2}, {1, 0}}, nil},
		{"two sags under one rim", []Segment{{5, 1}, {2, -0.5}, {2, 0.2}, {2, -0.1}, {5, 2}},
			[]LowPoint{{1, 7, 0.5}, {3, 11, 0.4}}},
		{"two sags apart", []Segment{{5, 1}, {2, -0.5}, {2, 0.7}, {2, -0.1}, {5, 2}},
			[]LowPoint{{1, 7, 0.5}, {3, 11, 0.1}}},
		{"only rounding", []Segment{{1, 0.1}, {1, 0.2}, {1, -0.3}, {1, 0.1}, {1, -0.1}}, []LowPoint{{2, 3, 0.1}}},
		{"rounding alone makes no depth", []Segment{{1, 0.3}, {1, 0.1 + 0.2 - 0.3 - 1e-16}, {1, -1e-16}, {1, 0.5}}, nil},
	} {
		got, err := LowPoints(c.run)
		if err != nil {
			t.Errorf("%s: %v", c.name, err)
			continue
		}
		same := len(got) == len(c.want)
		for i := 0; same && i < len(got); i++ {
			same = got[i].After == c.want[i].After && near(got[i].Along, c.want[i].Along, 1e-12) && near(got[i].Depth, c.want[i].Depth, 1e-12)
		}
		if !same {
			t.Errorf("%s: %+v, want %+v", c.name, got, c.want)
		}
	}
}

func TestRunRefusals(t *testing.T) {
	for name, run := range map[string][]Segment{
		"no segment":        nil,
		"negative length":   {{-1, 0}},
		"no number":         {{1, math.NaN()}},
		"rises over length": {{1, 1.1}},
		"falls over length": {{1, -1.1}},
	} {
		if _, err := LowPoints(run); err == nil {
			t.Errorf("%s: low points found", name)
		}
		if _, _, err := falls(run, 0.01); err == nil {
			t.Errorf("%s: falls found", name)
		}
	}
}
