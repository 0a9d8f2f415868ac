package radon

import (
	"errors"
	"fmt"
	"math"
)

const hour = 3600 // s

// Span is a stretch of time between two instants, in seconds since 1970.
type Span struct{ From, To float64 }

// Length is how long the span is, in seconds.
func (s Span) Length() float64 { return s.To - s.From }

func (s Span) check(what string) error {
	if !finite(s.From, s.To) {
		return fmt.Errorf("%s: start or end is not known", what)
	}
	if s.To < s.From {
		return fmt.Errorf("%s ends before it starts", what)
	}
	return nil
}

// timing is when a test was made. An instant that was not recorded is NaN.
type timing struct {
	Test     Span
	FanStart float64 // seconds since 1970
	Closed   float64 // seconds since 1970, when windows and doors were shut
}

// Duration is how long the test ran, in seconds.
func (t timing) Duration() (float64, error) {
	return t.Test.Length(), t.Test.check("test")
}

// AfterFanStart is the time from the start of the fan to that of the test, in
// seconds; negative when the test started first.
func (t timing) AfterFanStart() (float64, error) { return t.before("start of the fan", t.FanStart) }

// ClosedLead is how long the house was closed before the test, in seconds;
// negative when it was closed only during it.
func (t timing) ClosedLead() (float64, error) { return t.before("closing of the house", t.Closed) }

func (t timing) before(what string, instant float64) (float64, error) {
	if !finite(instant, t.Test.From) {
		return 0, fmt.Errorf("%s or start of the test is not known", what)
	}
	return t.Test.From - instant, nil
}

// Condition is something that must have lasted for a while before a reading
// counts: a running fan, a closed house.
type Condition struct {
	Since float64 // seconds since 1970; NaN when not recorded
	Lead  float64 // seconds that it must have lasted
}

// ReadyAt is the first instant at which all conditions have lasted long enough,
// in seconds since 1970. A condition that was not recorded is an error.
func ReadyAt(conditions ...Condition) (float64, error) {
	if len(conditions) == 0 {
		return 0, errors.New("no condition to wait for")
	}
	ready := math.Inf(-1)
	for i, c := range conditions {
		if !finite(c.Since, c.Lead) {
			return 0, fmt.Errorf("condition %d: it is not known since when it holds", i)
		}
		ready = max(ready, c.Since+c.Lead)
	}
	return ready, nil
}

// ContiguousHours is the longest stretch of whole hours of a continuous monitor
// that can count: hours that belong to counted, start at ready or later, and
// touch none of the invalid spans. Hours run from the start of counted; what is
// left of an hour at its end does not count. The first of equal stretches is
// returned, one of no length when no hour counts. ANSI/AARST MAH 2019 7.3.2(b)
// asks 46 h.
func ContiguousHours(counted Span, ready float64, invalid []Span) (Span, error) {
	if err := counted.check("counted time"); err != nil {
		return Span{}, err
	}
	if !finite(ready) {
		return Span{}, errors.New("it is not known from when on readings count")
	}
	for i, s := range invalid {
		if err := s.check(fmt.Sprintf("invalid time %d", i)); err != nil {
			return Span{}, err
		}
	}
	const tenYears = 10 * 366 * 24 // h; keeps a slip in a date from being counted out
	hours := math.Floor(counted.Length() / hour)
	if hours > tenYears {
		return Span{}, fmt.Errorf("counted time is %g h long", hours)
	}
	longest := Span{counted.From, counted.From}
	here := longest
	for k := range int(hours) {
		h := Span{counted.From + float64(k)*hour, counted.From + float64(k+1)*hour}
		if h.From < ready || touchesAny(h, invalid) {
			here = Span{h.To, h.To}
			continue
		}
		here.To = h.To
		if here.Length() > longest.Length() {
			longest = here
		}
	}
	return longest, nil
}

func touchesAny(h Span, spans []Span) bool {
	for _, s := range spans {
		if s.From < h.To && s.To > h.From || s.From == s.To && s.From == h.From {
			return true
		}
	}
	return false
}

// leadOutAllowed says whether leaving out the first readings of a continuous
// monitor, from its start up to reportedFrom, is one of the omissions that
// ANSI/AARST MAH 2019 8.5.3(c) allows: up to 4 h, or as long as it takes until
// house and fan are ready (or longer), where they were not ready at the start.
// Any hours left out later void the test; see ContiguousHours for what remains.
func leadOutAllowed(start, reportedFrom, ready float64) (bool, error) {
	if !finite(start, reportedFrom, ready) {
		return false, errors.New("hours left out: start, first reported hour or readiness is not known")
	}
	if reportedFrom < start {
		return false, errors.New("hours left out: the first reported hour lies before the start")
	}
	return reportedFrom-start <= 4*hour || ready > start && reportedFrom >= ready, nil
}
