package quantity

import (
	"math"
	"strconv"
	"testing"
)

// A Computed takes a short cut by float64. It must be told apart from the exact
// way only by its speed, for any size, near any rounding boundary and in any
// unit.
func TestComputedAgreesWithTheExactWay(t *testing.T) {
	var values []float64
	seed := uint64(1)
	for range 4000 {
		seed = seed*6364136223846793005 + 1442695040888963407
		mantissa := float64(seed>>11) / (1 << 53)
		values = append(values, mantissa*math.Pow10(int(seed>>3%19)-9))
	}
	for eighth := -20.0; eighth < 200; eighth++ {
		at := eighth / 8 * 0.0254
		values = append(values, at, at+0.005*0.0254, at+0.00501*0.0254, at-0.0049*0.0254, at+1e-7)
	}
	for n := 0.25; n < 20; n += 0.25 { // near the round lengths that limits are
		for off := 1e-11; off < 0.1; off *= 3 {
			values = append(values, n-off, (n-off)*0.3048, (n+off)*0.0254)
		}
	}
	for n := -300.0; n <= 300; n++ {
		values = append(values, n, n/2, n/20, n/200, n*37/20, n*0.3048, n*249.08891/200, n/2119.0)
	}
	for _, dim := range Dimensions() {
		units := Units(dim)
		if units == nil {
			units = []string{"s"}
		}
		for i, si := range values {
			if dim == Temperature {
				si = math.Abs(si)
			}
			unit := units[i%len(units)]
			got, err := Compute(dim, si, UnitNamed(unit), 12)
			q, wantErr := FromSI(dim, si, unit)
			if (err == nil) != (wantErr == nil) {
				t.Fatalf("%s %v %s: error %v, the exact way %v", dim, si, unit, err, wantErr)
			}
			if err != nil {
				continue
			}
			if got.SI() != q.SI() || got.Text() != q.String() {
				t.Fatalf("%s %v %s: %q %q, the exact way %q %q", dim, si, unit, got.SI(), got.Text(), q.SI(), q.String())
			}
			value, _ := strconv.ParseFloat(got.Value(), 64)
			want, _ := strconv.ParseFloat(q.Value(), 64)
			if math.Abs(value-want) > 1e-11*math.Abs(want) {
				t.Fatalf("%s %v %s: value %s, the exact way %s", dim, si, unit, got.Value(), q.Value())
			}
		}
	}
}

func TestCompute(t *testing.T) {
	type written struct{ SI, Value, Text string }
	for _, c := range []struct {
		dim    Dimension
		si     float64
		unit   string
		digits int
		want   written
	}{
		{Length, 10 * 0.3048, "ft", 12, written{"3.048", "10", "10 ft"}},
		{Length, math.Hypot(6, 8) * 0.3048, "ft", 12, written{"3.048", "10", "10 ft"}},
		{Length, 2.48123, "ft", 12, written{"2.48123", "8.1405183727", "8.14 ft"}},
		{Velocity, 3.48276513, "m/s", 6, written{"3.48277", "3.48277", "3.48 m/s"}},
		{Radon, 146.15, "pCi/L", 12, written{"146.15", "3.95", "4.0 pCi/L"}},
		{Percent, 92.741935483871, "%", 12, written{"92.7419354839", "92.7419354839", "92.7 %"}},
		{PerLength, 0.0246, "1/ft", 6, written{"0.0246", "0.00749808", "0.0075 per ft"}},
		{Duration, -7200, "h", 12, written{"-7200", "-2", "-2 h"}},
		{Pressure, 0, "inH2O", 12, written{"0", "0", "0 inH2O"}},
		{Length, 2.5, "", 12, written{"2.5", "2.5", "2.5 m"}},
		{Length, 2.5, "furlong", 12, written{"2.5", "2.5", "2.5 m"}},
		{Length, 2.5, "Pa", 12, written{"2.5", "2.5", "2.5 m"}},
		{Ratio, 0.25, "%", 12, written{"0.25", "25", "25 %"}},
		{Date, 1837209600, "s", 12, written{"1837209600", "1837209600", "2028-03-21"}},
	} {
		computed, err := Compute(c.dim, c.si, UnitNamed(c.unit), c.digits)
		if err != nil {
			t.Errorf("%s %v: %v", c.dim, c.si, err)
			continue
		}
		if got := (written{computed.SI(), computed.Value(), computed.Text()}); got != c.want {
			t.Errorf("%s %v: %+v, want %+v", c.dim, c.si, got, c.want)
		}
	}
	for _, c := range []struct {
		dim  Dimension
		si   float64
		unit string
	}{
		{"mass", 1, "kg"}, {Length, math.NaN(), "m"}, {Length, math.Inf(1), "m"},
		{Length, 1e40, "m"}, {Date, 1e15, "s"}, {Temperature, -4, "K"},
	} {
		if got, err := Compute(c.dim, c.si, UnitNamed(c.unit), 12); err == nil {
			t.Errorf("%s of %v %s: %+v, want an error", c.dim, c.si, c.unit, got)
		}
	}
}

func BenchmarkComputed(b *testing.B) {
	foot := UnitNamed("ft")
	for b.Loop() {
		for _, si := range [...]float64{3.048, 2.4812, 0.0293, 248.7} {
			c, err := Compute(Length, si, foot, 12)
			if err != nil || c.SI() == "" || c.Value() == "" || c.Text() == "" {
				b.Fatal(err)
			}
		}
	}
}
