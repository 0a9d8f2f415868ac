package quantity

import (
	"math"
	"math/big"
	"math/rand/v2"
	"strconv"
	"strings"
	"testing"
)

func parse(t *testing.T, dim Dimension, text string) Quantity {
	t.Helper()
	q, err := Parse(dim, text)
	if err != nil {
		t.Fatal(err)
	}
	return q
}

func TestCmp(t *testing.T) {
	for _, c := range []struct {
		dimension Dimension
		a, b      string
		want      int
	}{
		{Length, "10.0 ft", "10 ft", 0}, // a limit of 10 ft or more is met at 10.0
		{Length, "3.00 m", "10 ft", -1}, // but not by 3 m
		{Length, "3.048 m", "10 ft", 0},
		{Length, "9 ft 11 7/8 in", "10 ft", -1},
		{Length, "1/3 ft", "4 in", 0},
		{Length, "0.3333333333333333333 ft", "4 in", -1},
		{Radon, "148 Bq/m3", "4 pCi/L", 0},
		{Radon, "150 Bq/m3", "4 pCi/L", 1}, // 150 is 4.0 pCi/L rounded in print, not the limit
		{Temperature, "-40 F", "-40 °C", 0},
		{Slope, "1/8 in per ft", "1 %", 1},
		{Slope, "12.5 mm/m", "0.15 in per ft", 0},
		{Pressure, "-3 Pa", "-0.008 inH2O", -1},
		{Time, "2026-03-01T09:00-05:00", "2026-03-01T14:00Z", 0},
		{Duration, "1 d", "24 h", 0},
	} {
		a, b := parse(t, c.dimension, c.a), parse(t, c.dimension, c.b)
		if got := a.Cmp(b); got != c.want {
			t.Errorf("%s against %s: got %d, want %d", c.a, c.b, got, c.want)
		}
		if got := b.Cmp(a); got != -c.want {
			t.Errorf("%s against %s: got %d, want %d", c.b, c.a, got, -c.want)
		}
	}
	area, length := parse(t, Area, "1 m2"), parse(t, Length, "1 m")
	if area.Cmp(length) != -1 || length.Cmp(area) != 1 || area.Cmp(area) != 0 {
		t.Error("quantities of two dimensions are not in the order of their names")
	}
}

func TestZeroQuantity(t *testing.T) {
	var q Quantity
	if q.Dimension() != "" || q.Text() != "" || q.Unit() != "" || q.Value() != "" || q.SI() != "" || q.String() != "" || q.Float() != 0 {
		t.Errorf("the zero Quantity claims to be something: %#v", q)
	}
	if q.Cmp(q) != 0 || q.Cmp(parse(t, Length, "0 m")) != -1 {
		t.Error("the zero Quantity does not sort first")
	}
}

func TestSIText(t *testing.T) {
	for _, c := range []struct{ metres, want string }{
		{"0", "0"},
		{"-0", "0"},
		{"1e3", "1000"},
		{"1e15", "1000000000000000"},
		{"1.5e17", "150000000000000000"},
		{"1e-9", "0.000000001"},
		{"123456789.012345", "123456789.012345"},
		{"1.00000000000000", "1"},
		{"1.00000000000005", "1.00000000000005"}, // 15 digits suffice
		{"1.0000000000000050000001", "1"},        // they do not: 12, like a computed value
		{"-1.0000000000015001", "-1"},
		{"9.999999999999999", "10"},
		{"0.0999999999999999999", "0.1"},
		{"999999999999999.5", "1000000000000000"},
		{"1/3", "0.333333333333"},
		{"2/3", "0.666666666667"},
	} {
		q, err := New(Length, c.metres, "m")
		if err != nil {
			t.Fatal(err)
		}
		if got := q.SI(); got != c.want {
			t.Errorf("%s m: got %s, want %s", c.metres, got, c.want)
		}
	}
	// Value, unlike SI, keeps all digits that end.
	q := parse(t, Length, "1.23456789012345678901234567 ft")
	if q.Value() != "1.23456789012345678901234567" {
		t.Errorf("value %s", q.Value())
	}
}

func TestFromSI(t *testing.T) {
	// 6 ft across and 8 ft up make 10 ft, not a hair less.
	distance, err := FromSI(Length, math.Sqrt(1.8288*1.8288+2.4384*2.4384), "ft")
	if err != nil {
		t.Fatal(err)
	}
	if distance.Cmp(parse(t, Length, "10 ft")) != 0 || distance.SI() != "3.048" || distance.Value() != "10" || distance.Text() != "10 ft" {
		t.Errorf("got %s m, %s %s, text %q", distance.SI(), distance.Value(), distance.Unit(), distance.Text())
	}
	if tiny, err := FromSI(Length, 1e-25, "m"); err != nil || tiny.SI() != "0" {
		t.Errorf("noise: got %s, %v", tiny.SI(), err)
	}
	for _, c := range []struct {
		dimension Dimension
		si        float64
		unit      string
		answer    string
	}{
		{Length, math.NaN(), "m", "length of NaN m"},
		{Length, math.Inf(-1), "m", "length of -Inf m"},
		{Length, 1e300, "m", "too far"},
		{Length, 1e19, "m", "too large"},
		{Temperature, -1, "K", "below absolute zero"},
		{Time, 1e12, "s", "the year"},
		{Length, 1, "furlong", "not known"},
		{"mass", 1, "kg", "not a dimension"},
	} {
		if q, err := FromSI(c.dimension, c.si, c.unit); err == nil || !strings.Contains(err.Error(), c.answer) {
			t.Errorf("%s %v %s: got %s and the answer %v, want one that says %q", c.dimension, c.si, c.unit, q.SI(), err, c.answer)
		}
	}
}

// eachUnit calls f with many numbers in every unit, the same on every run.
func eachUnit(t *testing.T, f func(u *unit, number string)) {
	t.Helper()
	random := rand.New(rand.NewPCG(1, 2))
	for _, dim := range Dimensions() {
		if dim == Time || dim == Date {
			continue
		}
		for _, u := range families[dim].units {
			for range 100 {
				number := strconv.FormatInt(random.Int64N(2_000_000_000)-500_000_000, 10)
				if dim == Temperature {
					number = strings.TrimPrefix(number, "-")
				}
				f(u, number+"e-"+strconv.Itoa(random.IntN(9)))
			}
		}
	}
}

// A number goes into SI and out again without a trace.
func TestValueSurvivesSI(t *testing.T) {
	eachUnit(t, func(u *unit, number string) {
		q, err := New(u.dimension, number, u.symbol)
		if err != nil {
			t.Fatal(err)
		}
		want, ok := new(big.Rat).SetString(number)
		got, okValue := new(big.Rat).SetString(q.Value())
		if !ok || !okValue || got.Cmp(want) != 0 {
			t.Fatalf("%s %s %s comes back as %s", u.dimension, number, u.symbol, q.Value())
		}
		again, err := New(u.dimension, q.Value(), q.Unit())
		if err != nil || again.Cmp(q) != 0 || again.SI() != q.SI() {
			t.Fatalf("%s %s %s reads again as %s: %v", u.dimension, number, u.symbol, again.SI(), err)
		}
	})
}

// SI text and the float64 keep the order of the quantities, and equal ones give
// equal text.
func TestOrderIsKept(t *testing.T) {
	var last Quantity
	pairs := 0
	eachUnit(t, func(u *unit, number string) {
		q, err := New(u.dimension, number, u.symbol)
		if err != nil {
			t.Fatal(err)
		}
		if last.Dimension() == q.Dimension() {
			pairs++
			checkOrder(t, last, q)
			checkOrder(t, q, q)
		}
		last = q
	})
	if pairs < 5_000 {
		t.Errorf("only %d pairs were compared", pairs)
	}
	checkOrder(t, parse(t, Length, "1.0000000000000000001 m"), parse(t, Length, "1 m"))
}

func checkOrder(t *testing.T, a, b Quantity) {
	t.Helper()
	textA, okA := new(big.Rat).SetString(a.SI())
	textB, okB := new(big.Rat).SetString(b.SI())
	if !okA || !okB {
		t.Fatalf("%q or %q is no number", a.SI(), b.SI())
	}
	order, text := a.Cmp(b), textA.Cmp(textB)
	if order*text < 0 || order == 0 && (text != 0 || a.SI() != b.SI()) {
		t.Fatalf("%s against %s is %d, but their SI text %s and %s is %d", a, b, order, a.SI(), b.SI(), text)
	}
	if x, y := a.Float(), b.Float(); order > 0 && x < y || order < 0 && x > y || order == 0 && x != y {
		t.Fatalf("%s against %s is %d, but as float64 %v and %v", a, b, order, x, y)
	}
	// The text holds the quantity to the digits that count in a computed value.
	parsed, err := strconv.ParseFloat(a.SI(), 64)
	if err != nil || math.Abs(parsed-a.Float()) > 1e-11*math.Abs(parsed) {
		t.Fatalf("%s: text %s, float64 %v, %v", a, a.SI(), a.Float(), err)
	}
}

// A slope worked out from rise and run meets the same slope written down, also
// where its decimals do not end.
func TestComputedMeetsWritten(t *testing.T) {
	for _, c := range []struct {
		text     string
		computed float64
	}{{"1/8 in per ft", 1.5 / 144}, {"1/4 in per ft", 3.0 / 144}, {"1/3 in per ft", 1.0 / 36}} {
		q, err := FromSI(Slope, c.computed, "in/ft")
		if err != nil || q.SI() != parse(t, Slope, c.text).SI() {
			t.Errorf("%s is %s, computed it is %s (%v)", c.text, parse(t, Slope, c.text).SI(), q.SI(), err)
		}
	}
}

func FuzzParse(f *testing.F) {
	for i, c := range written {
		f.Add(uint8(i), c.text)
	}
	for i, c := range refused {
		f.Add(uint8(i), c.text)
	}
	dims := Dimensions()
	f.Fuzz(func(t *testing.T, pick uint8, text string) {
		dim := dims[int(pick)%len(dims)]
		q, err := Parse(dim, text)
		if err != nil {
			return
		}
		if q.Text() != text || q.Dimension() != dim || q.Cmp(q) != 0 {
			t.Errorf("%s %q came out as %s %q", dim, text, q.Dimension(), q.Text())
		}
		checkOrder(t, q, q)
		if printed := q.String(); printed != "" {
			if _, err := Parse(dim, printed); err != nil {
				t.Errorf("%s %q prints as %q: %v", dim, text, printed, err)
			}
		}
		if dim == Time || dim == Date {
			return
		}
		again, err := New(dim, q.Value(), q.Unit())
		if err != nil {
			t.Errorf("%s %q has the value %s %s: %v", dim, text, q.Value(), q.Unit(), err)
		} else if gap, _ := new(big.Rat).Sub(again.si, q.si).Float64(); math.Abs(gap) > 1e-13*math.Abs(q.Float()) {
			t.Errorf("%s %q has the value %s %s, which is %g off", dim, text, q.Value(), q.Unit(), gap)
		}
	})
}

// BenchmarkParse reads about what one job record holds and takes its SI text.
func BenchmarkParse(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		for _, c := range written {
			q, err := Parse(c.dimension, c.text)
			if err != nil {
				b.Fatal(err)
			}
			_ = q.SI()
		}
	}
	b.ReportMetric(float64(b.Elapsed().Nanoseconds())/float64(b.N*len(written)), "ns/quantity")
}

func BenchmarkParseForms(b *testing.B) {
	for _, c := range []struct {
		dimension Dimension
		text      string
	}{
		{Length, "11 ft 6 in"}, {Length, "3.5 m"}, {Pressure, "0.8 inH2O"}, {Pressure, "0.8 in w.c."},
		{Radon, "4.0 pCi/L"}, {Temperature, "68 F"}, {Time, "2026-03-01T09:00-05:00"},
	} {
		b.Run(strings.ReplaceAll(c.text, "/", "_"), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if _, err := Parse(c.dimension, c.text); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
