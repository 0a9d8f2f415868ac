package airflow

import (
	"math"
	"strings"
	"testing"
)

func TestAirRefusesNonsense(t *testing.T) {
	for _, c := range []struct {
		name string
		err  error
	}{
		{"elevation", second(StationPressure(20000))},
		{"no elevation", second(StationPressure(math.NaN()))},
		{"barometer", second(StationFromSeaLevel(29.92, 0))},
		{"pressure", second(NewAir(1013, 280, 0))},
		{"temperature in C", second(NewAir(101325, 12, 0))},
		{"humidity in percent", second(NewAir(101325, 280, 60))},
		{"soil gas", second(SoilGas(math.NaN()))},
	} {
		if c.err == nil {
			t.Errorf("%s: no error", c.name)
		}
	}
	for i, x := range []float64{
		Density(-1, 280, 0), Density(101325, 0, 0), Density(101325, 280, -1), Viscosity(0),
		SaturationPressure(100), SaturationHumidity(400, 101325), SaturationHumidity(math.NaN(), 101325),
	} {
		if !math.IsNaN(x) {
			t.Errorf("case %d gives %g", i, x)
		}
	}
}

func second[T any](_ T, err error) error { return err }

func TestSeaLevelBarometer(t *testing.T) {
	// A station at 1000 m reads 898.75 hPa when the sea-level figure is 1013.25.
	p, err := StationFromSeaLevel(SeaLevelPressure, 1000)
	if err != nil || math.Abs(p-89875) > 3 {
		t.Errorf("%g Pa: %v", p, err)
	}
	low, err := StationFromSeaLevel(99000, 1000)
	if err != nil || math.Abs(low/p-99000/SeaLevelPressure) > 1e-12 {
		t.Errorf("%g Pa: %v", low, err)
	}
}

func TestMoistAirIsLighter(t *testing.T) {
	gas, err := SoilGas(SeaLevelPressure)
	if err != nil {
		t.Fatal(err)
	}
	dry := Density(SeaLevelPressure, soilTemperature, 0)
	if share := gas.Density / dry; !(share < 1 && share > 0.99) {
		t.Errorf("saturated over dry density %g", share)
	}
	// The branches over ice and water meet at the freezing point.
	if a, b := SaturationPressure(freezing-1e-9), SaturationPressure(freezing); math.Abs(a-b) > 1e-3*b {
		t.Errorf("%g Pa over ice, %g over water", a, b)
	}
}

func TestBores(t *testing.T) {
	b, source, err := PipeBore(0.1016, Schedule40)
	if err != nil || source.Basis != Published || math.Abs(b.Area-math.Pi/4*0.10226*0.10226) > 1e-6 {
		t.Errorf("%+v, %+v, %v", b, source, err)
	}
	// 0.1 m is not written for 4 in, 102 mm is.
	if _, _, err := PipeBore(0.102, Schedule40); err != nil {
		t.Error(err)
	}
	for _, c := range []struct {
		nominal float64
		wall    Wall
	}{{3, "sch-20"}, {3, "astm-f891"}, {3, SDR35}, {7, Schedule40}, {math.NaN(), Schedule40}, {4, ""}} {
		if _, _, err := PipeBore(c.nominal*inch, c.wall); err == nil || !strings.Contains(err.Error(), "no sourced bore") {
			t.Errorf("%g in %q: %v", c.nominal, c.wall, err)
		}
	}
	// A square of side a has the hydraulic diameter a.
	if r := Rectangular(0.08, 0.08); math.Abs(r.Hydraulic-0.08) > 1e-15 || math.Abs(r.Area-0.0064) > 1e-15 {
		t.Errorf("%+v", r)
	}
	// Thinner walls leave more room at one outer size.
	thin, _, err := PipeBore(4*inch, ThinWall)
	if err != nil {
		t.Fatal(err)
	}
	sdr, _, err := PipeBore(4*inch, SDR35)
	if err != nil || thin.Area <= sdr.Area {
		t.Errorf("%+v, %+v, %v", thin, sdr, err)
	}
	if _, _, err := Roughness("corrugated"); err == nil {
		t.Error("corrugated pipe has a roughness")
	}
	for _, m := range []Material{SmoothPlastic, SteelDuct, OldSteelDuct} {
		if r, source, err := Roughness(m); err != nil || r <= 0 || source.Document == "" {
			t.Errorf("%s: %g, %+v, %v", m, r, source, err)
		}
	}
}

func TestFittings(t *testing.T) {
	three := Round(3.068 * inch)
	// From the equivalent lengths and the friction of the pipe: a sharp 90 in
	// 3 in at 80 cfm is about K 0.94, a sweep 0.26 (worked out from CC-1000 8.6).
	v := 80 * cfm / three.Area
	f, _ := churchill(StandardDensity*v*three.Hydraulic/StandardAir.Viscosity, 1.5e-6/three.Hydraulic)
	for _, c := range []struct {
		kind FittingKind
		k    float64
	}{{Elbow90Sharp, 0.94}, {Elbow90Sweep, 0.26}} {
		got, _, err := NewFitting(c.kind, 3*inch, three)
		if k := f * got.Length / three.Hydraulic; err != nil || math.Abs(k-c.k) > 0.01 {
			t.Errorf("%s: K %g, expected %g: %v", c.kind, k, c.k, err)
		}
	}
	// Sizes and shapes that the list leaves out use the two-constant method.
	two := Round(2.067 * inch)
	got, source, err := NewFitting(Elbow90Sharp, 2*inch, two)
	if err != nil || source != sourceHooper || got.K1 != 1000 || math.Abs(got.K-1.15*(1+1/2.067)) > 1e-12 {
		t.Errorf("%+v, %+v, %v", got, source, err)
	}
	for _, kind := range []FittingKind{Elbow45Sharp, TeeRun, TeeBranch, Elbow45Sweep, Elbow90Sweep} {
		if f, source, err := NewFitting(kind, 6*inch, Round(6.065*inch)); err != nil || f == (Fitting{}) || source.Document == "" {
			t.Errorf("%s: %+v, %v", kind, f, err)
		}
	}
	if f, _, err := NewFitting(Coupling, 3*inch, three); err != nil || f != (Fitting{}) {
		t.Errorf("coupling: %+v, %v", f, err)
	}
	if f, _, err := NewFitting(InletProjecting, 0, three); err != nil || f.K < 0.78 || f.K > 1 {
		t.Errorf("projecting inlet: %+v, %v", f, err)
	}
	for _, kind := range []FittingKind{"damper", "reducer", "other", ""} {
		if _, _, err := NewFitting(kind, 3*inch, three); err == nil {
			t.Errorf("%q: no error", kind)
		}
	}
	if _, _, err := NewFitting(TeeRun, 3*inch, Bore{}); err == nil {
		t.Error("fitting without bore, no error")
	}
	if (Fitting{1, 2, 3}).Times(2) != (Fitting{2, 4, 6}) {
		t.Error("two fittings are not twice one")
	}
}

func TestSteps(t *testing.T) {
	// Crane TP-410 by the fluids library's example: 3 to 2, K 0.2777777.
	if k := Contraction(Round(3), Round(2)).K; math.Abs(k-0.2777777) > 1e-6 {
		t.Errorf("contraction %g", k)
	}
	// Into a pipe from a room is the sharp inlet, out of one the open end.
	pipe, room := Round(0.1), Round(1e6)
	if in, out := Contraction(room, pipe).K, Expansion(pipe, room).K; math.Abs(in-0.5) > 1e-9 || math.Abs(out-1) > 1e-9 {
		t.Errorf("inlet %g, open end %g", in, out)
	}
	if Contraction(pipe, room).K != 0 || Expansion(room, pipe).K != 0 || Contraction(pipe, pipe).K != 0 {
		t.Error("a step the other way loses")
	}
}

func TestMeshGuard(t *testing.T) {
	previous := math.Inf(1)
	for open := 0.30; open <= 1; open += 0.01 {
		f, err := MeshGuard(open)
		if err != nil || f.K >= previous {
			t.Fatalf("open share %g: %+v, %v", open, f, err)
		}
		previous = f.K
	}
	// Blevins by the fluids library's example: 0.99 open, K 0.008.
	if f, err := MeshGuard(0.99); err != nil || math.Abs(f.K-0.008) > 1e-12 {
		t.Errorf("%+v, %v", f, err)
	}
	for _, open := range []float64{0.1, 1.1, math.NaN()} {
		if _, err := MeshGuard(open); err == nil {
			t.Errorf("open share %g, no error", open)
		}
	}
}

// Crane TP-410 example 7-35 and its formulas, as in the fluids library's tests.
func TestTeeLosses(t *testing.T) {
	share := 0.00633 / (0.00633 + 0.018917)
	tee, err := newTee(90, 1)
	if err != nil {
		t.Fatal(err)
	}
	side, _ := tee.side(share)
	run, _ := tee.run(share)
	if math.Abs(side - -0.0404410851362) > 1e-12 || math.Abs(run-0.32575847854551254) > 1e-12 {
		t.Errorf("side %g, run %g", side, run)
	}
	for _, angle := range []float64{30, 45, 50, 60, 90} {
		for _, beta2 := range []float64{0.2, 0.5, 1} {
			tee, err := newTee(angle, beta2)
			if err != nil {
				t.Fatal(err)
			}
			for y := 0.005; y < 1; y += 0.01 {
				for what, f := range map[string]func(float64) (float64, float64){"side": tee.side, "run": tee.run} {
					k, slope := f(y)
					above, _ := f(y + 1e-7)
					below, _ := f(y - 1e-7)
					if want := (above - below) / 2e-7; math.Abs(slope-want) > 1e-5*(1+math.Abs(want)) {
						t.Errorf("%s at %g degrees, %g: K %g, slope %g, expected %g", what, angle, y, k, slope, want)
					}
				}
			}
		}
	}
	// Spreading Crane's step must leave his figures outside it alone.
	for y, c := range map[float64]float64{0.4: 0.54, 0.41: 0.55, 0.7: 0.55} {
		k, _ := tee.side(y)
		if want := c * (1 + y*y - 2*(1-y)*(1-y)); math.Abs(k-want) > 1e-12 {
			t.Errorf("share %g: K %g, expected %g", y, k, want)
		}
	}
	j := joint{kind: JoinSide, tee: tee, dynamic: 3}
	for _, q := range []float64{0.1, 0.38, 0.7} {
		_, byFlow, byTotal := j.loss(q, 1)
		const h = 1e-6
		a, _, _ := j.loss(q+h, 1)
		b, _, _ := j.loss(q-h, 1)
		c, _, _ := j.loss(q, 1+h)
		d, _, _ := j.loss(q, 1-h)
		if math.Abs(byFlow-(a-b)/(2*h)) > 1e-5 || math.Abs(byTotal-(c-d)/(2*h)) > 1e-5 {
			t.Errorf("share %g: slopes %g and %g", q, byFlow, byTotal)
		}
	}
}

func TestSoil(t *testing.T) {
	for _, c := range []struct {
		name string
		err  error
	}{
		{"no flow", second(SoilThrough(0, 50, 1))},
		{"no suction", second(SoilThrough(0.01, 0, 1))},
		{"exponent", second(SoilThrough(0.01, 50, 9))},
		{"same flow", second(FitSoil(0.01, 50, 0.01, 60))},
		{"falling", second(FitSoil(0.01, 50, 0.02, 40))},
		{"no number", second(FitSoil(math.NaN(), 50, 0.02, 40))},
	} {
		if c.err == nil {
			t.Errorf("%s: no error", c.name)
		}
	}
	s, err := FitSoil(20, 50, 40, 150)
	if err != nil {
		t.Fatal(err)
	}
	for flow, want := range map[float64]float64{20: 50, 40: 150} {
		p, slope := s.suction(flow)
		above, _ := s.suction(flow + 1e-4)
		if math.Abs(p-want) > 1e-9 || math.Abs(slope-(above-p)/1e-4) > 1e-3 {
			t.Errorf("at %g: %g Pa, slope %g", flow, p, slope)
		}
	}
}

func TestHouse(t *testing.T) {
	for _, c := range []struct {
		name string
		err  error
	}{
		{"no leakage", second(HouseDepressurization(0.01, 0))},
		{"negative air", second(HouseDepressurization(-0.01, 1))},
		{"fireplace", third(DepressurizationLimit(WeatherizationTable, "fireplace"))},
		{"other protocol", third(DepressurizationLimit("none", OrphanWaterHeater))},
		{"no limits", third(DepressurizationMargin(-1))},
		{"positive limit", third(DepressurizationMargin(-1, 2))},
		{"no reading", third(DepressurizationMargin(math.NaN(), -2))},
	} {
		if c.err == nil {
			t.Errorf("%s: no error", c.name)
		}
	}
	if margin, governing, err := DepressurizationMargin(-3, -15, -3, -50); err != nil || margin != 0 || governing != -3 {
		t.Errorf("at the limit: %g above %g, %v", margin, governing, err)
	}
	// The two protocols differ for one appliance.
	a, _, _ := DepressurizationLimit(WeatherizationTable, NaturalDraftAlone)
	b, _, _ := DepressurizationLimit(PublicSpecification, NaturalDraftAlone)
	if a != -5 || b != -3 {
		t.Errorf("limits %g and %g Pa", a, b)
	}
	// The form's other rows; 20 F is its misprint (see MinimumDraft).
	for f, want := range map[float64]float64{-10: -2.5, 10: -2.5, 20: -2.25, 30: -2, 50: -1.5, 60: -1.25, 70: -1, 80: -0.75, 90: -0.5, 105: -0.5} {
		if got := MinimumDraft(fahrenheit(f)); got != want {
			t.Errorf("%g F: %g Pa, expected %g", f, got, want)
		}
	}
}

func third[A, B any](_ A, _ B, err error) error { return err }

func TestJobsite(t *testing.T) {
	for _, m := range [][5]float64{{0, 1, 1, 0, 0}, {1, 1, 0.3, 0.3, 0}, {1, 1, 1, -1, 0}, {1, math.NaN(), 1, 0, 0}, {math.Inf(1), 1, 1, 0, 0}} {
		if _, err := MembraneFor(m[0], m[1], m[2], m[3], m[4]); err == nil {
			t.Errorf("%v: no error", m)
		}
	}
	// A floor narrower than the roll takes one strip; one just too wide, two.
	for width, want := range map[float64]int{0.5: 1, 3: 1, 3.01: 2, 5.7: 2, 5.71: 3} {
		if m, err := MembraneFor(10, width, 3, 0.3, 0); err != nil || m.Strips != want {
			t.Errorf("%g m: %+v, expected %d strips: %v", width, m, want, err)
		}
	}
	if CondensateBound(0.03, 280, 285, SeaLevelPressure) != 0 {
		t.Error("a warmer pipe condenses")
	}
	if ClassifySpeed(1000*feetPerMinute) != Quiet || ClassifySpeed(1800*feetPerMinute) != Noisy {
		t.Error("speed classes")
	}
	if NominalSizeFor(60*cfm) != 3*inch {
		t.Error("60 cfm needs 3 in")
	}
	if _, err := FoundationArea(6 * inch); err == nil {
		t.Error("foundation area for 6 in, no error")
	}
}
