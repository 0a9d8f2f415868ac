package radon

import (
	"math"
	"testing"
)

const start = 1773930000.0 // 2026-03-19T14:20:00Z, when the test starts

// ANSI/AARST MAH 2019 7.3.2(b), worked case 17: a monitor that started 2 h after
// the fan in a house closed for 12 h, ran to hour 74, reported from hour 24 on.
func TestMonitorThatReportsLate(t *testing.T) {
	timing := timing{Test: Span{start, start + 74*hour}, FanStart: start - 2*hour, Closed: start - 12*hour}
	for name, c := range map[string]struct {
		got  func() (float64, error)
		want float64 // h
	}{
		"duration":        {timing.Duration, 74},
		"after fan start": {timing.AfterFanStart, 2},
		"closed lead":     {timing.ClosedLead, 12},
	} {
		if got := must[float64](t)(c.got()); got != c.want*hour {
			t.Errorf("%s: %g h, want %g h", name, got/hour, c.want)
		}
	}
	ready := must[float64](t)(ReadyAt(Condition{timing.FanStart, 24 * hour}, Condition{timing.Closed, 12 * hour}))
	if ready != start+22*hour {
		t.Errorf("ready at hour %g, want 22", (ready-start)/hour)
	}
	reported := Span{start + 24*hour, timing.Test.To}
	if got := must[Span](t)(ContiguousHours(reported, ready, nil)); got != reported || got.Length() != 50*hour {
		t.Errorf("%g h from hour %g count, want 50 h from hour 24", got.Length()/hour, (got.From-start)/hour)
	}
	if !must[bool](t)(leadOutAllowed(start, reported.From, ready)) {
		t.Error("leaving out 24 h until the fan had run long enough was refused")
	}
}

// 25 Pa. Code 240.310(a)(4)(iv) and ANSI/AARST MAH 2019 7.3.2, worked case 19:
// 120 h, closed 10 h before: past the 96 h of the one, short of the 12 h of the
// other.
func TestLongTestClosedLate(t *testing.T) {
	timing := timing{Test: Span{start, start + 120*hour}, FanStart: start - 48*hour, Closed: start - 10*hour}
	if lead := must[float64](t)(timing.ClosedLead()); lead != 10*hour {
		t.Errorf("closed lead %g h, want 10 h", lead/hour)
	}
	if d := must[float64](t)(timing.Duration()); d != 120*hour {
		t.Errorf("duration %g h, want 120 h", d/hour)
	}
	ready := must[float64](t)(ReadyAt(Condition{timing.FanStart, 24 * hour}, Condition{timing.Closed, 12 * hour}))
	if got := must[Span](t)(ContiguousHours(timing.Test, ready, nil)); got.Length() != 118*hour {
		t.Errorf("%g h count, want 118 h", got.Length()/hour)
	}
}

func TestTimingNotRecorded(t *testing.T) {
	none := math.NaN()
	for name, got := range map[string]func() (float64, error){
		"no end":          timing{Test: Span{start, none}}.Duration,
		"ends first":      timing{Test: Span{start, start - 1}}.Duration,
		"no fan start":    timing{Test: Span{start, start + 1}, FanStart: none}.AfterFanStart,
		"no test start":   timing{Test: Span{none, start}, FanStart: start}.AfterFanStart,
		"no closing time": timing{Test: Span{start, start + 1}, Closed: none}.ClosedLead,
		"no condition":    func() (float64, error) { return ReadyAt() },
		"one condition without a time": func() (float64, error) {
			return ReadyAt(Condition{start, 24 * hour}, Condition{none, 12 * hour})
		},
	} {
		if v, err := got(); err == nil {
			t.Errorf("%s: %g", name, v)
		}
	}
	timing := timing{Test: Span{start, start + 48*hour}, FanStart: start + 3*hour}
	if got := must[float64](t)(timing.AfterFanStart()); got != -3*hour {
		t.Errorf("test before fan: %g s", got)
	}
}

func TestContiguousHours(t *testing.T) {
	at := func(from, to float64) Span { return Span{start + from*hour, start + to*hour} }
	for _, c := range []struct {
		name    string
		counted Span
		ready   float64 // h from the start
		invalid []Span
		want    Span
	}{
		{"all", at(0, 48), -1, nil, at(0, 48)},
		{"ready at the start", at(0, 48), 0, nil, at(0, 48)},
		{"ready within an hour", at(0, 74), 22.5, nil, at(23, 74)},
		{"never ready", at(0, 48), 48, nil, at(0, 0)},
		{"last hour not whole", at(0, 48.9), 0, nil, at(0, 48)},
		{"one hour out", at(0, 72), 0, []Span{at(30, 31)}, at(31, 72)},
		{"part of an hour out", at(0, 72), 0, []Span{at(50.2, 50.3)}, at(0, 50)},
		{"across two hours", at(0, 72), 0, []Span{at(49.9, 50.1)}, at(0, 49)},
		{"a moment out", at(0, 72), 0, []Span{at(60, 60)}, at(0, 60)},
		{"two stretches alike", at(0, 41), 0, []Span{at(20, 21)}, at(0, 20)},
		{"outside what counts", at(10, 58), 0, []Span{at(0, 10), at(58, 60)}, at(10, 58)},
		{"shorter than an hour", at(0, 0.5), 0, nil, at(0, 0)},
	} {
		if got := must[Span](t)(ContiguousHours(c.counted, start+c.ready*hour, c.invalid)); got != c.want {
			t.Errorf("%s: hours %g to %g, want %g to %g", c.name, (got.From-start)/hour, (got.To-start)/hour, (c.want.From-start)/hour, (c.want.To-start)/hour)
		}
	}
	for name, call := range map[string]func() (Span, error){
		"no end":           func() (Span, error) { return ContiguousHours(Span{start, math.NaN()}, start, nil) },
		"ends first":       func() (Span, error) { return ContiguousHours(at(2, 1), start, nil) },
		"not ready ever":   func() (Span, error) { return ContiguousHours(at(0, 48), math.NaN(), nil) },
		"invalid unknown":  func() (Span, error) { return ContiguousHours(at(0, 48), start, []Span{{math.NaN(), start}}) },
		"a slip in a date": func() (Span, error) { return ContiguousHours(at(0, 1e9), start, nil) },
	} {
		if got, err := call(); err == nil {
			t.Errorf("%s: %+v", name, got)
		}
	}
}

// ANSI/AARST MAH 2019 8.5.3(c).
func TestLeadOutAllowed(t *testing.T) {
	for _, c := range []struct {
		name        string
		from, ready float64 // h from the start
		want        bool
	}{
		{"nothing left out", 0, -5, true},
		{"first four hours", 4, -5, true},
		{"fifth hour without reason", 5, -5, false},
		{"until closed 12 h", 12, 12, true},
		{"beyond 12 h", 14, 12, true},
		{"short of readiness", 10, 12, false},
		{"a day although ready", 24, 0, false},
	} {
		if got := must[bool](t)(leadOutAllowed(start, start+c.from*hour, start+c.ready*hour)); got != c.want {
			t.Errorf("%s: allowed %t, want %t", c.name, got, c.want)
		}
	}
	for name, v := range map[string][3]float64{"reported before start": {start, start - 1, start}, "not known": {start, math.NaN(), start}} {
		if got, err := leadOutAllowed(v[0], v[1], v[2]); err == nil {
			t.Errorf("%s: %t", name, got)
		}
	}
}
