package airflow

import (
	"fmt"
	"math"
)

// OperatingPoint is where a fan and a system agree.
type OperatingPoint struct {
	Flow     float64 // m3/s
	Pressure float64 // Pa, as the fan's curve rates it

	network *Network
	split   []float64 // m3/s in each branch
}

// State returns the network there.
func (p *OperatingPoint) State() *State { return p.network.state(p.work(), p.Flow) }

// At is Network.At of the same network, but faster: it starts from the split of
// the flow at the operating point.
func (p *OperatingPoint) At(flow float64) (*State, error) { return p.network.from(p.work(), flow) }

// work is the flows, to seek others from.
func (p *OperatingPoint) work() *work {
	w := &work{branches: make([]line, len(p.split))}
	for i, flow := range p.split {
		w.branches[i].flow = flow
	}
	return w
}

// Operate finds where the curve of a fan, brought to the network's air, crosses
// what the network asks for. The fan's pressure falls and the network's rises
// with flow, so there is one such point at most. When they do not cross between
// the ends of the curve the error is a CurveRangeError: BeyondFreeDelivery when
// the network lets through more than the last point, AboveShutOff when it holds
// back even the flow of the first.
func Operate(curve *FanCurve, n *Network) (*OperatingPoint, error) {
	if err := n.checkFlow(0); err != nil {
		return nil, err
	}
	c := curve.AtDensity(n.air.Density)
	w, flow, ok := n.meet(c)
	if !ok {
		var err error
		if w, flow, err = n.search(c); err != nil {
			return nil, err
		}
	}
	pressure, _ := c.predict(flow)
	p := &OperatingPoint{flow, pressure, n, make([]float64, len(w.branches))}
	for i := range w.branches {
		p.split[i] = w.branches[i].flow
	}
	return p, nil
}

// meet seeks the operating point by Newton's method on the flows and the fan at
// once: the fan's tangent is one more of those that split takes. That is quick,
// and sure only near the point: it gives up when it does not settle soon.
func (n *Network) meet(c *FanCurve) (w *work, flow float64, ok bool) {
	const quickRounds = 12
	first, _ := c.First()
	last, _ := c.Last()
	main := n.nodes[len(n.nodes)-1].first
	flow = first.Flow + (last.Flow-first.Flow)/2
	w = n.start(flow)
	previous := flow
	for range quickRounds {
		n.gather(w)
		legs, legsSlope := w.legs(flow)
		asked, askedSlope := n.rise(main, flow, c.rating)
		given, givenSlope := c.predict(flow)
		step := (given - asked - legs) / (askedSlope + legsSlope - givenSlope)
		flow += max(0.9*(first.Flow-flow), min(0.9*(last.Flow-flow), step)) // stay on the curve
		change := n.distribute(w, flow)
		if settled(change, previous, flow) && math.Abs(step) <= crossingTolerance*last.Flow {
			return w, flow, true
		}
		previous = change
	}
	return nil, 0, false
}

// search seeks the operating point between the ends of the curve, and says which
// end it lies beyond when it does.
func (n *Network) search(c *FanCurve) (*work, float64, error) {
	first, _ := c.First()
	last, _ := c.Last()
	w := n.start(last.Flow)
	spare := func(q float64) (float64, float64, error) {
		asked, askedSlope, err := n.demand(w, q, c.rating)
		p, slope := c.predict(q)
		return p - asked, slope - askedSlope, err
	}
	// At no flow nothing is asked, and at no pressure nothing is left to give.
	if last.Pressure > 0 {
		if most, _, err := spare(last.Flow); err != nil {
			return nil, 0, err
		} else if most > 0 {
			return nil, 0, c.beyond("the flow that this pipe and soil let through")
		}
	}
	if first.Flow > 0 {
		if least, _, err := spare(first.Flow); err != nil {
			return nil, 0, err
		} else if least < 0 {
			return nil, 0, c.above("the pressure that this pipe and soil ask for")
		}
	}
	flow, err := crossing(first.Flow, last.Flow, spare)
	if err != nil {
		return nil, 0, err
	}
	if flow > 0 {
		if err := n.split(w, flow); err != nil {
			return nil, 0, fmt.Errorf("at %.4g m3/s: %w", flow, err)
		}
	} else {
		w = n.start(0)
	}
	return w, flow, nil
}

// Tap is where a gauge's tube enters the pipe: the downstream end of a segment,
// or the pit of a suction point. One of the two names is set.
type Tap struct {
	Segment string
	Point   string
}

// GaugeFlow is what a gauge reading says about a fan.
type GaugeFlow struct {
	Flow        float64 // m3/s
	Least, Most float64 // m3/s, as the reading's error allows
	Pressure    float64 // Pa, as the fan's curve rates it
}

// FlowFromGauge returns the flow at which the fan would show a gauge its static
// suction in Pa, known to within plusMinus Pa. The gauge does not read what the
// fan's curve plots: the speed of the air at the tap, the losses between tap
// and fan and those of the discharge side are put right, each at the flow that
// results. Off the curve it returns a CurveRangeError.
//
// A tap past every junction needs no soil resistance. One in a leg among
// several does, because its share of the flow counts: MissingSoilError. A tap
// on the discharge side is an error: what it shows is not the fan's.
func (n *Network) FlowFromGauge(curve *FanCurve, tap Tap, reading, plusMinus float64) (*GaugeFlow, error) {
	if !(plusMinus >= 0) || math.IsNaN(reading) || math.IsInf(reading+plusMinus, 0) {
		return nil, fmt.Errorf("gauge reading %g Pa known to within %g Pa", reading, plusMinus)
	}
	place, err := n.place(tap)
	if err != nil {
		return nil, err
	}
	if n.nodes[place.node].parent >= 0 { // its share of the flow counts
		if err := n.checkFlow(0); err != nil {
			return nil, err
		}
	}
	c := curve.AtDensity(n.air.Density)
	g := &GaugeFlow{}
	if g.Flow, err = n.gaugeCrossing(c, place, reading); err != nil {
		return nil, err
	}
	g.Pressure, _ = c.predict(g.Flow)
	g.Least, g.Most = g.Flow, g.Flow
	if plusMinus > 0 {
		first, _ := c.First()
		last, _ := c.Last()
		g.Least, g.Most = first.Flow, last.Flow
		// A reading at the edge of its error may leave the curve; the band then
		// ends where the curve does.
		if q, err := n.gaugeCrossing(c, place, reading+plusMinus); err == nil {
			g.Least = q
		}
		if q, err := n.gaugeCrossing(c, place, reading-plusMinus); err == nil {
			g.Most = q
		}
	}
	return g, nil
}

// gaugeCrossing finds the flow at which the curve gives what the fan must add
// when the gauge shows a reading in Pa.
func (n *Network) gaugeCrossing(c *FanCurve, place tapPlace, reading float64) (float64, error) {
	first, _ := c.First()
	last, _ := c.Last()
	w := n.start(last.Flow)
	spare := func(q float64) (float64, float64, error) {
		extra, extraSlope, err := n.beyondTap(w, place, q, c.rating)
		p, slope := c.predict(q)
		return p - reading - extra, slope - extraSlope, err
	}
	most, _, err := spare(last.Flow)
	if err != nil {
		return 0, err
	}
	if most > 0 {
		return 0, c.beyond(fmt.Sprintf("a gauge reading of %.4g Pa", reading))
	}
	least, _, err := spare(first.Flow)
	if err != nil {
		return 0, err
	}
	if least < 0 {
		return 0, c.above(fmt.Sprintf("a gauge reading of %.4g Pa", reading))
	}
	return crossing(first.Flow, last.Flow, spare)
}

// tapPlace is a checked Tap: after segment index of a node, -1 for its pit.
type tapPlace struct{ node, segment int }

func (n *Network) place(tap Tap) (tapPlace, error) {
	for i := range n.nodes {
		node := &n.nodes[i]
		if tap.Segment == "" && node.leaf && node.name == tap.Point {
			return tapPlace{i, -1}, nil
		}
		for k := node.first; k < node.after && tap.Segment != ""; k++ {
			if n.segments[k].name == tap.Segment {
				return tapPlace{i, k}, nil
			}
		}
	}
	for k := n.discharge; k < len(n.segments); k++ {
		if tap.Segment != "" && n.segments[k].name == tap.Segment {
			return tapPlace{}, fmt.Errorf("segment %q is on the discharge side, where a gauge does not show the fan's suction", tap.Segment)
		}
	}
	return tapPlace{}, fmt.Errorf("gauge tap at segment %q or point %q: no such place in the system", tap.Segment, tap.Point)
}

// beyondTap returns what the fan must add over the static suction at a tap, in
// Pa at a total flow in m3/s, and its derivative with the split of flows held.
func (n *Network) beyondTap(w *work, place tapPlace, q float64, r Rating) (extra, slope float64, err error) {
	if q <= 0 {
		return 0, 0, nil
	}
	main := len(n.nodes) - 1
	if place.node == main {
		w.branches[main].flow = q // however the legs share it
	} else if err := n.split(w, q); err != nil {
		return 0, 0, fmt.Errorf("at %.4g m3/s: %w", q, err)
	}
	at := n.nodes[place.node].first
	if place.segment >= 0 {
		at = place.segment + 1
		flow := w.branches[place.node].flow
		velocity := n.segments[place.segment].dynamic * flow * flow
		extra -= velocity
		slope -= 2 * velocity / q
	}
	for i := place.node; i != main; i = n.nodes[i].parent {
		node, flow := &n.nodes[i], w.branches[i].flow
		loss, lossSlope := series(n.segments[at:node.after], flow)
		joined, _, _ := node.join.loss(flow, w.branches[node.parent].flow)
		extra += loss + joined
		slope += (lossSlope*flow + 2*joined) / q
		at = n.nodes[node.parent].first
	}
	loss, lossSlope := n.rise(at, q, r)
	return extra + loss, slope + lossSlope, nil
}

// PitSuctions returns the suction in Pa in the pits from a gauge's static
// suction in Pa at a tap and the total flow in m3/s, however that was found:
// the reading less the speed gained and the losses between. The flows split as
// in the network; with one suction point they need no soil resistance, with
// several and none recorded use SharedBed.
func (n *Network) PitSuctions(tap Tap, reading, flow float64) ([]PointState, error) {
	place, err := n.place(tap)
	if err != nil {
		return nil, err
	}
	if math.IsNaN(reading) || math.IsInf(reading, 0) {
		return nil, fmt.Errorf("gauge reading %g Pa", reading)
	}
	if len(n.nodes) == 1 {
		n = n.SharedBed()
	}
	s, err := n.At(flow)
	if err != nil {
		return nil, err
	}
	shift := reading
	if place.segment >= 0 {
		shift -= s.Segments[place.segment].StaticSuction
	} else {
		for _, p := range s.Points {
			if p.Name == tap.Point {
				shift -= p.Suction
			}
		}
	}
	for i := range s.Points {
		s.Points[i].Suction += shift
	}
	return s.Points, nil
}
