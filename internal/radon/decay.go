package radon

import (
	"errors"
	"fmt"
	"math"
)

// Half-lives in seconds: ICRP Publication 107 (2008).
const (
	halfLifeRn222 = 3.8235 * 24 * 3600
	halfLifePo218 = 3.10 * 60
	halfLifePb214 = 26.8 * 60
	halfLifeBi214 = 19.9 * 60
)

// decayConstant is the share that decays in a second, 1/s, for a half-life in
// seconds above 0.
func decayConstant(halfLife float64) float64 { return math.Ln2 / halfLife }

// remainingExcess is the share, 0 to 1, of the radon above its new steady level
// that is still in the house a time (s) after entry stopped, at a ventilation in
// air changes per hour: exp(-(lambda + a) t).
func remainingExcess(elapsed, airChangesPerHour float64) (float64, error) {
	rate, err := lossRate(airChangesPerHour)
	if err != nil {
		return 0, err
	}
	if err := notNegative("time since entry stopped", elapsed); err != nil {
		return 0, err
	}
	return math.Exp(-rate * elapsed), nil
}

// meanExcess is the share, 0 to 1, of the excess at the end of entry that the
// mean of a test still holds: a test of a length (s) started a lead (s) later.
func meanExcess(lead, length, airChangesPerHour float64) (float64, error) {
	left, err := remainingExcess(lead, airChangesPerHour)
	if err != nil {
		return 0, err
	}
	rate, err := lossRate(airChangesPerHour)
	if err != nil {
		return 0, err
	}
	if !(length > 0) || !finite(length) {
		return 0, fmt.Errorf("mean excess: a test of %g s", length)
	}
	return left * -math.Expm1(-rate*length) / (rate * length), nil
}

// lossRate is decay and ventilation together, in 1/s.
func lossRate(airChangesPerHour float64) (float64, error) {
	return decayConstant(halfLifeRn222) + airChangesPerHour/hour, notNegative("air changes per hour", airChangesPerHour)
}

// chainActivity is the activity of each member of a decay chain after a time
// (s), in the unit of the activities at its start. Each member decays into the
// next; losses other than decay are left out. It solves the equations of
// Bateman, dA_i/dt = lambda_i (A_(i-1) - A_i), in a form without differences, so
// that equal or very unlike half-lives (s) do no harm.
func chainActivity(initial, halfLives []float64, elapsed float64) ([]float64, error) {
	n := len(halfLives)
	const longest = 32
	if n == 0 || n > longest || len(initial) != n {
		return nil, fmt.Errorf("decay chain: %d activities for %d half-lives (1 to %d)", len(initial), n, longest)
	}
	if err := notNegative("decay chain: time", elapsed); err != nil {
		return nil, err
	}
	fastest := 0.0
	for i, h := range halfLives {
		if err := notNegative(fmt.Sprintf("decay chain: activity %d", i), initial[i]); err != nil {
			return nil, err
		}
		if !(h > 0) || !finite(h) {
			return nil, fmt.Errorf("decay chain: half-life %d is %g s", i, h)
		}
		fastest = max(fastest, decayConstant(h))
	}
	if !finite(fastest * elapsed) {
		return nil, errors.New("decay chain: time too long for these half-lives")
	}
	// Halve the time until nothing decays noticeably, solve that by a series of
	// sums only, and square the solution back up.
	halvings := 0
	for step := elapsed; fastest*step > 0.5; step /= 2 {
		halvings++
	}
	m := shortStep(halfLives, math.Ldexp(elapsed, -halvings), fastest)
	for range halvings {
		m = m.squared()
	}
	activity := make([]float64, n)
	for i := range m {
		for j, share := range m[i] {
			activity[i] += share * initial[j]
		}
	}
	return activity, nil
}

// matrix maps activities at one instant to those at a later one: row i, entries
// for members 0 to i.
type matrix [][]float64

func newMatrix(n int) matrix {
	m := make(matrix, n)
	for i := range m {
		m[i] = make([]float64, i+1)
	}
	return m
}

// shortStep is the matrix for a time in which the fastest member hardly decays:
// exp(-q t) times the sum of (q t)^k/k! P^k, where P moves activity down the
// chain and has no negative entry.
func shortStep(halfLives []float64, step, q float64) matrix {
	n := len(halfLives)
	sum, term := newMatrix(n), newMatrix(n)
	for i := range n {
		sum[i][i], term[i][i] = 1, 1
	}
	for k := 1; k <= 20+n; k++ {
		next := newMatrix(n)
		for i, h := range halfLives {
			share := decayConstant(h) / q
			for j := range next[i] {
				next[i][j] = (1 - share) * term[i][j]
				if j < i {
					next[i][j] += share * term[i-1][j]
				}
				next[i][j] *= q * step / float64(k)
				sum[i][j] += next[i][j]
			}
		}
		term = next
	}
	for i := range sum {
		for j := range sum[i] {
			sum[i][j] *= math.Exp(-q * step)
		}
	}
	return sum
}

func (m matrix) squared() matrix {
	s := newMatrix(len(m))
	for i := range m {
		for j := range m[i] {
			for k := j; k <= i; k++ {
				s[i][j] += m[i][k] * m[k][j]
			}
		}
	}
	return s
}
