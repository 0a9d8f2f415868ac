package radon

import (
	"math"
	"math/rand/v2"
	"testing"
)

// In pCi/L. ANSI/AARST MS-QA 2019 Table 7.1, MAH 2019 7.2.1; the last column
// EPA 402-R-93-003 3.2.2.3 (from memory).
func TestCheckDuplicates(t *testing.T) {
	for _, c := range []struct {
		name      string
		a, b      float64
		agreement Agreement
		straddles bool
		retest    bool
	}{
		{"worked case 21", 4.4, 3.5, InControl, true, false},
		{"28 % exactly at a mean of 10", 11.4, 8.6, Warning, false, false},
		{"just under 28 %", 11.39, 8.61, InControl, false, false},
		{"36 % exactly at a mean of 10", 11.8, 8.2, Control, false, false},
		{"mean 4.0 exactly: 35 % warns", 4.7, 3.3, Warning, true, false},
		{"mean 3.995: 35 % does not", 4.695, 3.295, InControl, true, false},
		{"50 % exactly at a mean of 2.4", 3, 1.8, Warning, false, false},
		{"67 % at a mean of 3", 4.005, 1.995, Control, true, true},
		{"mean 2.0 exactly", 2.5, 1.5, Warning, false, false},
		{"mean under 2, 1.0 apart", 2.4, 1.4, InControl, false, false},
		{"mean under 2, 1.1 apart", 2.4, 1.3, Control, false, false},
		{"low, far apart in percent only", 0.4, 0.1, InControl, false, false},
		{"both nothing", 0, 0, InControl, false, false},
		{"twice exactly", 6, 3, Control, true, false},
		{"more than twice", 6.1, 3, Control, true, true},
		{"more than twice, both over", 10, 4.1, Control, false, false},
		{"one at the level is not over it", 4, 1.9, Control, true, false},
		{"one at the level, other over", 4, 4.2, InControl, false, false},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := must[Pair](t)(CheckDuplicates(Result{Value: c.a * perPicocurie}, Result{Value: c.b * perPicocurie}, 4*perPicocurie))
			if p.Agreement != c.agreement || p.Straddles != c.straddles || p.Retest != c.retest {
				t.Errorf("%+v, want %s, straddles %t, retest %t", p, c.agreement, c.straddles, c.retest)
			}
			swapped := must[Pair](t)(CheckDuplicates(Result{Value: c.b * perPicocurie}, Result{Value: c.a * perPicocurie}, 4*perPicocurie))
			if swapped != p {
				t.Errorf("swapped: %+v, not %+v", swapped, p)
			}
		})
	}
}

// A mean of exactly 4.0 or 2.0 pCi/L belongs to the band above, however the two
// results round on their way to Bq/m3.
func TestLimitsAtTheirEdge(t *testing.T) {
	for hundredths := range 200 {
		apart := float64(hundredths) / 100
		for mean, want := range map[float64]float64{4: 28, 2: 50} {
			a, b := Result{Value: (mean + apart) * perPicocurie}, Result{Value: (mean - apart) * perPicocurie}
			if p := must[Pair](t)(CheckDuplicates(a, b, 4*perPicocurie)); p.Limits.Warning != want {
				t.Errorf("%g and %g pCi/L: %+v, want a warning limit of %g", mean+apart, mean-apart, p, want)
			}
		}
	}
}

// Worked case 21: 4.4 and 3.5 pCi/L side by side.
func TestStraddlingPair(t *testing.T) {
	p := must[Pair](t)(CheckDuplicates(Result{Value: 4.4 * perPicocurie}, Result{Value: 3.5 * perPicocurie}, 4*perPicocurie))
	if !near(p.RPD, 100*0.9/3.95, 1e-9) || p.Limits.Warning != 50 || p.Limits.Control != 67 || !near(p.Ratio, 4.4/3.5, 1e-12) {
		t.Errorf("%+v", p)
	}
	if got := ReportPicocuries(p.Mean); got != "4.0" {
		t.Errorf("mean reported as %s, want 4.0", got)
	}
}

func TestDuplicatesBelowDetection(t *testing.T) {
	a, b := Result{Value: 5 * perPicocurie, BelowDetection: true}, Result{Value: 3 * perPicocurie, BelowDetection: true}
	if p := must[Pair](t)(CheckDuplicates(a, b, 4*perPicocurie)); p.Agreement != InControl {
		t.Errorf("%+v", p)
	}
	if p := must[Pair](t)(CheckDuplicates(Result{Value: 30}, Result{}, 148)); p.Ratio != 0 || p.RPD != 200 {
		t.Errorf("one is nothing: %+v", p)
	}
	for name, pair := range map[string][2]Result{"no number": {{Value: math.NaN()}, {}}, "negative": {{}, {Value: -3}}} {
		if p, err := CheckDuplicates(pair[0], pair[1], 148); err == nil {
			t.Errorf("%s: %+v", name, p)
		}
	}
	if p, err := CheckDuplicates(a, b, math.NaN()); err == nil {
		t.Errorf("no action level: %+v", p)
	}
	if l, err := limitsFromInControl(-1); err == nil {
		t.Errorf("negative level: %+v", l)
	}
}

func TestRPDProperties(t *testing.T) {
	rng := rand.New(rand.NewPCG(21, 22))
	for range 10000 {
		a, b := 20*rng.Float64(), 20*rng.Float64()
		rpd := RPD(a, b)
		if RPD(b, a) != rpd {
			t.Fatalf("RPD(%g, %g) is not symmetric", a, b)
		}
		if in := RPD(a*perPicocurie, b*perPicocurie); !near(in, rpd, 1e-9) {
			t.Fatalf("RPD(%g, %g) is %g in one unit and %g in the other", a, b, rpd, in)
		}
		if rpd < 0 || rpd > 200+1e-9 {
			t.Fatalf("RPD(%g, %g) = %g", a, b, rpd)
		}
	}
}

// ANSI/AARST MS-QA 2019 5.3.3.
func TestCheckSpike(t *testing.T) {
	for _, c := range []struct {
		measured, reference float64 // pCi/L
		want                Agreement
	}{
		{12, 10, InControl}, {12.01, 10, Warning}, {8, 10, InControl}, {7.9, 10, Warning},
		{13, 10, Warning}, {13.01, 10, Control}, {6.9, 10, Control}, {0, 10, Control},
	} {
		if got := must[Spike](t)(CheckSpike(c.measured*perPicocurie, c.reference*perPicocurie)); got.Agreement != c.want {
			t.Errorf("%g for %g: %+v, want %s", c.measured, c.reference, got, c.want)
		}
	}
	for _, pair := range [][2]float64{{1, 0}, {-1, 10}, {math.NaN(), 10}, {1, math.NaN()}} {
		if s, err := CheckSpike(pair[0], pair[1]); err == nil {
			t.Errorf("%v: %+v", pair, s)
		}
	}
}

// EPA 402-R-92-004 (from memory).
func TestBlanksAbove(t *testing.T) {
	above := must[[]int](t)(blanksAbove([]float64{0, 18.5, 18.6, -2, 30}, 18.5))
	if len(above) != 2 || above[0] != 2 || above[1] != 4 {
		t.Errorf("%v, want [2 4]", above)
	}
	if above, err := blanksAbove([]float64{math.NaN()}, 18.5); err == nil {
		t.Errorf("no number: %v", above)
	}
	if above, err := blanksAbove(nil, -1); err == nil {
		t.Errorf("negative level: %v", above)
	}
}
