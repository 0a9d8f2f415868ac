package derive

import (
	"errors"
	"math"

	"github.com/slablint/slablint/internal/airflow"
)

// readGauge finds the last reading with the fan on, what it looks like next to
// the fan's shut-off pressure, and the flow it implies.
func (s *system) readGauge(d *deriver) {
	s.readings()
	shutOff, scale := s.shutOff, figure{basis: nothing}
	if ending := s.gauge.get("range"); ending.exists() {
		scale = ending.quantity()
	}
	s.fromGauge = figure{unit: s.curveUnits[0], basis: join(s.shown.basis, shutOff.basis, scale.basis)}
	if !join(s.shown.basis, scale.basis).known() {
		return
	}
	limit := shutOff.si
	if !shutOff.known() {
		limit = math.MaxFloat64 // what no fan reaches
	}
	verdict, err := airflow.JudgeGauge(s.shown.si, limit, scale.si)
	if err != nil {
		s.fromGauge.basis = s.shown.refuse(err)
		return
	}
	switch verdict {
	case airflow.GaugeReversed, airflow.GaugeNoSuction, airflow.GaugeAboveShutOff, airflow.GaugeOverRange:
		// No flow follows from such a reading, whatever the fan.
		s.verdict = verdict
		s.fromGauge.basis = s.shown.refuse(errors.New("no flow follows from a reading that is " + string(verdict)))
	default:
		if shutOff.known() {
			s.verdict = verdict
			s.flowAtReading(d)
		}
	}
}

// readings finds the first and the last reading taken with the fan on, by their
// times. One that does not say whether the fan was on could be either, and so
// could one of several that does not say when it was taken.
func (s *system) readings() {
	list := s.gauge.get("readings")
	said, times := nothing, nothing
	var first, last node
	var from, to figure // when they were taken
	taken := 0
	for _, n := range list.each() {
		on, b := n.get("fan_on").said()
		said = join(said, b)
		if !on {
			continue
		}
		at := n.get("at").quantity()
		times = join(times, at.basis)
		if taken++; taken == 1 || at.si < from.si {
			first, from = n, at
		}
		if taken == 1 || at.si >= to.si {
			last, to = n, at
		}
	}
	switch taken {
	case 0:
		s.shown.basis = join(list.lack(), said)
		s.shownFirst = s.shown
		return
	case 1:
		times = nothing
	}
	value := func(n node) figure {
		f := n.get("value").quantity()
		f.basis = join(f.basis, n.get("fan_on").read(), times, said)
		return f
	}
	s.shown, s.shownAt, s.shownFirst = value(last), last.get("value"), value(first)
}

// tapAt is the segment whose end carries the gauge's tap, or the suction point
// when the tap is in a pit.
func (s *system) tapAt() (segment, point int, b basis) {
	tap, after := s.gauge.get("tap"), s.gauge.get("after_segment")
	b = nothing
	if tap.exists() {
		b = tap.read()
	}
	switch {
	case !s.flowing.known():
		return -1, -1, s.flowing
	case tap.text() == "discharge-side":
		return -1, -1, refused("what a tap on the discharge side shows is not the fan's suction", tap)
	case tap.text() == "pit" && len(s.points) == 1:
		return -1, 0, b
	case after.exists():
		for i, seg := range s.segments {
			switch {
			case seg.id != after.text() || after.text() == "":
			case tap.text() == "pit" && seg.startsAt >= 0:
				return -1, seg.startsAt, join(b, after.read())
			default:
				return i, -1, join(b, after.read())
			}
		}
		return -1, -1, refused("no segment of this system has this id", after)
	case tap.text() == "fan-inlet" && s.afterFan >= 0:
		return s.afterFan, -1, join(b, s.driven)
	}
	return -1, -1, after.lack()
}

// flowAtReading is the flow at which the fan would show the gauge its reading.
// Behind the last junction the way to the tap does not matter; in a leg among
// several the ground does, because it decides what share the leg draws.
func (s *system) flowAtReading(d *deriver) {
	seg, point, tapBasis := s.tapAt()
	f := figure{unit: s.curveUnits[0], basis: join(s.fromGauge.basis, s.curveBasis, tapBasis, s.pipe)}
	network, tap := s.network, airflow.Tap{}
	if point >= 0 {
		tap.Point = s.points[point].name
	} else if seg >= 0 {
		tap.Segment = s.segments[seg].name
	}
	if len(s.points) > 1 && (point >= 0 || seg >= 0 && !s.carriesAll(seg)) {
		f.basis = join(f.basis, s.soilBasis)
	}
	if f.known() && seg >= 0 && s.carriesAll(seg) {
		if network = s.tail(seg, d.gas); network == nil {
			f.basis = refused("there is no pipe from the tap to the fan", s.gauge.get("after_segment"))
		}
	}
	s.fromGauge = f
	if !f.known() {
		return
	}
	found, err := network.FlowFromGauge(s.curve, tap, s.shown.si, 0)
	if err != nil {
		s.fromGauge.basis = s.shown.refuse(err)
		return
	}
	s.fromGauge.si = found.Flow
}

// tail is the pipe from a segment that carries all the air to the open end; nil
// when the segment lies behind the fan.
func (s *system) tail(from int, gas airflow.Air) *airflow.Network {
	for i := from; i != s.afterFan; i = s.segments[i].next {
		if i < 0 {
			return nil
		}
	}
	whole := airflow.System{
		Suction:   airflow.Branch{Name: "tail", Segments: s.pieces(from, s.afterFan)},
		Discharge: s.pieces(s.segments[s.afterFan].next, -1),
	}
	network, err := airflow.NewNetwork(whole, gas)
	if err != nil {
		return nil
	}
	return network.SharedBed()
}
