package airflow

import (
	"testing"
	"time"
)

// invented is a system of an invented house that draws at four places under two
// slabs: tees where three of its legs meet, free junctions below.
func invented(t testing.TB) System {
	t.Helper()
	run, side := Join{Kind: JoinRun, Angle: 90}, Join{Kind: JoinSide, Angle: 90}
	point := func(name string, s *Soil, join Join, pipe ...Segment) Branch {
		return Branch{Name: name, Soil: s, Join: join, Segments: pipe}
	}
	sweep, sharp := elbow(Elbow90Sweep, 3), elbow(Elbow90Sharp, 3)
	west := Branch{
		Name: "west", Join: run, Segments: []Segment{plastic("west-run", 3, 18)},
		Tributaries: []Branch{
			point("nw", soil(t, 18, 0.9, 1.3), run, plastic("nw-up", 3, 7, inlet, sweep), plastic("nw-run", 3, 12)),
			point("sw", soil(t, 22, 0.8, 1.5), side, plastic("sw-up", 3, 7, inlet, sharp), plastic("sw-run", 3, 8, elbow(Elbow45Sweep, 3).Times(2))),
		},
	}
	trunk := Branch{
		Name: "trunk", Segments: []Segment{plastic("trunk-run", 4, 10)},
		Tributaries: []Branch{west, point("e", soil(t, 30, 0.7, 1.7), side, plastic("e-up", 3, 7, inlet, sweep), plastic("e-run", 3, 6))},
	}
	added := point("add", soil(t, 12, 1.1, 1.1), Join{}, plastic("add-up", 2, 9, inlet, elbow(Elbow90Sweep, 2), Fitting{K: 2.5}), plastic("add-run", 3, 14))
	return System{
		Suction: Branch{
			Name: "main", Tributaries: []Branch{trunk, added},
			Segments: []Segment{plastic("main-up", 4, 16, elbow(Elbow90Sweep, 4).Times(2))},
		},
		Discharge: []Segment{plastic("stack", 4, 8)},
	}
}

// gasAt is what pipe holds at an altitude in m.
func gasAt(t testing.TB, altitude float64) Air {
	t.Helper()
	pressure, err := StationPressure(altitude)
	if err != nil {
		t.Fatal(err)
	}
	gas, err := SoilGas(pressure)
	if err != nil {
		t.Fatal(err)
	}
	return gas
}

// BenchmarkRecord is what the record of one house asks of this package, by call
// and altogether: where fan and ground agree, what the gauge says, the state at
// the flow that it says, and five points of the system's curve. The metric
// x-colebrook is the time over that of solving the Colebrook-White equation once,
// in the same run: it means the same on a machine that is busy or slow.
func BenchmarkRecord(b *testing.B) {
	system, gas, fan := invented(b), gasAt(b, 1600*foot), bigFan(b)
	tail := System{Suction: Branch{Name: "tail", Segments: system.Suction.Segments}, Discharge: system.Discharge}
	whole, bare := network(b, system), network(b, tail)
	points := make([]CurvePoint, len(fan.points))
	copy(points, fan.points)
	last, _ := fan.Last()
	flows := make([]float64, 5)
	for i := range flows {
		flows[i] = last.Flow / float64(int(16)>>i)
	}
	build := func(s System) func() error {
		return func() error { _, err := NewNetwork(s, gas); return err }
	}
	steps := []struct {
		name string
		run  func() error
	}{
		{"curve", func() error { _, err := NewFanCurve(points, CurveOptions{}); return err }},
		{"network", build(system)},
		{"tail", build(tail)},
		{"operate", func() error { _, err := Operate(fan, whole); return err }},
		{"gauge", func() error {
			_, err := bare.FlowFromGauge(fan, Tap{Segment: "main-up"}, 1.25*inchOfWater, 0)
			return err
		}},
		{"state", func() error { _, err := whole.At(108 * cfm); return err }},
		{"statics", func() error { _, err := whole.FanStatics(flows); return err }},
	}
	for _, s := range steps {
		b.Run(s.name, func(b *testing.B) { measure(b, s.run) })
	}
	b.Run("all", func(b *testing.B) {
		measure(b, func() error {
			for _, s := range steps {
				if err := s.run(); err != nil {
					return err
				}
			}
			return nil
		})
	})
}

func measure(b *testing.B, once func() error) {
	unit := yardstick()
	b.ReportAllocs()
	for b.Loop() {
		if err := once(); err != nil {
			b.Fatal(err)
		}
	}
	unit = (unit + yardstick()) / 2
	b.ReportMetric(float64(b.Elapsed())/float64(b.N)/unit, "x-colebrook")
}

var sink float64

// yardstick is the time in ns that a Colebrook-White friction factor takes.
func yardstick() float64 {
	const times = 10000
	start := time.Now()
	for range times {
		sink = colebrook(2e4, 2e-5)
	}
	return float64(time.Since(start)) / times
}
