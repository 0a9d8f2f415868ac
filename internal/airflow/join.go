package airflow

import (
	"errors"
	"fmt"
)

// JoinKind is how a branch enters the pipe it feeds.
type JoinKind uint8

// The ways to enter.
const (
	JoinFree JoinKind = iota // no loss counted where the flows meet
	JoinRun                  // straight through a tee or wye
	JoinSide                 // from the side of a tee or wye
)

// Join says how a branch enters the pipe it feeds. A tee or wye has exactly two
// entries, one JoinRun and one JoinSide, of the same Angle. Its losses are those
// of Crane TP-410 (2009, chapter 2), on the velocity pressure of the combined
// flow; the run and the combined pipe are taken as equal in bore there. For a
// junction of another shape use JoinFree and give each entry's loss coefficient
// as a fitting of the segment before it.
type Join struct {
	Kind  JoinKind
	Angle float64 // degrees between side and run: 90 a tee, 30 to 60 a wye
}

// teeForm holds what the tee formulas need besides the flow shares.
type teeForm struct {
	angle float64 // degrees
	beta2 float64 // area of the side branch over area of the combined pipe
	f     float64 // the angle's constant
}

// newTee returns an error for an angle or a side branch that has no figure.
func newTee(angle, beta2 float64) (teeForm, error) {
	t := teeForm{angle: angle, beta2: beta2}
	if beta2 > 1.1 { // a little over 1 where pipe walls differ
		return t, errors.New("the side entry is wider than the pipe it joins: no losses are published for that, give loss coefficients")
	}
	var steps = [...]struct{ angle, f float64 }{{30, 1.74}, {45, 1.41}, {60, 1}, {90, 0}}
	for i := 1; i < len(steps); i++ {
		lo, hi := steps[i-1], steps[i]
		if angle >= lo.angle && angle <= hi.angle {
			t.f = lo.f + (hi.f-lo.f)*(angle-lo.angle)/(hi.angle-lo.angle)
			return t, nil
		}
	}
	return t, fmt.Errorf("side angle %g degrees is outside 30 to 90, where losses are published", angle)
}

// side returns the loss coefficient of the side entry and its derivative by
// the side's share of the combined flow. It is negative where the run's flow
// drags the side's along.
//
// The published factor steps from 0.54 to 0.55 at a share of 0.4. A step has no
// slope and can leave a system without a solution, so it is spread over the
// shares 0.40 to 0.41; outside them the printed form stands.
func (t teeForm) side(share float64) (k, slope float64) {
	rest, inverse := 1-share, 1/t.beta2
	g := 1 + share*share*inverse*inverse - 2*rest*rest - t.f*inverse*share*share
	dg := 2*share*inverse*inverse + 4*rest - 2*t.f*inverse*share
	c, dc := 0.55, 0.0
	switch {
	case t.beta2 <= 0.35:
		c = 1
	case share <= 0.4:
		c, dc = 0.9*rest, -0.9
	case share < 0.41:
		c, dc = 0.54+(share-0.4), 1
	}
	return c * g, c*dg + dc*g
}

// run returns the loss coefficient of the straight entry and its derivative by
// the side's share of the combined flow. Crane gives the wye form to 60 degrees
// and another for 90; 75 parts them here, as in the open-source fluids library.
func (t teeForm) run(share float64) (k, slope float64) {
	if t.angle > 75 {
		return 1.55*share - share*share, 1.55 - 2*share
	}
	f := t.f / t.beta2
	rest := 1 - share
	return 1 - rest*rest - f*share*share, 2*rest - 2*f*share
}

// joint is a compiled Join.
type joint struct {
	kind    JoinKind
	tee     teeForm
	dynamic float64 // velocity pressure of the combined flow over its flow squared, Pa/(m3/s)2
}

// loss returns the loss in Pa where a flow q joins into a combined flow total,
// both in m3/s, and its derivatives by q and by total.
func (j *joint) loss(q, total float64) (loss, byQ, byTotal float64) {
	if j.kind == JoinFree || total <= 0 {
		return 0, 0, 0
	}
	share := max(0, min(1, q/total))
	var k, slope float64 // slope by this branch's own share
	if j.kind == JoinSide {
		k, slope = j.tee.side(share)
	} else {
		k, slope = j.tee.run(1 - share)
		slope = -slope
	}
	return k * j.dynamic * total * total, j.dynamic * total * slope, j.dynamic * total * (2*k - share*slope)
}
