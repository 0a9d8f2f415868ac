package derive

import (
	"errors"
	"math"

	"github.com/slablint/slablint/internal/airflow"
)

// chooseFlow takes the best that is known of the flow of the whole system:
// measured in the main pipe, measured in every leg, implied by the gauge, or
// worked out from fan, pipe and ground.
func (s *system) chooseFlow() {
	main := s.get("commissioning").get("measured_flow").rooted()
	s.measured.basis = main.lack()
	sum := s.sumOfLegs()
	switch {
	case main.exists():
		s.measured, s.usedWord = main.quantity().notBelow("a flow"), "as measured in the main pipe"
		s.used = s.measured
	case sum.known():
		s.measured, s.used, s.usedWord = sum, sum, "sum of the flows measured in the legs"
	case s.fromGauge.known():
		s.used, s.usedWord = s.fromGauge, "from the gauge and the fan's curve"
	case s.operating.known():
		s.used, s.usedWord = s.operating, "where the fan's curve meets pipe and ground"
	default:
		s.used.basis = main.lack()
	}
}

// sumOfLegs is the flow measured leg by leg.
func (s *system) sumOfLegs() figure {
	f := figure{basis: nothing}
	for _, p := range s.points {
		f.si += p.told.si
		f.unit = p.told.unit
		f.basis = join(f.basis, p.told.basis)
	}
	if len(s.points) == 0 {
		f.basis = s.get("suction_points").lack()
	}
	return f
}

// distribute finds what each segment and each suction point carries of the flow
// used, and what that takes.
func (s *system) distribute(d *deriver) {
	s.split, s.stateBasis = s.flowing, join(s.used.basis, s.pipe)
	legs := s.sumOfLegs()
	switch {
	case !s.flowing.known():
	case len(s.points) == 1:
	case legs.known() && legs.si > 0:
		s.split = join(s.flowing, legs.basis)
	case s.soilBasis.known():
		s.split = join(s.pipe, s.soilBasis)
	default:
		s.split = nothing
		for _, p := range s.points {
			s.split = join(s.split, p.told.basis)
		}
	}
	s.stateBasis = join(s.stateBasis, s.split)
	if s.stateBasis.known() {
		s.solve(legs, d.gas)
	}
	s.shares(legs)
	if s.state != nil {
		for k := range s.state.Segments {
			state := &s.state.Segments[k]
			s.segments[s.index[state.Name]].state = state
		}
	}
	for i := range s.segments {
		s.flowThrough(i, d)
	}
}

// solve works the pipe out at the flow used.
func (s *system) solve(legs figure, gas airflow.Air) {
	at := s.network.At
	switch {
	case len(s.points) == 1:
		at = s.network.SharedBed().At
	case legs.known() && legs.si > 0:
		held := s.held(legs.si, gas)
		if held == nil {
			s.stateBasis = refused("a leg without flow has no place among the others", s.get("suction_points"))
			return
		}
		at = held.At
	case s.operatingPoint != nil:
		at = s.operatingPoint.At
	}
	state, err := at(s.used.si)
	if err != nil {
		s.stateBasis = refused(err.Error(), s.get("pipe"))
		return
	}
	s.state = state
}

// held is the network with the flow split as measured in the legs. A suction at
// the pits far above any loss in pipe, which rises with the third power of flow,
// holds each leg to its measured share to within a few millionths; differences
// between places in the pipe are those of the pipe.
func (s *system) held(sum float64, gas airflow.Air) *airflow.Network {
	const holding, exponent = 1e7, 3 // Pa
	whole := s.whole()
	for _, p := range s.points {
		share := p.told.si / sum * s.used.si
		setSoil(&whole.Suction, p.name, airflow.Soil{Coefficient: holding / math.Pow(share, exponent), Exponent: exponent})
	}
	network, err := airflow.NewNetwork(whole, gas)
	if err != nil {
		return nil
	}
	return network
}

func setSoil(b *airflow.Branch, name string, soil airflow.Soil) {
	if b.Name == name && len(b.Tributaries) == 0 {
		b.Soil = &soil
	}
	for i := range b.Tributaries {
		setSoil(&b.Tributaries[i], name, soil)
	}
}

// shares gives each suction point and each segment its flow.
func (s *system) shares(legs figure) {
	share := join(s.used.basis, s.split)
	for _, p := range s.points {
		p.flow = figure{unit: s.used.unit, basis: share}
		switch {
		case !p.flow.known():
		case len(s.points) == 1:
			p.flow.si = s.used.si
		case legs.known() && legs.si > 0:
			p.flow.si = p.told.si / legs.si * s.used.si
		case s.state != nil:
			s.splitSolved = true
			p.flow.basis = s.stateBasis
			for _, at := range s.state.Points {
				if at.Name == p.name {
					p.flow.si = at.Flow
				}
			}
		default:
			p.flow.basis = s.stateBasis
		}
	}
	main := join(s.used.basis, s.flowing)
	for i, seg := range s.segments {
		seg.flow = figure{s.used.si, s.used.unit, main}
		if seg.flow.known() && !s.carriesAll(i) {
			seg.flow.si = 0
		}
	}
	if !s.flowing.known() {
		return
	}
	for _, p := range s.points {
		for i := p.first; i >= 0 && !s.carriesAll(i); i = s.segments[i].next {
			s.segments[i].flow.si += p.flow.si
			s.segments[i].flow.basis = p.flow.basis
		}
	}
}

// flowDigits is how exact a flow is: that of all the air, or of one leg.
func (s *system) flowDigits(all bool) int {
	if s.measured.known() && (all || !s.splitSolved) {
		return exactDigits
	}
	return modelDigits
}

// flowThrough finds speed, Reynolds number, friction and loss of one segment:
// from the network at the flow used, else by itself as far as its own fields go.
func (s *system) flowThrough(i int, d *deriver) {
	seg := s.segments[i]
	seg.speed = figure{unit: speedUnit(seg.flow.unit)}
	if s.state != nil {
		seg.speed.si, seg.speed.basis = seg.state.Velocity, s.stateBasis
		seg.stated, seg.rubbed, seg.lost = s.stateBasis, s.stateBasis, s.stateBasis
		return
	}
	moving := join(seg.flow.basis, seg.boreBasis)
	seg.speed.basis = moving
	seg.stated = join(moving, d.gasBasis)
	seg.rubbed = join(seg.stated, seg.roughBasis)
	seg.lost = join(seg.rubbed, seg.length.basis, seg.fitBasis)
	if !moving.known() {
		return
	}
	seg.speed.si = seg.flow.si / seg.bore.Area
	if !seg.stated.known() {
		return
	}
	piece := s.piece(i)
	if !seg.length.known() {
		piece.Length = 0
	}
	alone, err := airflow.NewNetwork(airflow.System{Suction: airflow.Branch{Name: "alone", Segments: []airflow.Segment{piece}}}, d.gas)
	if err == nil {
		var state *airflow.State
		if state, err = alone.SharedBed().At(seg.flow.si); err == nil {
			seg.state = &state.Segments[0]
		}
	}
	if err != nil {
		seg.stated = refused(err.Error(), seg.node)
		seg.rubbed, seg.lost = seg.stated, seg.stated
	}
}

// exitVelocity is the speed of the air at the open end.
func (s *system) exitVelocity() figure {
	if !s.flowing.known() {
		return figure{basis: s.flowing}
	}
	return s.segments[s.last].speed
}

// findPits finds the suction left in the pits: what the gauge shows less what
// is lost before its tap, else what the fan gives at the flow used less all that
// is lost.
func (s *system) findPits() {
	unit, shift, b := s.shown.unit, 0.0, join(s.stateBasis, s.shown.basis)
	seg, tap, tapBasis := s.tapAt()
	usable := s.verdict == "" || s.verdict == airflow.GaugeUsable || s.verdict == airflow.GaugeNoFlow || s.verdict == airflow.GaugeOpenPipe
	b = join(b, tapBasis)
	s.gaugeSays = b
	if b.known() && !usable {
		s.gaugeSays = s.shown.refuse(errors.New("no suction follows from a reading that is " + string(s.verdict)))
	}
	if b.known() && usable {
		if s.state != nil {
			shift = s.shown.si - s.suctionAt(seg, tap)
		}
	} else if given := s.fanPressure(s.used); given.known() && s.stateBasis.known() {
		unit, b = given.unit, join(s.stateBasis, given.basis)
		shift = given.si - s.state.FanStatic
	} else {
		b = s.gaugeSays
	}
	for i, p := range s.points {
		p.pit = figure{unit: unit, basis: b}
		if b.known() {
			p.pit.si = s.suctionAt(-1, i) + shift
		}
	}
}

// suctionAt is the static suction of the state at the end of a segment or, for
// -1, in the pit of a suction point.
func (s *system) suctionAt(seg, point int) float64 {
	if seg >= 0 {
		for _, state := range s.state.Segments {
			if state.Name == s.segments[seg].name {
				return state.StaticSuction
			}
		}
	}
	for _, state := range s.state.Points {
		if state.Name == s.points[point].name {
			return state.Suction
		}
	}
	return 0
}
