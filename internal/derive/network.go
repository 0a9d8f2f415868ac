package derive

import (
	"github.com/slablint/slablint/internal/airflow"
)

// fit adds to the segments what follows from their neighbours: the inlet in the
// pit, steps of the bore, the guard at the open end.
func (s *system) fit() {
	if !s.flowing.known() {
		return
	}
	for i, seg := range s.segments {
		if seg.startsAt >= 0 {
			inlet, _, _ := airflow.NewFitting(airflow.InletFlush, 0, seg.bore)
			seg.fittings = append(seg.fittings, inlet)
			seg.fitBasis = join(seg.fitBasis, assuming(flushInlet))
			s.addDamper(seg)
		}
		if next := seg.next; next >= 0 && len(s.segments[next].from) == 1 && i != s.afterFan {
			step(seg, s.segments[next])
		}
	}
	s.addGuard(s.segments[s.last])
	for _, seg := range s.segments {
		if seg.tee.kind != "" && !s.meets(seg.next) {
			seg.fittings = append(seg.fittings, seg.tee.fitting)
		}
	}
}

// addDamper adds the balancing valve of a leg, where one is recorded.
func (s *system) addDamper(seg *segment) {
	damper := s.points[seg.startsAt].get("damper_loss")
	if !damper.exists() {
		return
	}
	k := damper.number().notBelow("a loss coefficient")
	seg.fitBasis = join(seg.fitBasis, k.basis)
	seg.fittings = append(seg.fittings, airflow.Fitting{K: k.si})
}

// step adds what a change of bore between two segments takes.
func step(up, down *segment) {
	if up.reducer || down.reducer {
		return
	}
	b := join(up.boreBasis, down.boreBasis)
	switch {
	case !b.known():
		up.fitBasis = join(up.fitBasis, b.without())
		down.fitBasis = join(down.fitBasis, b.without())
	case down.bore.Area < up.bore.Area:
		down.fittings = append(down.fittings, airflow.Contraction(up.bore, down.bore))
	case down.bore.Area > up.bore.Area:
		up.fittings = append(up.fittings, airflow.Expansion(up.bore, down.bore))
	}
}

// addGuard adds what the guard of the open end takes.
func (s *system) addGuard(end *segment) {
	guard, b := s.discharge.get("guard").choice()
	switch guard {
	case "", "none":
		end.fitBasis = join(end.fitBasis, b)
	case "mesh":
		end.fittings = append(end.fittings, airflow.UsualMeshGuard)
		end.fitBasis = join(end.fitBasis, b, assuming(meshGuard))
	default:
		end.fitBasis = join(end.fitBasis, refused("the loss of a guard of this kind is not known", s.discharge.get("guard")))
	}
	if rain := s.discharge.get("rain_cap"); rain.isTrue() {
		end.fitBasis = join(end.fitBasis, refused("the loss of a rain cap is not known", rain))
	}
}

// meets reports whether two legs meet in a recorded tee where segment i begins:
// one comes straight through it, the other from its side.
func (s *system) meets(i int) bool {
	if i < 0 || len(s.segments[i].from) != 2 {
		return false
	}
	a, b := s.segments[s.segments[i].from[0]].tee, s.segments[s.segments[i].from[1]].tee
	return a.kind != "" && b.kind != "" && a.kind != b.kind
}

// build makes the network of all pipe.
func (s *system) build(d *deriver) {
	s.soilBasis = nothing
	for _, p := range s.points {
		s.soilBasis = demand(s.soilBasis, p.soilBasis)
	}
	parts := append(s.mem.bases[:0], s.driven, d.gasBasis)
	for _, seg := range s.segments {
		parts = append(parts, seg.boreBasis, seg.length.basis, seg.roughBasis, seg.fitBasis)
	}
	s.mem.bases = parts
	s.pipe = demand(parts...)
	if !s.driven.known() {
		s.pipe = s.driven
	}
	if !s.pipe.known() {
		return
	}
	s.pipe = join(s.pipe, s.flowing, s.driven, d.gasBasis, s.discharge.get("guard").read())
	network, err := airflow.NewNetwork(s.whole(), d.gas)
	if err != nil {
		s.pipe = refused(err.Error(), s.get("pipe"))
		return
	}
	s.network = network
	for i, seg := range s.segments {
		if len(seg.from) > 1 && !s.meets(i) {
			s.pipe = join(s.pipe, assuming(freeJunction))
		}
	}
}

// piece is a segment for the network.
func (s *system) piece(i int) airflow.Segment {
	seg := s.segments[i]
	return airflow.Segment{Name: seg.name, Bore: seg.bore, Length: seg.length.si, Roughness: seg.roughness, Fittings: seg.fittings}
}

// pieces are the segments from one to another, -1 for the open end, in the way of
// the air.
func (s *system) pieces(first, last int) []airflow.Segment {
	count := 0
	for i := first; i >= 0; i = s.segments[i].next {
		if count++; i == last {
			break
		}
	}
	pieces := s.mem.pieces.room(0, count)
	for i := first; len(pieces) < count; i = s.segments[i].next {
		pieces = append(pieces, s.piece(i))
	}
	return pieces
}

// whole is all the pipe.
func (s *system) whole() airflow.System {
	return airflow.System{Suction: s.branch(s.afterFan), Discharge: s.pieces(s.segments[s.afterFan].next, -1)}
}

// branch is the leg that ends with a segment, and all that flows into it.
func (s *system) branch(end int) airflow.Branch {
	start := end
	for len(s.segments[start].from) == 1 {
		start = s.segments[start].from[0]
	}
	b := airflow.Branch{Segments: s.pieces(start, end)}
	if at := s.segments[start].startsAt; at >= 0 {
		p := s.points[at]
		b.Name = p.name
		if p.soilBasis.known() {
			b.Soil = &p.soil
		}
		return b
	}
	b.Name = "the start of " + s.segments[start].name
	b.Tributaries = s.mem.branches.room(0, len(s.segments[start].from))
	for _, i := range s.segments[start].from {
		leg := s.branch(i)
		if s.meets(start) {
			leg.Join = airflow.Join{Kind: airflow.JoinRun, Angle: 90}
			if s.segments[i].tee.kind == airflow.TeeBranch {
				leg.Join.Kind = airflow.JoinSide
			}
		}
		b.Tributaries = append(b.Tributaries, leg)
	}
	return b
}
