package airflow

import (
	"errors"
	"fmt"
	"math"
	"math/rand/v2"
	"reflect"
	"strings"
	"testing"
)

func TestRandomTreesSettle(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	for i := range 1000 {
		count := 0
		n := network(t, System{Suction: randomTree(r, 3, &count), Discharge: []Segment{plastic("stack", 4, 20)}})
		for _, q := range []float64{0.01 * cfm, cfm, 60 * cfm, 300 * cfm} {
			s, err := n.At(q)
			if err != nil {
				t.Fatalf("tree %d of %d branches: %v", i, count, err)
			}
			var sum float64
			for _, p := range s.Points {
				sum += p.Flow
			}
			if math.Abs(sum-q) > 1e-8*q || s.Imbalance > 1e-6*(1e-3+s.Suction) {
				t.Fatalf("tree %d at %g m3/s: points draw %g, junctions differ by %g of %g Pa", i, q, sum, s.Imbalance, s.Suction)
			}
		}
	}
}

// However the flows are guessed, they settle alike.
func TestFlowsDoNotDependOnTheGuess(t *testing.T) {
	r := rand.New(rand.NewPCG(9, 10))
	for i := range 500 {
		count := 0
		n := network(t, System{Suction: randomTree(r, 1+i%3, &count)})
		for _, q := range []float64{cfm, 60 * cfm, 300 * cfm} {
			guessed, wild := n.start(q), n.start(q)
			for k := range wild.branches {
				wild.branches[k].flow *= 0.2 + r.Float64()
			}
			if err := errors.Join(n.split(guessed, q), n.split(wild, q)); err != nil {
				t.Fatalf("tree %d: %v", i, err)
			}
			for k := range wild.branches {
				if a, b := guessed.branches[k].flow, wild.branches[k].flow; math.Abs(a-b) > 1e-9*q {
					t.Errorf("tree %d at %g m3/s: branch %d carries %g or %g", i, q, k, a, b)
				}
			}
		}
	}
}

func TestStateAddsUp(t *testing.T) {
	n := network(t, fourPoints(t))
	s, err := n.At(90 * cfm)
	if err != nil {
		t.Fatal(err)
	}
	flows := map[string]float64{}
	for _, p := range s.Segments {
		flows[p.Name] = p.Flow
		if want := p.Flow / plastic("", 4, 1).Bore.Area; strings.HasSuffix(p.Name, "main") && p.Velocity != want {
			t.Errorf("%s: %g m/s, expected %g", p.Name, p.Velocity, want)
		}
	}
	near := func(what string, got, want float64) {
		t.Helper()
		if math.Abs(got-want) > 1e-8*math.Abs(want) {
			t.Errorf("%s: %g, expected %g", what, got, want)
		}
	}
	near("north main", flows["north-main"], flows["n1-pipe"]+flows["n2-pipe"])
	near("riser", flows["riser"], 90*cfm)
	near("stack", flows["stack"], 90*cfm)
	if s.Imbalance > 1e-6 {
		t.Errorf("junctions differ by %g Pa", s.Imbalance)
	}
	near("fan total", s.FanTotal, s.Suction+s.Discharge)
	end := s.Segments[len(s.Segments)-1]
	near("fan static", s.FanStatic, s.FanTotal-end.VelocityPressure)
	// An open end of even bore has no static pressure left.
	if math.Abs(end.StaticSuction) > 1e-9 {
		t.Errorf("static suction at the open end is %g Pa", end.StaticSuction)
	}
	riser := s.Segments[len(s.Segments)-2]
	near("static suction at the fan", riser.StaticSuction, s.Suction+riser.VelocityPressure)
}

// The loss of one pipe is the plain formula's, and its parts end up where the
// state says.
func TestOnePipeByHand(t *testing.T) {
	d := 3.068 * inch
	q := 60 * cfm
	n := network(t, System{Suction: Branch{Name: "pit", Soil: soil(t, 50, 0.6, 1.5), Segments: []Segment{
		{Name: "pipe", Bore: Round(d), Length: 10, Roughness: 1.5e-6, Fittings: []Fitting{{K: 0.5}, {K1: 800}, {Length: 2}}},
	}}})
	s, err := n.At(q)
	if err != nil {
		t.Fatal(err)
	}
	v := q / (math.Pi / 4 * d * d)
	re := StandardAir.Density * v * d / StandardAir.Viscosity
	f, _ := churchill(re, 1.5e-6/d)
	pv := StandardAir.Density * v * v / 2
	loss := pv * (f*12/d + 0.5 + 800/re)
	pit := 0.6 * inchOfWater * math.Pow(60.0/50, 1.5)
	got := s.Segments[0]
	for _, c := range []struct {
		what      string
		got, want float64
	}{
		{"loss", got.Loss, loss}, {"Reynolds", got.Reynolds, re}, {"friction", got.Friction, f},
		{"velocity", got.Velocity, v}, {"pit", s.Points[0].Suction, pit}, {"soil", s.Soil, pit},
		{"tap", got.StaticSuction, pit + loss + pv}, {"fan static", s.FanStatic, pit + loss},
		{"fan total", s.FanTotal, pit + loss + pv},
	} {
		if math.Abs(c.got-c.want) > 1e-12*c.want {
			t.Errorf("%s: %.12g, expected %.12g", c.what, c.got, c.want)
		}
	}
}

// The formula as printed: S. W. Churchill, Chemical Engineering, 7 November 1977.
func TestChurchillIsAsPrinted(t *testing.T) {
	for _, relative := range []float64{0, 2e-5, 1e-3, 0.05} {
		for re := 1.0; re < 1e8; re *= 1.01 {
			a := math.Pow(-2.457*math.Log(math.Pow(7/re, 0.9)+0.27*relative), 16)
			b := math.Pow(37530/re, 16)
			want := 8 * math.Pow(math.Pow(8/re, 12)+math.Pow(a+b, -1.5), 1.0/12)
			if f, _ := churchill(re, relative); math.Abs(f-want) > 1e-13*want {
				t.Errorf("Re %g, roughness %g: %.16g, expected %.16g", re, relative, f, want)
			}
		}
	}
}

func TestFrictionSlopeIsItsDerivative(t *testing.T) {
	for _, relative := range []float64{0, 2e-5, 1e-3, 0.02} {
		for re := 0.5; re < 1e6; re *= 1.07 {
			_, slope := churchill(re, relative)
			h := 1e-6 * re
			above, _ := churchill(re+h, relative)
			below, _ := churchill(re-h, relative)
			if want := (above - below) / (2 * h); math.Abs(slope-want) > 1e-5*math.Abs(want)+1e-9/re {
				t.Errorf("Re %g, roughness %g: slope %g, expected %g", re, relative, slope, want)
			}
		}
	}
}

func TestLossRisesWithFlowAndLength(t *testing.T) {
	for _, nominal := range []float64{2, 3, 4, 6} {
		for _, roughness := range []float64{0, 1.5e-6, 1.5e-4} {
			previous, longer := 0.0, 0.0
			for q := 1e-6; q < 0.3; q *= 1.02 {
				s := plastic("pipe", nominal, 20, Fitting{K: 1})
				s.Roughness = roughness
				loss := at(t, s, q)
				if loss <= previous {
					t.Fatalf("%g in: loss falls to %g Pa at %g m3/s", nominal, loss, q)
				}
				previous = loss
				s.Length *= 1.01
				if longer = at(t, s, q); longer <= loss {
					t.Fatalf("%g in: longer pipe loses %g Pa instead of %g", nominal, longer, loss)
				}
			}
		}
	}
}

func at(t *testing.T, s Segment, q float64) float64 {
	t.Helper()
	n := network(t, System{Suction: Branch{Name: "pit", Soil: &Soil{0, 1}, Segments: []Segment{s}}})
	state, err := n.At(q)
	if err != nil {
		t.Fatal(err)
	}
	return state.FanStatic
}

func TestSystemCurveRises(t *testing.T) {
	n := network(t, fourPoints(t))
	previous := -1.0
	for q := 0.0; q < 400*cfm; q += 2 * cfm {
		s, err := n.At(q)
		if err != nil {
			t.Fatal(err)
		}
		if s.FanStatic <= previous {
			t.Fatalf("system curve falls to %g Pa at %g m3/s", s.FanStatic, q)
		}
		previous = s.FanStatic
	}
}

// Many flows at once say what each says alone, to within what settling leaves.
func TestFanStatics(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 6))
	for i := range 200 {
		count := 0
		n := network(t, System{Suction: randomTree(r, 2, &count), Discharge: []Segment{plastic("stack", 4, 20)}})
		flows := []float64{10 * cfm, 20 * cfm, 40 * cfm, 80 * cfm, 160 * cfm, 15 * cfm}
		pressures, err := n.FanStatics(flows)
		if err != nil {
			t.Fatalf("tree %d: %v", i, err)
		}
		for k, flow := range flows {
			s, err := n.At(flow)
			if err != nil {
				t.Fatal(err)
			}
			if math.Abs(pressures[k]-s.FanStatic) > 1e-9*s.FanStatic {
				t.Fatalf("tree %d at %g m3/s: %g Pa among others, %g Pa alone", i, flow, pressures[k], s.FanStatic)
			}
		}
	}
	n := network(t, fourPoints(t))
	if _, err := n.FanStatics([]float64{cfm, -cfm}); err == nil {
		t.Error("a flow below zero has a pressure")
	}
}

func TestOperatingPointLiesOnBothCurves(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	fan := bigFan(t)
	for i := range 500 {
		n, p := operatedTree(t, r, fan)
		onFan, _, err := fan.Pressure(p.Flow)
		if err != nil {
			t.Fatal(err)
		}
		s, err := n.At(p.Flow)
		if err != nil {
			t.Fatal(err)
		}
		if math.Abs(onFan-p.Pressure) > 1e-9 || math.Abs(s.FanStatic-p.Pressure) > 1e-5 || math.Abs(p.State().FanStatic-p.Pressure) > 1e-5 {
			t.Errorf("tree %d at %g m3/s: fan %g, system %g, answer %g Pa", i, p.Flow, onFan, s.FanStatic, p.Pressure)
		}
	}
}

func TestMoreSuctionPointsNeverReduceFlow(t *testing.T) {
	fan := bigFan(t)
	main := []Segment{plastic("main-pipe", 4, 40)}
	previous := 0.0
	var legs []Branch
	for i := range 6 {
		name := fmt.Sprintf("p%d", i)
		// The later ones in ever tighter ground.
		legs = append(legs, leg(name, soil(t, 20/float64(1+i*i), 1, 1.3), 15+5*float64(i), Join{}))
		s := System{Suction: Branch{Name: "main", Tributaries: legs, Segments: main}}
		p, err := Operate(fan, network(t, s))
		if err != nil {
			t.Fatal(err)
		}
		if p.Flow < previous {
			t.Errorf("%d points draw %g m3/s, fewer drew %g", i+1, p.Flow, previous)
		}
		previous = p.Flow
	}
}

func TestEqualLegsShareEqually(t *testing.T) {
	legs := []Branch{
		leg("a", soil(t, 30, 0.6, 1.5), 20, Join{}), leg("b", soil(t, 30, 0.6, 1.5), 20, Join{}), leg("c", soil(t, 30, 0.6, 1.5), 20, Join{}),
	}
	s, err := network(t, System{Suction: Branch{Name: "main", Tributaries: legs}}).At(90 * cfm)
	if err != nil {
		t.Fatal(err)
	}
	for _, p := range s.Points {
		if math.Abs(p.Flow-30*cfm) > 1e-9*cfm || math.Abs(p.Suction-0.6*inchOfWater) > 1e-6 {
			t.Errorf("%s draws %g m3/s at %g Pa", p.Name, p.Flow, p.Suction)
		}
	}
}

func TestMissingSoilIsNamed(t *testing.T) {
	s := fourPoints(t)
	s.Suction.Tributaries[0].Tributaries[1].Soil = nil
	s.Suction.Tributaries[1].Tributaries[0].Soil = nil
	n := network(t, s)
	var missing *MissingSoilError
	if _, err := n.At(60 * cfm); !errors.As(err, &missing) || !reflect.DeepEqual(missing.Points, []string{"n2", "s1"}) {
		t.Errorf("At: %v", err)
	}
	if _, err := Operate(bigFan(t), n); !errors.As(err, &missing) {
		t.Errorf("Operate: %v", err)
	}
	if _, err := n.SharedBed().At(60 * cfm); err != nil {
		t.Errorf("shared bed: %v", err)
	}
}

func TestFaultySystemsAreRefused(t *testing.T) {
	sound := func() System { return fourPoints(t) }
	for _, c := range []struct {
		name  string
		fault func(*System)
		says  string
	}{
		{"no bore", func(s *System) { s.Discharge[0].Bore = Round(0) }, `segment "stack": bore`},
		{"not a length", func(s *System) { s.Discharge[0].Length = math.NaN() }, `segment "stack": length`},
		{"rough as its bore", func(s *System) { s.Discharge[0].Roughness = 0.1 }, "roughness"},
		{"negative loss", func(s *System) { s.Discharge[0].Fittings = []Fitting{{K: -1}} }, "fitting 1"},
		{"two of a name", func(s *System) { s.Discharge[0].Name = "riser" }, `two segments are named "riser"`},
		{"no name", func(s *System) { s.Suction.Name = "" }, "a branch has no name"},
		{"soil at a junction", func(s *System) { s.Suction.Soil = &Soil{1, 1} }, "both tributaries and soil"},
		{"negative soil", func(s *System) { s.Suction.Tributaries[0].Tributaries[0].Soil = &Soil{-1, 1} }, `suction point "n1"`},
		{"soil exponent", func(s *System) { s.Suction.Tributaries[0].Tributaries[0].Soil = &Soil{1, 4} }, "exponent 4"},
		{"two runs", func(s *System) { s.Suction.Tributaries[1].Join.Kind = JoinRun }, "one run and one side"},
		{"angle", func(s *System) {
			s.Suction.Tributaries[0].Join.Angle, s.Suction.Tributaries[1].Join.Angle = 20, 20
		}, "outside 30 to 90"},
		{"three in a tee", func(s *System) {
			s.Suction.Tributaries = append(s.Suction.Tributaries, leg("x", &Soil{1, 1}, 5, Join{Kind: JoinSide, Angle: 90}))
		}, "two entries, not 3"},
		{"no pipe", func(s *System) { s.Suction.Tributaries[0].Tributaries[0].Segments = nil }, "no pipe"},
		{"no pipe after a tee", func(s *System) { s.Suction.Segments = nil }, "pipe after it"},
		{"wide side", func(s *System) { s.Suction.Tributaries[1].Segments[0].Bore = Round(0.15) }, "wider than the pipe it joins"},
	} {
		t.Run(c.name, func(t *testing.T) {
			s := sound()
			c.fault(&s)
			if _, err := NewNetwork(s, StandardAir); err == nil || !strings.Contains(err.Error(), c.says) {
				t.Errorf("error %v, expected %q", err, c.says)
			}
		})
	}
	if _, err := NewNetwork(sound(), Air{}); err == nil {
		t.Error("no air, no error")
	}
	n := network(t, sound())
	for _, q := range []float64{-1, math.NaN(), math.Inf(1)} {
		if _, err := n.At(q); err == nil {
			t.Errorf("flow %g, no error", q)
		}
	}
}

func TestScaledFittingsBoundTheFlow(t *testing.T) {
	n := network(t, fourPoints(t))
	fan := bigFan(t)
	flow := func(n *Network) float64 {
		p, err := Operate(fan, n)
		if err != nil {
			t.Fatal(err)
		}
		return p.Flow
	}
	low, usual, high := flow(n.ScaleFittings(FittingsHigh)), flow(n), flow(n.ScaleFittings(FittingsLow))
	if !(low < usual && usual < high) || flow(n.ScaleFittings(1)) != usual {
		t.Errorf("flows %g, %g, %g m3/s", low, usual, high)
	}
}

func BenchmarkOperateFourPoints(b *testing.B) {
	n, fan := network(b, fourPoints(b)), bigFan(b)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := Operate(fan, n); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkBuildAndOperateFourPoints(b *testing.B) {
	s, fan := fourPoints(b), bigFan(b)
	b.ReportAllocs()
	for b.Loop() {
		n, err := NewNetwork(s, StandardAir)
		if err != nil {
			b.Fatal(err)
		}
		if _, err := Operate(fan, n); err != nil {
			b.Fatal(err)
		}
	}
}
