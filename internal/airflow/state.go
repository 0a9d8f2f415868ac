package airflow

import (
	"fmt"
	"math"
)

// State is a network at one flow.
type State struct {
	Flow float64 // m3/s

	Soil      float64 // Pa, suction in the pits, mean weighted by flow
	Suction   float64 // Pa, total suction at the fan inlet: pits and losses on the suction side
	Discharge float64 // Pa, losses from fan outlet to open air, the speed lost at the end included

	FanTotal  float64 // Pa, rise in total pressure asked of the fan
	FanStatic float64 // Pa, fan static pressure: FanTotal less the velocity pressure at the outlet

	Segments []SegmentState // branch by branch from the suction points, then the discharge
	Points   []PointState   // the suction points

	// Imbalance is the largest difference in Pa between the suctions that the
	// branches meeting at a junction work out to; numerical noise.
	Imbalance float64
}

// SegmentState is one segment at one flow.
type SegmentState struct {
	Name             string
	Flow             float64 // m3/s
	Velocity         float64 // m/s
	VelocityPressure float64 // Pa
	Reynolds         float64
	Friction         float64 // Darcy friction factor (Churchill); 0 without flow
	Loss             float64 // Pa, friction and fittings
	StaticSuction    float64 // Pa, static suction at the downstream end; negative where the pipe pushes
}

// PointState is one suction point at one flow.
type PointState struct {
	Name    string
	Flow    float64 // m3/s
	Suction float64 // Pa in the pit
}

// At returns the network at a total flow in m3/s, zero or more. It returns a
// MissingSoilError when a soil resistance it needs is not recorded: one suction
// point alone has all the flow, so its pipes can be seen through SharedBed.
func (n *Network) At(flow float64) (*State, error) {
	return n.from(n.start(flow), flow)
}

// from is At, starting from the flows in w.
func (n *Network) from(w *work, flow float64) (*State, error) {
	if err := n.checkFlow(flow); err != nil {
		return nil, err
	}
	if flow == 0 {
		clear(w.branches)
	} else if err := n.split(w, flow); err != nil {
		return nil, fmt.Errorf("at %.4g m3/s: %w", flow, err)
	}
	return n.state(w, flow), nil
}

// FanStatics returns the fan static pressures in Pa that the network asks for at
// several flows in m3/s, each above zero: what At says of them, but faster, as
// each split of the flow starts from the one before. Errors are those of At.
func (n *Network) FanStatics(flows []float64) ([]float64, error) {
	pressures := make([]float64, len(flows))
	var w *work
	for i, flow := range flows {
		if err := n.checkFlow(flow); err != nil {
			return nil, err
		}
		if w == nil {
			w = n.start(flow)
		}
		var err error
		if pressures[i], _, err = n.demand(w, flow, StaticPressure); err != nil {
			return nil, err
		}
	}
	return pressures, nil
}

func (n *Network) checkFlow(flow float64) error {
	if !(flow >= 0) || math.IsInf(flow, 1) {
		return fmt.Errorf("flow %g m3/s", flow)
	}
	if len(n.missing) > 0 {
		return &MissingSoilError{n.missing}
	}
	return nil
}

// state writes out the flows in w, which add up to flow.
func (n *Network) state(w *work, flow float64) *State {
	s := &State{Flow: flow, Segments: make([]SegmentState, len(n.segments))}
	s.Points = make([]PointState, 0, len(n.nodes))
	starts := make([]struct { // of the branches
		suction float64
		known   bool
	}, len(n.nodes))
	var last rubbing
	for i := range n.nodes {
		node, q := &n.nodes[i], w.branches[i].flow
		at := starts[i].suction
		if node.leaf {
			at, _ = node.soil.suction(q)
			s.Points = append(s.Points, PointState{node.name, q, at})
			if flow > 0 {
				s.Soil += at * q / flow
			}
		}
		for k := node.first; k < node.after; k++ {
			s.Segments[k] = n.segments[k].state(q, &last)
			at += s.Segments[k].Loss
			s.Segments[k].StaticSuction = at + s.Segments[k].VelocityPressure
		}
		if node.parent < 0 {
			s.Suction = at
			continue
		}
		joined, _, _ := node.join.loss(q, w.branches[node.parent].flow)
		at += joined
		if start := &starts[node.parent]; start.known {
			s.Imbalance = max(s.Imbalance, math.Abs(at-start.suction))
		} else {
			start.suction, start.known = at, true
		}
	}
	discharge := s.Segments[n.discharge:]
	for k := range discharge {
		discharge[k] = n.segments[n.discharge+k].state(flow, &last)
		s.Discharge += discharge[k].Loss
	}
	end, first := n.ends()
	s.Discharge += exitK * end * flow * flow
	s.FanTotal = s.Suction + s.Discharge
	s.FanStatic = s.FanTotal - first*flow*flow
	at := -s.Discharge
	for k := range discharge {
		at += discharge[k].Loss
		discharge[k].StaticSuction = at + discharge[k].VelocityPressure
	}
	return s
}

func (p *pipe) state(q float64, last *rubbing) SegmentState {
	re := p.reynolds * q
	loss, _ := p.loss(q, last)
	f := last.factor
	if !(re > 0) {
		f = 0
	}
	return SegmentState{
		Name: p.name, Flow: q, Velocity: q / p.area, VelocityPressure: p.dynamic * q * q,
		Reynolds: re, Friction: f, Loss: loss,
	}
}
