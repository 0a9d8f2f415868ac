package airflow

import (
	"errors"
	"fmt"
	"math"
	"slices"
	"strings"
)

// Segment is a length of pipe of one bore with the fittings in it.
type Segment struct {
	Name      string // unique in the system
	Bore      Bore
	Length    float64 // m
	Roughness float64 // m
	Fittings  []Fitting
}

// Soil is the resistance of ground and gravel at a suction point: the suction
// in the pit is Coefficient times flow to the power Exponent. The exponent is 1
// where soil holds the air back and 2 where leaks or coarse gravel do.
type Soil struct {
	Coefficient float64 // Pa/(m3/s)^Exponent
	Exponent    float64
}

// SoilThrough returns the resistance that passes through one measured point, a
// flow in m3/s at a suction in Pa, with a known exponent.
func SoilThrough(flow, suction, exponent float64) (Soil, error) {
	s := Soil{suction / math.Pow(flow, exponent), exponent}
	if !(flow > 0) || !(suction > 0) {
		return Soil{}, fmt.Errorf("soil reference point of %g m3/s at %g Pa: both must be above zero", flow, suction)
	}
	return s, s.check()
}

// FitSoil returns the resistance through two measured points, flows in m3/s and
// suctions in Pa. It returns an error when the points do not rise together or
// give an exponent outside 0.5 to 3, which no ground has.
func FitSoil(flow1, suction1, flow2, suction2 float64) (Soil, error) {
	if !(flow1 > 0 && flow2 > 0 && suction1 > 0 && suction2 > 0) || flow1 == flow2 {
		return Soil{}, errors.New("soil points need two different flows and suctions, all above zero")
	}
	return SoilThrough(flow1, suction1, math.Log(suction2/suction1)/math.Log(flow2/flow1))
}

func (s Soil) check() error {
	switch {
	case !(s.Coefficient >= 0) || math.IsInf(s.Coefficient, 1):
		return fmt.Errorf("soil coefficient %g is not a resistance", s.Coefficient)
	case !(s.Exponent >= 0.5 && s.Exponent <= 3):
		return fmt.Errorf("soil exponent %.3g is outside 0.5 to 3", s.Exponent)
	}
	return nil
}

// Branch is a leg of the suction side. Air enters it at a suction point, or from
// its tributaries, and flows through its segments in order.
type Branch struct {
	Name        string   // of the suction point, or of the junction; unique
	Soil        *Soil    // of the suction point; nil when not recorded, or with tributaries
	Tributaries []Branch // what joins at the start of this branch
	Join        Join     // how this branch enters the one it feeds
	Segments    []Segment
}

// System is a fan with all its pipe.
type System struct {
	Suction   Branch    // ends at the fan's inlet
	Discharge []Segment // from the fan's outlet to the open end; its loss of velocity is added
}

// A MissingSoilError names the suction points whose soil resistance is needed
// and not recorded.
type MissingSoilError struct{ Points []string }

func (e *MissingSoilError) Error() string {
	return "soil resistance not recorded for " + strings.Join(e.Points, ", ")
}

// Network is a checked System filled with one air. It never changes, so many
// goroutines may use it.
type Network struct {
	air       Air
	nodes     []node // a branch comes after its tributaries; the last one ends at the fan
	segments  []pipe // by node, then the discharge
	discharge int    // index of the first discharge segment
	missing   []string
}

// node is a compiled Branch.
type node struct {
	name         string
	first, after int // its segments
	parent       int // -1 for the last node
	leaf         bool
	soil         Soil
	join         joint
}

// pipe is a compiled Segment; q is its flow in m3/s.
type pipe struct {
	name      string
	area      float64 // m2
	relative  float64 // roughness over hydraulic diameter
	reynolds  float64 // Reynolds number over flow, s/m3
	dynamic   float64 // velocity pressure over flow squared, Pa/(m3/s)2
	diameters float64 // straight and equivalent length over hydraulic diameter
	straight  float64 // the part of diameters that is straight pipe
	k         float64 // loss coefficient of the fittings
	viscous   float64 // what their K1 loses over flow, Pa s/m3
}

// loss returns the loss in Pa at a flow q in m3/s and its derivative. It reads
// or renews the friction that the last pipe left.
func (p *pipe) loss(q float64, last *rubbing) (loss, slope float64) {
	re := p.reynolds * q
	if re != last.reynolds || p.relative != last.relative {
		*last = newRubbing(re, p.relative)
	}
	if re < 1 {
		// Laminar: linear in flow down to nothing, where f has no value.
		linear := 64*p.dynamic*p.diameters/p.reynolds + p.viscous
		return linear*q + p.dynamic*p.k*q*q, linear + 2*p.dynamic*p.k*q
	}
	whole := last.factor*p.diameters + p.k
	return q * (p.dynamic*whole*q + p.viscous),
		p.dynamic*q*(2*whole+last.slope*re*p.diameters) + p.viscous
}

// series returns the loss in Pa of consecutive pipes at one flow in m3/s, and
// its derivative.
func series(pipes []pipe, q float64) (loss, slope float64) {
	var last rubbing
	for i := range pipes {
		l, s := pipes[i].loss(q, &last)
		loss += l
		slope += s
	}
	return loss, slope
}

// NewNetwork checks a system and fills it with air. Errors name the branch or
// segment at fault. A soil resistance that is not recorded is no error here:
// whatever needs it will say so.
func NewNetwork(s System, air Air) (*Network, error) {
	if !(air.Density > 0) || !(air.Viscosity > 0) || math.IsInf(air.Density, 1) || math.IsInf(air.Viscosity, 1) {
		return nil, fmt.Errorf("air of density %g kg/m3 and viscosity %g Pa s", air.Density, air.Viscosity)
	}
	branches, segments := s.Suction.count()
	n := &Network{air: air, nodes: make([]node, 0, branches), segments: make([]pipe, 0, segments+len(s.Discharge))}
	last, err := n.addBranch(&s.Suction)
	if err != nil {
		return nil, err
	}
	n.nodes[last].parent = -1
	n.discharge = len(n.segments)
	if err := n.addSegments(s.Discharge); err != nil {
		return nil, err
	}
	return n, n.checkNames()
}

// count returns how many branches and segments there are up to the end of b.
func (b *Branch) count() (branches, segments int) {
	branches, segments = 1, len(b.Segments)
	for i := range b.Tributaries {
		more, longer := b.Tributaries[i].count()
		branches += more
		segments += longer
	}
	return branches, segments
}

func (n *Network) addBranch(b *Branch) (int, error) {
	var few [4]int // tees and crosses have no more
	children := few[:0]
	for i := range b.Tributaries {
		child, err := n.addBranch(&b.Tributaries[i])
		if err != nil {
			return 0, err
		}
		children = append(children, child)
	}
	self := node{name: b.Name, leaf: len(children) == 0, first: len(n.segments)}
	if err := n.addSegments(b.Segments); err != nil {
		return 0, err
	}
	self.after = len(n.segments)
	switch {
	case !self.leaf && b.Soil != nil:
		return 0, fmt.Errorf("branch %q has both tributaries and soil", b.Name)
	case self.leaf && b.Soil == nil:
		n.missing = append(n.missing, b.Name)
	case self.leaf:
		if err := b.Soil.check(); err != nil {
			return 0, fmt.Errorf("suction point %q: %w", b.Name, err)
		}
		self.soil = *b.Soil
	}
	index := len(n.nodes)
	n.nodes = append(n.nodes, self)
	for i, child := range children {
		n.nodes[child].parent = index
		join, err := n.compileJoin(b, i, self)
		if err != nil {
			return 0, fmt.Errorf("branch %q where it joins %q: %w", b.Tributaries[i].Name, b.Name, err)
		}
		n.nodes[child].join = join
	}
	return index, nil
}

// compileJoin checks how tributary i enters branch b.
func (n *Network) compileJoin(b *Branch, i int, main node) (joint, error) {
	in := b.Tributaries[i].Join
	out := joint{kind: in.Kind}
	if in.Kind == JoinFree {
		return out, nil
	}
	if main.first == main.after {
		return out, errors.New("a loss at a junction needs the pipe after it")
	}
	combined := &n.segments[main.first]
	out.dynamic = combined.dynamic
	if in.Kind > JoinSide {
		return out, fmt.Errorf("unknown way to join %d", in.Kind)
	}
	if len(b.Tributaries) != 2 {
		return out, fmt.Errorf("losses are published for two entries, not %d: give loss coefficients", len(b.Tributaries))
	}
	side, other := &b.Tributaries[i], &b.Tributaries[1-i]
	if in.Kind == JoinRun {
		side, other = other, side
	}
	if side.Join.Kind != JoinSide || other.Join.Kind != JoinRun || side.Join.Angle != other.Join.Angle {
		return out, errors.New("a tee needs one run and one side entry of the same angle: for another shape give loss coefficients")
	}
	if len(side.Segments) == 0 {
		return out, errors.New("a side entry needs pipe before it")
	}
	var err error
	out.tee, err = newTee(in.Angle, side.Segments[len(side.Segments)-1].Bore.Area/combined.area)
	return out, err
}

func (n *Network) addSegments(segments []Segment) error {
	for i := range segments {
		s := &segments[i]
		p, err := compile(s, n.air)
		if err != nil {
			return fmt.Errorf("segment %q: %w", s.Name, err)
		}
		n.segments = append(n.segments, p)
	}
	return nil
}

func compile(s *Segment, air Air) (pipe, error) {
	switch {
	case !s.Bore.valid():
		return pipe{}, fmt.Errorf("bore of %g m2 and hydraulic diameter %g m", s.Bore.Area, s.Bore.Hydraulic)
	case !(s.Length >= 0) || math.IsInf(s.Length, 1):
		return pipe{}, fmt.Errorf("length %g m", s.Length)
	case !(s.Roughness >= 0 && s.Roughness <= 0.1*s.Bore.Hydraulic):
		return pipe{}, fmt.Errorf("roughness %g m in a bore of %g m", s.Roughness, s.Bore.Hydraulic)
	}
	p := pipe{
		name:     s.Name,
		area:     s.Bore.Area,
		relative: s.Roughness / s.Bore.Hydraulic,
		reynolds: air.Density * s.Bore.Hydraulic / (air.Viscosity * s.Bore.Area),
		dynamic:  air.Density / (2 * s.Bore.Area * s.Bore.Area),
	}
	length := s.Length
	for i, f := range s.Fittings {
		if !(f.K >= 0 && f.K1 >= 0 && f.Length >= 0) || math.IsInf(f.K+f.K1+f.Length, 1) {
			return pipe{}, fmt.Errorf("fitting %d: loss coefficients %g and %g, equivalent length %g m", i+1, f.K, f.K1, f.Length)
		}
		p.k += f.K
		p.viscous += p.dynamic / p.reynolds * f.K1
		length += f.Length
	}
	p.straight = s.Length / s.Bore.Hydraulic
	p.diameters = length / s.Bore.Hydraulic
	return p, nil
}

// checkNames makes sure that a name means one place, and that flows can be told
// apart where branches meet.
func (n *Network) checkNames() error {
	var few [32]string
	names := few[:0]
	for i := range n.nodes {
		names = append(names, n.nodes[i].name)
	}
	if err := unique("branch", names); err != nil {
		return err
	}
	names = names[:0]
	for i := range n.segments {
		names = append(names, n.segments[i].name)
	}
	if err := unique("segment", names); err != nil {
		return err
	}
	for i := range n.nodes {
		node := &n.nodes[i]
		if node.leaf && node.parent >= 0 && !resists(n.segments[node.first:node.after]) {
			return fmt.Errorf("suction point %q has no pipe before it joins another", node.name)
		}
	}
	return nil
}

func resists(pipes []pipe) bool {
	return slices.ContainsFunc(pipes, func(p pipe) bool { return p.diameters+p.k+p.viscous > 0 })
}

func unique(what string, names []string) error {
	slices.Sort(names)
	for i, name := range names {
		if name == "" {
			return fmt.Errorf("a %s has no name", what)
		}
		if i > 0 && names[i-1] == name {
			return fmt.Errorf("two %ss are named %q", what, name)
		}
	}
	return nil
}

// SharedBed returns the same pipes drawing from one bed that is everywhere at
// the same suction, as good gravel is. It splits a known flow between suction
// points whose soil resistance is not recorded; the suctions it reports are
// those of the pipes alone.
func (n *Network) SharedBed() *Network {
	bed := *n
	bed.missing = nil
	bed.nodes = slices.Clone(n.nodes)
	for i := range bed.nodes {
		bed.nodes[i].soil = Soil{0, 1}
	}
	return &bed
}

// FittingsLow and FittingsHigh bound the loss of PVC fittings as measured over
// that in tables: 53 % below to 109 % above (Brodhead and Saum, 1996
// International Radon Symposium, abstract).
const (
	FittingsLow  = 0.47
	FittingsHigh = 2.09
)

// ScaleFittings returns the same network with the losses of all its fittings,
// not of tees that join branches, multiplied by a factor above zero.
func (n *Network) ScaleFittings(factor float64) *Network {
	scaled := *n
	scaled.segments = slices.Clone(n.segments)
	for i := range scaled.segments {
		p := &scaled.segments[i]
		p.k *= factor
		p.viscous *= factor
		p.diameters = p.straight + factor*(p.diameters-p.straight)
	}
	return &scaled
}
