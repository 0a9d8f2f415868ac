package airflow

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"
)

// plastic is a run of smooth Schedule 40 pipe; feet and inches as on site.
func plastic(name string, nominal, feet float64, fittings ...Fitting) Segment {
	bore, _, err := PipeBore(nominal*inch, Schedule40)
	if err != nil {
		panic(err)
	}
	return Segment{Name: name, Bore: bore, Length: feet * foot, Roughness: 1.5e-6, Fittings: fittings}
}

func elbow(kind FittingKind, nominal float64) Fitting {
	f, _, err := NewFitting(kind, nominal*inch, plastic("", nominal, 1).Bore)
	if err != nil {
		panic(err)
	}
	return f
}

func soil(t testing.TB, flow, suction, exponent float64) *Soil {
	t.Helper()
	s, err := SoilThrough(flow*cfm, suction*inchOfWater, exponent)
	if err != nil {
		t.Fatal(err)
	}
	return &s
}

var inlet = Fitting{K: 0.5}

// leg is a 3 in suction leg of some feet with an elbow.
func leg(name string, s *Soil, feet float64, join Join) Branch {
	return Branch{
		Name: name, Soil: s, Join: join,
		Segments: []Segment{plastic(name+"-pipe", 3, feet, inlet, elbow(Elbow90Sweep, 3))},
	}
}

// fourPoints joins two pairs of suction points by tees to one 4 in main.
func fourPoints(t testing.TB) System {
	t.Helper()
	run, side := Join{Kind: JoinRun, Angle: 90}, Join{Kind: JoinSide, Angle: 90}
	north := Branch{
		Name: "north", Join: run,
		Tributaries: []Branch{leg("n1", soil(t, 25, 0.8, 1.4), 22, run), leg("n2", soil(t, 40, 0.5, 1.7), 9, side)},
		Segments:    []Segment{plastic("north-main", 4, 18, elbow(Elbow90Sharp, 4))},
	}
	south := Branch{
		Name: "south", Join: side,
		Tributaries: []Branch{leg("s1", soil(t, 15, 1.1, 1), 30, run), leg("s2", soil(t, 30, 0.7, 1.5), 12, side)},
		Segments:    []Segment{plastic("south-main", 4, 14)},
	}
	return System{
		Suction: Branch{
			Name: "main", Tributaries: []Branch{north, south},
			Segments: []Segment{plastic("basement", 4, 10, elbow(Elbow90Sweep, 4)), plastic("riser", 4, 16)},
		},
		Discharge: []Segment{plastic("stack", 4, 12, UsualMeshGuard)},
	}
}

func bigFan(t testing.TB) *FanCurve {
	t.Helper()
	points := []CurvePoint{{0, 2.4}, {40, 2.25}, {80, 1.95}, {120, 1.5}, {160, 0.85}, {195, 0}}
	for i := range points {
		points[i].Flow *= cfm
		points[i].Pressure *= inchOfWater
	}
	c, err := NewFanCurve(points, CurveOptions{})
	if err != nil {
		t.Fatal(err)
	}
	return c
}

func network(t testing.TB, s System) *Network {
	t.Helper()
	n, err := NewNetwork(s, StandardAir)
	if err != nil {
		t.Fatal(err)
	}
	return n
}

// randomTree builds a system of up to some depth with tees, wyes and free
// junctions.
func randomTree(r *rand.Rand, depth int, count *int) Branch {
	*count++
	name := fmt.Sprintf("b%d", *count)
	sizes := []float64{2, 3, 3, 4, 4, 6}
	b := Branch{Name: name}
	for i := range 1 + r.IntN(3) {
		b.Segments = append(b.Segments, plastic(fmt.Sprintf("%s-%d", name, i), sizes[r.IntN(len(sizes))], 0.5+40*r.Float64(),
			Fitting{K: 2 * r.Float64()}, Fitting{K1: 800 * r.Float64()}, Fitting{Length: 4 * r.Float64()}))
	}
	if depth == 0 || r.IntN(4) == 0 {
		n := 1 + r.Float64()
		reference := (1 + 100*r.Float64()) * cfm
		// From gravel that hardly resists to clay that hardly yields.
		b.Soil = &Soil{math.Pow(10, 4*r.Float64()-1) / math.Pow(reference, n), n}
		if r.IntN(6) == 0 {
			b.Soil = &Soil{0, 1}
		}
		return b
	}
	switch r.IntN(3) {
	case 0: // a tee or wye
		angle := []float64{30, 45, 60, 90}[r.IntN(4)]
		for _, kind := range []JoinKind{JoinRun, JoinSide} {
			child := randomTree(r, depth-1, count)
			child.Join = Join{Kind: kind, Angle: angle}
			end := plastic(child.Name+"-end", 2, 1)
			if main := b.Segments[0].Bore; kind == JoinRun || r.IntN(2) == 0 || end.Bore.Area > main.Area {
				end.Bore = main
			}
			child.Segments = append(child.Segments, end)
			b.Tributaries = append(b.Tributaries, child)
		}
	default:
		for range 2 + r.IntN(3) {
			b.Tributaries = append(b.Tributaries, randomTree(r, depth-1, count))
		}
	}
	return b
}
