package radon

import (
	"math"
	"math/rand/v2"
	"testing"
)

func TestMeanExcess(t *testing.T) {
	// The mean by adding up small steps.
	const lead, length, ach, steps = 6 * hour, 48 * hour, 0.2, 100000
	sum := 0.0
	for i := range steps {
		sum += must[float64](t)(remainingExcess(lead+(float64(i)+0.5)*length/steps, ach)) / steps
	}
	if got := must[float64](t)(meanExcess(lead, length, ach)); !near(got, sum, 1e-9) {
		t.Errorf("%g, by adding up %g", got, sum)
	}
	for name, v := range map[string][3]float64{
		"negative lead": {-1, 1, 0}, "no length": {1, 0, 0}, "negative ventilation": {1, 1, -1}, "no number": {math.NaN(), 1, 1},
	} {
		if got, err := meanExcess(v[0], v[1], v[2]); err == nil {
			t.Errorf("%s: %g", name, got)
		}
	}
}

// bateman is the published sum of exponentials for the last of a chain that
// starts with its first member alone, in activities; half-lives must differ.
func bateman(halfLives []float64, elapsed float64) float64 {
	sum := 0.0
	for i, hi := range halfLives {
		term := math.Exp(-decayConstant(hi) * elapsed)
		for j, hj := range halfLives {
			if j > 0 {
				term *= decayConstant(hj)
			}
			if j != i {
				term /= decayConstant(hj) - decayConstant(hi)
			}
		}
		sum += term
	}
	return sum
}

func TestChainAgainstBateman(t *testing.T) {
	radon := []float64{halfLifeRn222, halfLifePo218, halfLifePb214, halfLifeBi214}
	for _, minutes := range []float64{0, 0.01, 1, 10, 60, 240, 5000, 50000} {
		got := must[[]float64](t)(chainActivity([]float64{1, 0, 0, 0}, radon, minutes*60))
		for n := range radon {
			if want := bateman(radon[:n+1], minutes*60); !near(got[n], want, 1e-9*want+1e-13) {
				t.Errorf("member %d after %g min: %.12g, want %.12g", n, minutes, got[n], want)
			}
		}
	}
	rng := rand.New(rand.NewPCG(23, 24))
	for i := range 500 {
		h := []float64{1 + rng.Float64(), 3 + rng.Float64(), 6 + rng.Float64(), 10 + rng.Float64()}
		rng.Shuffle(4, func(a, b int) { h[a], h[b] = h[b], h[a] })
		elapsed := 30 * rng.Float64()
		got := must[[]float64](t)(chainActivity([]float64{1, 0, 0, 0}, h, elapsed))
		if want := bateman(h, elapsed); !near(got[3], want, 1e-10) {
			t.Fatalf("try %d: %g, want %g", i, got[3], want)
		}
		// Activities add: each member's own start decays by itself.
		both := must[[]float64](t)(chainActivity([]float64{1, 2, 0, 0}, h, elapsed))
		if want := got[3] + 2*bateman(h[1:], elapsed); !near(both[3], want, 1e-10) {
			t.Fatalf("try %d: two starts give %g, want %g", i, both[3], want)
		}
	}
}

func TestChainExtremes(t *testing.T) {
	// Equal half-lives, where the sum of exponentials divides by 0: A2 = l t exp(-l t).
	got := must[[]float64](t)(chainActivity([]float64{1, 0}, []float64{5, 5}, 7))
	x := math.Ln2 / 5 * 7
	if !near(got[0], math.Exp(-x), 1e-14) || !near(got[1], x*math.Exp(-x), 1e-14) {
		t.Errorf("equal half-lives: %v", got)
	}
	// Po-214, 164 microseconds, keeps in step with its parent.
	got = must[[]float64](t)(chainActivity([]float64{1, 1}, []float64{halfLifeBi214, 164e-6}, 3600))
	if !near(got[1], got[0], 1e-6) || !near(got[0], math.Exp2(-3600/halfLifeBi214), 1e-7) {
		t.Errorf("a fast member: %v", got)
	}
	for name, call := range map[string]func() ([]float64, error){
		"no member":         func() ([]float64, error) { return chainActivity(nil, nil, 1) },
		"lengths differ":    func() ([]float64, error) { return chainActivity([]float64{1}, []float64{1, 2}, 1) },
		"no half-life":      func() ([]float64, error) { return chainActivity([]float64{1}, []float64{0}, 1) },
		"negative activity": func() ([]float64, error) { return chainActivity([]float64{-1}, []float64{1}, 1) },
		"negative time":     func() ([]float64, error) { return chainActivity([]float64{1}, []float64{1}, -1) },
		"beyond all bounds": func() ([]float64, error) { return chainActivity([]float64{1}, []float64{1e-200}, 1e200) },
		"far too many":      func() ([]float64, error) { return chainActivity(make([]float64, 99), make([]float64, 99), 1) },
	} {
		if got, err := call(); err == nil {
			t.Errorf("%s: %v", name, got)
		}
	}
}
