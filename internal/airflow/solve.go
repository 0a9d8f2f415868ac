package airflow

import (
	"errors"
	"fmt"
	"math"
)

// ErrNoConvergence is returned when the flows in a network do not settle.
var ErrNoConvergence = errors.New("the flows in the pipe network do not settle")

// work holds the flows of a network while they are sought, and the straight
// lines that stand in for the branches near those flows.
type work struct {
	branches []line
}

// legs returns, near the present flows, the suction that draws a total in m3/s
// through everything before the main, Pa, and its derivative with all flows free
// to shift, Pa s/m3.
func (w *work) legs(total float64) (suction, slope float64) {
	b := &w.branches[len(w.branches)-1]
	return b.startConstant + b.startResistance*total, b.startResistance
}

// line is one branch near its present flow. Seen from where the branch joins
// another, suction = constant + resistance x flow + coupling x combined flow.
type line struct {
	flow                           float64 // m3/s
	constant, resistance, coupling float64
	// At the start of the branch: suction = startConstant + startResistance x
	// flow. The sums gather what its tributaries bring.
	startConstant, startResistance              float64
	sumFlow, sumConductance, sumDrive, sumLinks float64
}

// start returns room for the flows, guessed for a total in m3/s: each suction
// point draws in proportion to what its soil yields at 200 Pa, usual in a pit, as
// far as that keeps the air in its pipe between 0.01 and 10 m/s.
func (n *Network) start(total float64) *work {
	w := &work{branches: make([]line, len(n.nodes))}
	var all float64
	for i := range n.nodes {
		node := &n.nodes[i]
		if !node.leaf {
			continue
		}
		w.branches[i].flow = 1
		if node.first < node.after {
			area := n.segments[node.first].area
			w.branches[i].flow = max(0.01*area, min(node.soil.flow(200), 10*area))
		}
		all += w.branches[i].flow
	}
	for i := range w.branches {
		w.branches[i].flow *= total / all
	}
	return w
}

const (
	// Flows have settled when the last change is small, over the total, and so is
	// what further rounds would still change if each shrank it as the last one
	// did. Newton's method shrinks it ever faster; where gather has to hold it
	// back it does not, and small steps may yet lead far.
	flowTolerance = 1e-6
	flowError     = 1e-10
	maxRounds     = 200
)

func settled(change, previous, total float64) bool {
	return change <= flowTolerance*total && change*change <= flowError*total*previous
}

// split finds the flows that add up to a total in m3/s above zero and leave
// every junction at one pressure. It starts from the flows in w.
//
// Each round replaces every branch by its tangent, works the tree out exactly
// from the suction points to the main, and hands the flows back down (Newton's
// method; a tree needs no matrix).
func (n *Network) split(w *work, total float64) error {
	if present := w.total(n); present > 0 {
		for i := range w.branches {
			w.branches[i].flow *= total / present
		}
	}
	previous := total
	for range maxRounds {
		n.gather(w)
		change := n.distribute(w, total)
		if settled(change, previous, total) {
			if suction, _ := w.legs(total); math.IsNaN(suction) {
				return ErrNoConvergence
			}
			return nil
		}
		previous = change
	}
	return ErrNoConvergence
}

func (w *work) total(n *Network) (sum float64) {
	for i := range n.nodes {
		if n.nodes[i].leaf {
			sum += w.branches[i].flow
		}
	}
	return sum
}

// gather replaces the branches before the main by their tangents, from the
// suction points up.
func (n *Network) gather(w *work) {
	for i := range n.nodes {
		node, b := &n.nodes[i], &w.branches[i]
		if !node.leaf {
			b.flow, b.sumFlow = b.sumFlow, 0
		}
		if node.parent >= 0 {
			w.branches[node.parent].sumFlow += b.flow
		}
	}
	for i := range n.nodes {
		node, b := &n.nodes[i], &w.branches[i]
		if node.leaf {
			p, slope := node.soil.suction(b.flow)
			b.startConstant, b.startResistance = p-slope*b.flow, slope
		} else {
			b.startConstant = b.sumDrive / b.sumConductance
			// A jet in a tee can make the combined resistance dip below zero
			// while flows are still far off; a floor keeps the step sane and
			// leaves the solution where it is.
			b.startResistance = max(1+b.sumLinks, 0.05) / b.sumConductance
			b.sumConductance, b.sumDrive, b.sumLinks = 0, 0, 0
		}
		if node.parent < 0 {
			continue // what is lost in the main does not split the flow
		}
		loss, slope := series(n.segments[node.first:node.after], b.flow)
		b.constant = b.startConstant + loss - slope*b.flow
		b.resistance = b.startResistance + slope
		up := &w.branches[node.parent]
		joined, byFlow, byTotal := node.join.loss(b.flow, up.flow)
		byFlow = max(byFlow, -0.5*b.resistance)
		b.constant += joined - byFlow*b.flow - byTotal*up.flow
		b.resistance += byFlow
		b.coupling = byTotal
		conductance := 1 / b.resistance
		up.sumConductance += conductance
		up.sumDrive += b.constant * conductance
		up.sumLinks += b.coupling * conductance
	}
}

// distribute gives each suction point its flow of a total in m3/s by the
// tangents, and returns the largest change in m3/s.
func (n *Network) distribute(w *work, total float64) (change float64) {
	last := len(n.nodes) - 1
	for i := last; i >= 0; i-- {
		node, b := &n.nodes[i], &w.branches[i]
		flow := total
		if node.parent >= 0 {
			up := &w.branches[node.parent]
			start := up.startConstant + up.startResistance*up.flow
			flow = (start - b.constant - b.coupling*up.flow) / b.resistance
		}
		change = max(change, math.Abs(flow-b.flow))
		if node.leaf {
			// Tangents of a power law can ask for reversed flow on the way;
			// suction points never push, so stay above zero and come closer.
			flow = max(flow, 0.05*b.flow)
		}
		b.flow = flow
	}
	return change
}

// flow returns the flow in m3/s that a suction in Pa draws.
func (s Soil) flow(suction float64) float64 {
	return math.Exp(math.Log(suction/s.Coefficient) / s.Exponent)
}

// suction returns the suction in Pa that draws a flow in m3/s, and its derivative.
func (s Soil) suction(flow float64) (pressure, slope float64) {
	switch s.Exponent {
	case 1:
		return s.Coefficient * flow, s.Coefficient
	case 2:
		return s.Coefficient * flow * flow, 2 * s.Coefficient * flow
	}
	if flow <= 0 {
		return 0, 0
	}
	p := s.Coefficient * math.Exp(s.Exponent*math.Log(flow)) // Pow is slower
	return p, s.Exponent * p / flow
}

// rise returns the pressure in Pa that a fan must add, as its curve rates it, for
// the loss of all pipe from a segment of the main to the open end at a total flow
// in m3/s, and its derivative.
func (n *Network) rise(from int, q float64, r Rating) (pressure, slope float64) {
	pressure, slope = series(n.segments[from:], q)
	end, first := n.ends()
	k := exitK * end
	if r == StaticPressure {
		k -= first
	}
	return pressure + k*q*q, slope + 2*k*q
}

// ends returns the velocity pressure over flow squared at the open end and at
// the fan outlet. A fan without discharge pipe blows out of a mouth taken to be
// as wide as its inlet.
func (n *Network) ends() (end, first float64) {
	switch {
	case len(n.segments) == 0:
		return 0, 0
	case n.discharge == len(n.segments):
		inlet := &n.segments[n.discharge-1]
		if n.nodes[len(n.nodes)-1].first == n.discharge {
			return 0, 0 // the fan sits on the junction itself
		}
		return inlet.dynamic, inlet.dynamic
	}
	return n.segments[len(n.segments)-1].dynamic, n.segments[n.discharge].dynamic
}

// demand returns the pressure in Pa that a fan must add at a flow in m3/s, as
// its curve rates it, and its derivative.
func (n *Network) demand(w *work, q float64, r Rating) (pressure, slope float64, err error) {
	if q <= 0 {
		return 0, 0, nil
	}
	if err := n.split(w, q); err != nil {
		return 0, 0, fmt.Errorf("at %.4g m3/s: %w", q, err)
	}
	suction, suctionSlope := w.legs(q)
	pressure, slope = n.rise(n.nodes[len(n.nodes)-1].first, q, r)
	return pressure + suction, slope + suctionSlope, nil
}
