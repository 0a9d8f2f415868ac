package quantity

import (
	"math"
	"math/big"
	"math/rand/v2"
	"strconv"
	"strings"
	"testing"
)

func TestFormat(t *testing.T) {
	for _, c := range []struct {
		dimension Dimension
		si        string
		unit      string
		want      string
	}{
		{Length, "2.5908", "ft", "8 ft 6 in"},
		{Length, "2.5908", "m", "2.59 m"},
		{Length, "2.5908", "in", "102 in"},
		{Length, "3.048", "ft", "10 ft"},
		{Length, "3", "ft", "9.84 ft"},              // 9 ft 10.11 in: on no eighth
		{Length, "3.00355", "ft", "9 ft 10 1/4 in"}, // 118.25 in
		{Length, "3.0035", "ft", "9.85 ft"},
		{Length, "3.0478", "ft", "9.999 ft"}, // what falls short of 10 ft must show it
		{Length, "3.04799", "ft", "9.99997 ft"},
		{Length, "2.9996", "m", "2.9996 m"},
		{Length, "3.0001", "m", "3.0001 m"},
		{Length, "1.544976", "ft", "5.07 ft"},
		{Length, "0.30479", "in", "11.9996 in"},
		{Length, "0.1524", "ft", "6 in"},
		{Length, "-2.5908", "ft", "-8 ft 6 in"},
		{Length, "0", "ft", "0 ft"},
		{Length, "0.00005", "ft", "0.00016 ft"},
		{Length, "0.0889", "in", "3 1/2 in"},
		{Length, "-0.0889", "in", "-3 1/2 in"},
		{Length, "0.003175", "in", "1/8 in"},
		{Length, "0.0779272", "in", "3.068 in"}, // bore of 3 in Schedule 40, ASTM D1785
		{Length, "0.0001524", "mil", "6 mil"},
		{Pressure, "204.25", "inH2O", "0.82 inH2O"},
		{Pressure, "-0.99635564", "inH2O", "-0.004 inH2O"},
		{Pressure, "199.271128", "inwc", "0.8 inH2O"},
		{Pressure, "-0.00001", "Pa", "0 Pa"},
		{Pressure, "199.97", "Pa", "200 Pa"},
		{Flow, "0.037755795456", "cfm", "80 cfm"},
		{Flow, "0.002", "cfm", "4.2 cfm"},
		{Radon, "148", "pCi/L", "4.0 pCi/L"},
		{Radon, "146.15", "pCi/L", "4.0 pCi/L"},  // 3.95: MAH 2019, 8.5.2(b)
		{Radon, "146.113", "pCi/L", "3.9 pCi/L"}, // 3.949
		{Radon, "0", "pCi/L", "0.0 pCi/L"},
		{Radon, "147.5", "Bq/m3", "148 Bq/m3"},
		{Temperature, "294.261111111111", "°F", "70 °F"},
		{Temperature, "293.15", "C", "20 °C"},
		{Slope, "0.0104166666666667", "in/ft", "1/8 in per ft"},
		{Slope, "0.01", "in/ft", "0.12 in/ft"},
		{Slope, "0.02", "%", "2 %"},
		{Slope, "0.02", "1", "0.02 m/m"},
		{Ratio, "0.5", "1", "0.5"},
		{Ratio, "0.5", "%", "50 %"},
		{Angle, "45", "°", "45 deg"},
		{Duration, "63072000", "year", "2 years"},
		{Duration, "31536000", "year", "1 year"},
		{Duration, "5400", "h", "1.5 h"},
		{ThermalResistance, "0.704440734729223", "R", "R-4"},
		{AirChangeRate, "0.35", "1/h", "0.35 /h"},
		{Time, "1772373600", "s", "2026-03-01T14:00:00Z"},
		{Time, "-0.5", "s", "1969-12-31T23:59:59.5Z"},
		{Date, "1772323200", "s", "2026-03-01"},
		{Date, "-1", "s", "1969-12-31"},
	} {
		got, err := Format(c.dimension, c.si, c.unit)
		if err != nil || got != c.want {
			t.Errorf("%s %s in %s: got %q, %v; want %q", c.dimension, c.si, c.unit, got, err, c.want)
		}
	}
	if got, err := Format(Length, 3.0479999999999996, "ft"); err != nil || got != "10 ft" {
		t.Errorf("a float64: got %q, %v", got, err)
	}
	for _, c := range []struct {
		dimension    Dimension
		si           string
		unit, answer string
	}{
		{"mass", "1", "kg", "not a dimension"},
		{Length, "1", "Pa", "unit of pressure, not of length"},
		{Length, "1", "", "the unit is missing"},
		{Length, "1 m", "m", "follows the number"},
		{Length, "", "m", "does not start with a number"},
		{Length, strings.Repeat("9", 65), "m", "more than 64 bytes"},
	} {
		if got, err := Format(c.dimension, c.si, c.unit); err == nil || !strings.Contains(err.Error(), c.answer) {
			t.Errorf("%s %q %q: got %q and the answer %v, want one that says %q", c.dimension, c.si, c.unit, got, err, c.answer)
		}
	}
}

// What is printed beside a limit never lies on its other side, however near it is.
func TestBeside(t *testing.T) {
	for _, c := range []struct {
		dimension             Dimension
		si, unit, limit, want string
	}{
		{Length, "3.04", "ft", "3.048", "9.97 ft"},
		{Length, "3.0479999", "ft", "3.048", "9.9999997 ft"},
		{Length, "3.04799999", "ft", "3.048", "9.99999997 ft"},
		{Length, "3.048", "ft", "3.048", "10 ft"},
		{Length, "1.5996", "ft", "1.6002", "5.248 ft"}, // limit 5 ft 3 in
		{Length, "1.5998672", "ft", "1.6002", "5.249 ft"},
		{Pressure, "-1.998", "Pa", "-2", "-1.998 Pa"},      // not -2 Pa
		{Pressure, "-1.9", "Pa", "-2", "-1.9 Pa"},          // enough as it is
		{Flow, "0.04719", "cfm", "0.0471947", "99.99 cfm"}, // not 100 cfm
		{Radon, "148.4", "pCi/L", "148", "4.01 pCi/L"},     // above 4.0, as Bq/m3 tell it
		{Radon, "150", "pCi/L", "148", "4.1 pCi/L"},        // enough as it is
		{Duration, "172799", "h", "172800", "47.9997 h"},   // not 48 h
		{Slope, "0.0104", "in/ft", "0.0104166666666667", "0.1248 in/ft"},
	} {
		text, err := Format(c.dimension, c.si, c.unit)
		if err != nil {
			t.Fatal(err)
		}
		if got, err := Beside(c.dimension, text, c.si, c.unit, c.limit); err != nil || got != c.want {
			t.Errorf("%s %s beside %s in %s: got %q, %v; want %q", c.dimension, c.si, c.limit, c.unit, got, err, c.want)
		}
	}
	if got, err := Beside(Length, "9 1/2 ft", "2.8956", "ft", "3.048"); err != nil || got != "9 1/2 ft" {
		t.Errorf("a text that fits became %q, %v", got, err)
	}
	if got, err := Beside(Length, "3 ft", "1", "ft", "far"); err == nil {
		t.Errorf("beside no number: %q", got)
	}
	random := rand.New(rand.NewPCG(10, 2))
	for range 2000 {
		limit := float64(1 + random.IntN(80))
		value := limit + (random.Float64()-0.5)*math.Pow(10, -float64(random.IntN(8)))
		q, err := FromSI(Length, value*0.3048/4, "ft")
		if err != nil {
			t.Fatal(err)
		}
		bound, err := FromSI(Length, limit*0.3048/4, "ft")
		if err != nil {
			t.Fatal(err)
		}
		text, err := Beside(Length, q.String(), q.SI(), "ft", bound.SI())
		if err != nil {
			t.Fatal(err)
		}
		printed, err := Parse(Length, text)
		if err != nil || printed.side(bound) != q.side(bound) {
			t.Fatalf("%s m prints as %q beside %s m: %v", q.SI(), text, bound.SI(), err)
		}
	}
}

func TestRoundHalfUp(t *testing.T) {
	for _, c := range []struct {
		x      string
		places int
		want   string
	}{
		{"3.95", 1, "4.0"},  // ANSI/AARST MAH 2019, 8.5.2(b)
		{"3.94", 1, "3.9"},  // the same
		{"3.949", 1, "3.9"}, // the second decimal decides, not a rounding of it
		{"1.45", 1, "1.5"},  // ANSI/AARST MALB 2014 (1/21), 8.1.1: mean of 1.4 and 1.5
		{"147.5", 0, "148"},
		{"2.5", 0, "3"},
		{"-0.25", 1, "-0.3"},
		{"-0.04", 1, "0.0"},
		{"0.1", 3, "0.100"},
		{"7", -1, "7"},
		{"NaN", 1, "NaN"},
		{"none", 1, "none"},
		{"", 1, ""},
	} {
		if got := RoundHalfUp(c.x, c.places); got != c.want {
			t.Errorf("%s to %d: got %s, want %s", c.x, c.places, got, c.want)
		}
	}
	for x, want := range map[float64]string{
		3.95: "4.0", 3.9499999999999997: "4.0", 3.949: "3.9", 0.05: "0.1", 1e300: "1e+300",
		1e-300: "0.0", math.Inf(1): "+Inf",
	} {
		if got := RoundHalfUp(x, 1); got != want {
			t.Errorf("%v: got %s, want %s", x, got, want)
		}
	}
	if got := RoundHalfUp(math.NaN(), 1); got != "NaN" {
		t.Errorf("NaN: got %s", got)
	}
}

// The mean of two results a tenth apart always ends in 5 and so goes up, though
// binary arithmetic often puts it below the tie.
func TestRoundHalfUpOfMeans(t *testing.T) {
	for tenth := range 2000 {
		mean := (float64(tenth)/10 + float64(tenth+1)/10) / 2
		want := big.NewRat(int64(tenth+1), 10).FloatString(1)
		if got := RoundHalfUp(mean, 1); got != want {
			t.Fatalf("mean %v: got %s, want %s", mean, got, want)
		}
	}
}

// A float64 rounds as its first 12 digits do when they are written out.
func TestRoundHalfUpOfFloats(t *testing.T) {
	random := rand.New(rand.NewPCG(85, 2))
	for range 20000 {
		x := (random.Float64() - 0.3) * math.Pow(10, float64(random.IntN(9)-4))
		if random.IntN(2) == 0 {
			x = math.Round(x*200) / 200 // near and on the ties
		}
		for places := range 4 {
			written := strconv.FormatFloat(x, 'e', derivedDigits-1, 64)
			if got, want := RoundHalfUp(x, places), RoundHalfUp(written, places); got != want {
				t.Fatalf("%v to %d: got %s, want %s", x, places, got, want)
			}
		}
	}
}

// What is printed reads back as the same quantity but for the rounding, in every
// unit and over six powers of ten.
func TestPrintedTextReadsBack(t *testing.T) {
	random := rand.New(rand.NewPCG(6901, 811))
	for _, dim := range Dimensions() {
		for _, u := range families[dim].units {
			for range 60 {
				value := (random.Float64() - 0.3) * math.Pow(10, float64(random.IntN(6)-2))
				if dim == Temperature {
					value = math.Abs(value) + 300
				}
				exact := u.toSI(new(big.Rat).SetFloat64(value))
				si, _ := exact.Float64()
				q, err := FromSI(dim, si, u.symbol)
				if err != nil {
					t.Fatal(err)
				}
				back(t, q, q.String(), half(u))
				exactly := 1e-14 * math.Abs(value)
				if dim == Time || dim == Date {
					exactly = half(u) // their text is cut off as when printed
				}
				back(t, q, q.Text(), exactly)
			}
		}
	}
}

// half is the most that printing in u may move a value, in u: half a step of the
// last decimal; of a time, what is less than a nanosecond; of a date, the day.
// The slack of a tape, 0.005 in, is less than half a thousandth of a foot.
func half(u *unit) float64 {
	switch u.dimension {
	case Time:
		return 1e-9
	case Date:
		return 86400
	default:
		return 0.5 * math.Pow(10, -float64(u.places))
	}
}

// back checks that text reads as q in the same unit, to within slack.
func back(t *testing.T, q Quantity, text string, slack float64) {
	t.Helper()
	again, err := Parse(q.Dimension(), text)
	if err != nil {
		t.Fatalf("%s %s %s prints as %q: %v", q.Dimension(), q.Value(), q.Unit(), text, err)
	}
	gap := new(big.Rat).Sub(q.unit.fromSI(again.si), q.unit.fromSI(q.si))
	if f, _ := gap.Abs(gap).Float64(); f > slack*(1+1e-9) {
		t.Fatalf("%s %s %s prints as %q, which is %g off", q.Dimension(), q.Value(), q.Unit(), text, f)
	}
}
