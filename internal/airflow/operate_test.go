package airflow

import (
	"errors"
	"math"
	"math/rand/v2"
	"strings"
	"testing"
)

// Two legs without a tee, worked out by nothing but halving and the plain
// formulas, against the solver.
func TestTwoLegsByHalving(t *testing.T) {
	fan := bigFan(t)
	a, b := soil(t, 30, 0.9, 1.2), soil(t, 55, 0.5, 1.8)
	system := System{
		Suction: Branch{
			Name: "main", Tributaries: []Branch{leg("a", a, 25, Join{}), leg("b", b, 60, Join{})},
			Segments: []Segment{plastic("main-pipe", 4, 30)},
		},
		Discharge: []Segment{plastic("stack", 3, 15)},
	}
	got, err := Operate(fan, network(t, system))
	if err != nil {
		t.Fatal(err)
	}

	pipe := func(s Segment, q float64) float64 {
		d := s.Bore.Hydraulic
		v := q / s.Bore.Area
		f, _ := churchill(StandardAir.Density*v*d/StandardAir.Viscosity, s.Roughness/d)
		length, k := s.Length, 0.0
		for _, x := range s.Fittings {
			length += x.Length
			k += x.K
		}
		return StandardAir.Density * v * v / 2 * (f*length/d + k)
	}
	halve := func(lo, hi float64, tooLow func(float64) bool) float64 {
		for range 200 {
			if mid := (lo + hi) / 2; tooLow(mid) {
				lo = mid
			} else {
				hi = mid
			}
		}
		return lo
	}
	legFlow := func(i int, s *Soil, suction float64) float64 {
		return halve(1e-9, 0.2, func(q float64) bool {
			return s.Coefficient*math.Pow(q, s.Exponent)+pipe(system.Suction.Tributaries[i].Segments[0], q) < suction
		})
	}
	total := func(suction float64) float64 { return legFlow(0, a, suction) + legFlow(1, b, suction) }
	// With even bore from fan to open end, fan static pressure is the junction's
	// suction and the losses of main and stack.
	suction := halve(0, 600, func(s float64) bool {
		q := total(s)
		p, _, err := fan.Pressure(q)
		return err == nil && s+pipe(system.Suction.Segments[0], q)+pipe(system.Discharge[0], q) < p
	})
	if want := total(suction); math.Abs(got.Flow-want) > 1e-7*want {
		t.Errorf("flow %.10g m3/s, expected %.10g", got.Flow, want)
	}
	if want := legFlow(0, a, suction); math.Abs(got.State().Points[0].Flow-want) > 1e-7*want {
		t.Errorf("leg a draws %.10g m3/s, expected %.10g", got.State().Points[0].Flow, want)
	}
}

// The quick way to the operating point ends where the sure one does, and is the
// one taken.
func TestMeetingEndsWhereTheSearchDoes(t *testing.T) {
	r := rand.New(rand.NewPCG(7, 8))
	const trees = 500
	slow := 0
	for i := range trees {
		count := 0
		n := network(t, System{Suction: randomTree(r, i%4, &count), Discharge: []Segment{plastic("stack", 4, 20)}})
		_, quick, ok := n.meet(bigFan(t))
		if !ok {
			slow++
			continue
		}
		_, sure, err := n.search(bigFan(t))
		if err != nil || math.Abs(quick-sure) > 1e-9*sure {
			t.Errorf("tree %d: %g m3/s, by search %g: %v", i, quick, sure, err)
		}
	}
	if slow > trees/100 {
		t.Errorf("%d of %d trees need the search", slow, trees)
	}
}

func TestOperateSaysWhichSide(t *testing.T) {
	part, err := NewFanCurve([]CurvePoint{{20 * cfm, 300}, {60 * cfm, 200}}, CurveOptions{})
	if err != nil {
		t.Fatal(err)
	}
	pipe := []Segment{plastic("pipe", 4, 20)}
	for _, c := range []struct {
		name string
		soil *Soil
		side CurveSide
	}{
		{"open pit", soil(t, 60, 0.1, 1), BeyondFreeDelivery},
		{"clay", soil(t, 5, 2, 1), AboveShutOff},
	} {
		_, err := Operate(part, network(t, System{Suction: Branch{Name: "pit", Soil: c.soil, Segments: pipe}}))
		var off *CurveRangeError
		if !errors.As(err, &off) || off.Side != c.side || off.Measured {
			t.Errorf("%s: %v", c.name, err)
		}
	}
	// A complete curve always crosses, however tight or open the ground.
	for _, coefficient := range []float64{0, 1, 1e12} {
		n := network(t, System{Suction: Branch{Name: "pit", Soil: &Soil{coefficient, 1}, Segments: pipe}})
		if p, err := Operate(bigFan(t), n); err != nil || p.Flow < 0 {
			t.Errorf("soil %g: %+v, %v", coefficient, p, err)
		}
	}
}

func TestThinAirGivesLessPressure(t *testing.T) {
	high := gasAt(t, 5000*foot)
	low, err := SoilGas(SeaLevelPressure)
	if err != nil {
		t.Fatal(err)
	}
	flow := func(air Air) *OperatingPoint {
		n, err := NewNetwork(fourPoints(t), air)
		if err != nil {
			t.Fatal(err)
		}
		p, err := Operate(bigFan(t), n)
		if err != nil {
			t.Fatal(err)
		}
		return p
	}
	a, b := flow(low), flow(high)
	if !(b.Pressure < 0.9*a.Pressure && b.Flow < a.Flow) {
		t.Errorf("sea level %g m3/s at %g Pa, 5000 ft %g m3/s at %g Pa", a.Flow, a.Pressure, b.Flow, b.Pressure)
	}
}

// Total and static rating of one fan must give one operating point.
func TestRatingsAgree(t *testing.T) {
	n := network(t, fourPoints(t))
	stack := plastic("", 4, 1).Bore
	var static, total []CurvePoint
	for q := 0.0; q <= 200*cfm; q += cfm {
		v := q / stack.Area
		p := 600 * (1 - q/(200*cfm))
		static = append(static, CurvePoint{q, p})
		total = append(total, CurvePoint{q, p + StandardDensity*v*v/2})
	}
	a, err := NewFanCurve(static, CurveOptions{})
	if err != nil {
		t.Fatal(err)
	}
	b, err := NewFanCurve(total, CurveOptions{Rating: TotalPressure})
	if err != nil {
		t.Fatal(err)
	}
	p, err := Operate(a, n)
	if err != nil {
		t.Fatal(err)
	}
	r, err := Operate(b, n)
	if err != nil {
		t.Fatal(err)
	}
	if math.Abs(p.Flow-r.Flow) > 1e-5*p.Flow {
		t.Errorf("static rating %g m3/s, total rating %g", p.Flow, r.Flow)
	}
}

// What a gauge shows at the operating point leads back to it, wherever it taps.
func TestGaugeLeadsBackToTheFlow(t *testing.T) {
	n, fan := network(t, fourPoints(t)), bigFan(t)
	p, err := Operate(fan, n)
	if err != nil {
		t.Fatal(err)
	}
	readings := map[Tap]float64{}
	for _, s := range p.State().Segments {
		if s.Name != "stack" {
			readings[Tap{Segment: s.Name}] = s.StaticSuction
		}
	}
	for _, s := range p.State().Points {
		readings[Tap{Point: s.Name}] = s.Suction
	}
	for tap, reading := range readings {
		g, err := n.FlowFromGauge(fan, tap, reading, 2)
		if err != nil {
			t.Errorf("%+v: %v", tap, err)
			continue
		}
		if math.Abs(g.Flow-p.Flow) > 1e-6*p.Flow || math.Abs(g.Pressure-p.Pressure) > 1e-3 || !(g.Least < g.Flow && g.Flow < g.Most) {
			t.Errorf("%+v reading %g Pa: %+v, expected %g m3/s", tap, reading, g, p.Flow)
		}
		pits, err := n.PitSuctions(tap, reading, p.Flow)
		if err != nil {
			t.Fatal(err)
		}
		for i, pit := range pits {
			if want := p.State().Points[i]; math.Abs(pit.Suction-want.Suction) > 1e-4 {
				t.Errorf("%+v: pit %s at %g Pa, expected %g", tap, pit.Name, pit.Suction, want.Suction)
			}
		}
	}
}

func TestGaugeWithoutSoil(t *testing.T) {
	s := fourPoints(t)
	s.Suction.Tributaries[0].Tributaries[0].Soil = nil
	n, fan := network(t, s), bigFan(t)
	if g, err := n.FlowFromGauge(fan, Tap{Segment: "basement"}, 1.5*inchOfWater, 0); err != nil || g.Flow <= 0 || g.Least != g.Most {
		t.Errorf("tap past the junctions: %+v, %v", g, err)
	}
	var missing *MissingSoilError
	if _, err := n.FlowFromGauge(fan, Tap{Segment: "n2-pipe"}, 1.5*inchOfWater, 0); !errors.As(err, &missing) {
		t.Errorf("tap in a leg: %v", err)
	}
	if _, err := n.PitSuctions(Tap{Segment: "basement"}, 300, 0.03); !errors.As(err, &missing) {
		t.Errorf("pits: %v", err)
	}
	if pits, err := n.SharedBed().PitSuctions(Tap{Segment: "basement"}, 300, 0.03); err != nil || pits[0].Suction >= 300 || math.Abs(pits[0].Suction-pits[3].Suction) > 1e-9 {
		t.Errorf("pits of a shared bed: %+v, %v", pits, err)
	}
}

func TestGaugeMistakesAreErrors(t *testing.T) {
	n, fan := network(t, fourPoints(t)), bigFan(t)
	for _, c := range []struct {
		name    string
		tap     Tap
		reading float64
		says    string
	}{
		{"discharge side", Tap{Segment: "stack"}, 100, "discharge side"},
		{"nowhere", Tap{Segment: "attic"}, 100, "no such place"},
		{"no tap", Tap{}, 100, "no such place"},
		{"not a number", Tap{Segment: "riser"}, math.NaN(), "reading"},
		{"above shut-off", Tap{Segment: "riser"}, 700, "beyond shut-off"},
	} {
		if _, err := n.FlowFromGauge(fan, c.tap, c.reading, 0); err == nil || !strings.Contains(err.Error(), c.says) {
			t.Errorf("%s: %v", c.name, err)
		}
	}
	if _, err := n.FlowFromGauge(fan, Tap{Segment: "riser"}, 100, math.NaN()); err == nil {
		t.Error("error that is not a number, no error")
	}
	if _, err := n.PitSuctions(Tap{Segment: "riser"}, math.Inf(1), 0.03); err == nil {
		t.Error("infinite reading, no error")
	}
}

func TestJudgeGauge(t *testing.T) {
	const shutOff = 1.6
	for _, c := range []struct {
		reading, scale float64 // in of water
		want           GaugeVerdict
	}{
		{-0.01, 2, GaugeReversed},
		{0, 2, GaugeNoSuction},
		{0.029, 2, GaugeNoSuction},
		{0.031, 2, GaugeOpenPipe},
		{0.079, 2, GaugeOpenPipe},
		{0.081, 2, GaugeUsable},
		{1.51, 2, GaugeUsable},
		{1.53, 2, GaugeNoFlow},
		{1.67, 2, GaugeNoFlow},
		{1.69, 2, GaugeAboveShutOff},
		{1, 1, GaugeOverRange},
		{1, 0, GaugeUsable},
		{1.7, 1.7, GaugeAboveShutOff},
	} {
		got, err := JudgeGauge(c.reading*inchOfWater, shutOff*inchOfWater, c.scale*inchOfWater)
		if err != nil || got != c.want {
			t.Errorf("%g in of water: %q, expected %q: %v", c.reading, got, c.want, err)
		}
	}
	for _, bad := range [][3]float64{{math.NaN(), 1, 1}, {1, 0, 1}, {1, math.NaN(), 1}, {1, 1, math.NaN()}, {1, 1, -1}} {
		if v, err := JudgeGauge(bad[0], bad[1], bad[2]); err == nil {
			t.Errorf("%v: %q, no error", bad, v)
		}
	}
}

func TestCompareFlows(t *testing.T) {
	for _, c := range []struct {
		curve, measured float64 // cfm
		want            Agreement
	}{
		{100, 100, Consistent}, {124, 100, Consistent}, {76, 100, Consistent}, {126, 100, LookAgain},
		{149, 100, LookAgain}, {151, 100, Inconsistent}, {20, 12, Consistent}, {23, 12, Inconsistent}, {0, 9, Consistent},
	} {
		if got, err := CompareFlows(c.curve*cfm, c.measured*cfm); err != nil || got != c.want {
			t.Errorf("%g against %g cfm: %q, expected %q: %v", c.curve, c.measured, got, c.want, err)
		}
	}
	if _, err := CompareFlows(math.NaN(), 1); err == nil {
		t.Error("no number, no error")
	}
}

// The common duct constant: 4005 fpm is one inch of water in standard air
// (HVAC texts; exact to the water column's temperature, 0.25 %).
func TestPitot(t *testing.T) {
	if v := VelocityFromPitot(inchOfWater, StandardDensity) / feetPerMinute; math.Abs(v-4005) > 0.0025*4005 {
		t.Errorf("one inch of water is %g fpm", v)
	}
	points := TraversePoints(10)
	for i, p := range points {
		if math.Abs(p+points[9-i]-1) > 1e-15 || i > 0 && p <= points[i-1] {
			t.Errorf("traverse points %v", points)
		}
	}
	for _, n := range []int{0, 1, 7, -2} {
		if TraversePoints(n) != nil {
			t.Errorf("%d points", n)
		}
	}
}

// operatedTree is any pipe and what a fan makes of it.
func operatedTree(t *testing.T, r *rand.Rand, fan *FanCurve) (*Network, *OperatingPoint) {
	t.Helper()
	count := 0
	n := network(t, System{Suction: randomTree(r, 2, &count), Discharge: []Segment{plastic("stack", 4, 20)}})
	p, err := Operate(fan, n)
	if err != nil {
		t.Fatal(err)
	}
	return n, p
}

// Flows sought from the operating point on are those that are found without it,
// however far away.
func TestFlowsFromTheOperatingPoint(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 6))
	fan := bigFan(t)
	for i := range 200 {
		n, p := operatedTree(t, r, fan)
		for _, share := range []float64{0, 0.05, 0.5, 0.99, 1, 1.3, 4} {
			want, err := n.At(share * p.Flow)
			if err != nil {
				t.Fatalf("tree %d: %v", i, err)
			}
			got, err := p.At(share * p.Flow)
			if err != nil {
				t.Fatalf("tree %d from the operating point: %v", i, err)
			}
			for k := range want.Points {
				if a, b := got.Points[k].Flow, want.Points[k].Flow; math.Abs(a-b) > 1e-8*p.Flow {
					t.Errorf("tree %d at %g of %g m3/s: %s draws %g, else %g", i, share, p.Flow, want.Points[k].Name, a, b)
				}
			}
		}
	}
}
