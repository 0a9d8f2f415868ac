package derive

import (
	"errors"
	"math"

	"github.com/slablint/slablint/internal/geometry"
	"github.com/slablint/slablint/internal/quantity"
)

func (d *deriver) segmentValues() []any {
	count := 0
	for _, s := range d.systems {
		count += len(s.segments)
	}
	out := d.list(count)
	for _, s := range d.systems {
		s.findTraps()
		for i, seg := range s.segments {
			e := d.named(seg.id, seg.node, 13, 1)
			out = append(out, e)
			e.set("system", s.name())
			e.exact("inner_diameter", quantity.Length, figure{seg.bore.Hydraulic, seg.boreUnit, seg.boreBasis}, seg.boreMethod)
			e.exact("feeds", quantity.Number, figure{float64(seg.feeds), units.one, s.flowing}, "suction points whose air passes")
			e.value("flow", quantity.Flow, seg.flow, "at the flow used", s.flowDigits(s.carriesAll(i)))
			e.model("velocity", quantity.Velocity, seg.speed, "flow over bore")
			e.model("reynolds", quantity.Number, figure{seg.state.Reynolds, units.one, seg.stated}, "speed, bore, density and viscosity")
			e.model("friction_factor", quantity.Number, figure{seg.state.Friction, units.one, seg.rubbed}, "Churchill 1977, Darcy's factor")
			e.model("loss", quantity.Pressure, figure{seg.state.Loss, s.pressureUnit(), seg.lost}, "Darcy and Weisbach, with the fittings")
			d.slopes(seg, e)
			lift := figure{seg.trap.si * waterWeight, s.pressureUnit(), seg.trap.basis}
			e.exact("trap_suction", quantity.Pressure, lift, "water column as high as the trap is deep")
			e.exact("trap_depth", quantity.Length, seg.trap, "low point of the recorded lengths and rises, drained or not; 0 when there is none")
		}
	}
	return out
}

func (d *deriver) pointValues() []any {
	count := 0
	for _, s := range d.systems {
		count += len(s.points)
	}
	out := d.list(count)
	for _, s := range d.systems {
		for _, p := range s.points {
			e := d.about(p.node, 4, 1)
			e.set("system", s.name())
			e.value("flow", quantity.Flow, p.flow, "share of the flow used", s.flowDigits(len(s.points) == 1))
			told := p.get("suction").quantity()
			fromGauge := figure{p.pit.si, p.pit.unit, s.gaugeSays}
			e.model("suction_difference", quantity.Ratio, quotient(difference(told, fromGauge), fromGauge), "measured less from the gauge, over the latter")
			e.model("shutoff_share", quantity.Ratio, quotient(told, s.shutOff), "measured in the pit over shut-off pressure")
			e.model("pit_suction", quantity.Pressure, p.pit, "gauge or fan less the losses between")
			out = append(out, e)
		}
	}
	return out
}

// waterWeight is the conventional weight of water in Pa a metre: NIST SP 811
// App. B.8, 1000 kg/m3 times 9.80665 m/s2.
const waterWeight = 9806.65

// leastSlope is 1/8 in per ft: ANSI/AARST SGM-SF 2017 (12/20) 6.2.2.
const leastSlope = 1.0 / 96

// slopes is the fall of a level run back to the suction point. An upright run
// drains by itself.
func (d *deriver) slopes(seg *segment, e *entry) {
	run, told := seg.get("run").rooted(), seg.get("slope").rooted()
	way, b := run.choice()
	if way == "vertical" {
		upright := refused("an upright run drains by itself", run)
		for _, name := range [...]string{"fall_required", "fall", "slope_disagreement", "slope"} {
			e.unknown(name, upright)
		}
		return
	}
	rise, slope := seg.rise, told.quantity()
	level := figure{slope.si, slope.unit, join(slope.basis, b)}
	unit := seg.length.unit
	if unit == units.feet {
		unit = units.inches
	}
	required := figure{geometry.RequiredFall(seg.length.si, leastSlope), unit, join(b, seg.length.basis)}
	e.exact("fall_required", quantity.Length, required, "1/8 in per ft: ANSI/AARST SGM-SF 2017 (12/20) 6.2.2")
	fall, fallMethod := figure{rise.si, rise.unit, join(rise.basis, b)}, "recorded rise"
	if !rise.known() && slope.known() {
		fall, fallMethod = figure{slope.si * seg.length.si, unit, join(slope.basis, seg.length.basis, b)}, "recorded slope times length"
	}
	e.exact("fall", quantity.Length, fall, fallMethod)
	worked := seg.riseOverLength(b)
	e.exact("slope_disagreement", quantity.Slope, apart(level, worked), "recorded slope against rise over length, either way")
	if told.exists() {
		e.recorded("slope", quantity.Slope, level, told, "as recorded")
		return
	}
	e.exact("slope", quantity.Slope, worked, "rise over length")
}

// riseOverLength is the slope of a level run from its measures.
func (seg *segment) riseOverLength(level basis) figure {
	f := figure{seg.rise.si / seg.length.si, units.millimetersPerMeter, join(seg.rise.basis, seg.length.basis, level)}
	if isFeet(seg.rise.unit) {
		f.unit = units.inchesPerFoot
	}
	if f.known() && (seg.length.si == 0 || math.Abs(seg.rise.si) > seg.length.si) {
		f.basis = seg.rise.refuse(errors.New("a pipe does not rise by more than its length"))
	}
	return f
}

// findTraps finds the low points in which water stands.
func (s *system) findTraps() {
	for _, seg := range s.segments {
		seg.trap = figure{unit: seg.length.unit, basis: join(seg.rise.basis, s.flowing)}
		if seg.trap.unit == units.feet {
			seg.trap.unit = units.inches
		}
	}
	if !s.flowing.known() {
		return
	}
	run := make([]*segment, 0, len(s.segments))
	shape := make([]geometry.Segment, 0, len(s.segments))
	for _, p := range s.points {
		run = s.run(run, p)
		var b basis
		shape, b = outlined(shape, run)
		var low []geometry.LowPoint
		if b.known() {
			var err error
			if low, err = geometry.LowPoints(shape); err != nil {
				b = refused(err.Error(), s.get("pipe"))
			}
		}
		if !b.known() {
			for _, seg := range run {
				seg.trap.basis = join(seg.trap.basis, b.without())
			}
		}
		for _, l := range low {
			at := run[l.After]
			at.trap.si = max(at.trap.si, l.Depth)
		}
	}
}

// run is the way from a suction point to the open end, written into a list that
// is no longer needed.
func (s *system) run(into []*segment, p *suctionPoint) []*segment {
	into = into[:0]
	for i := p.first; i >= 0; i = s.segments[i].next {
		into = append(into, s.segments[i])
	}
	return into
}

// outlined is the lengths and rises of a run, written into a list that is no
// longer needed.
func outlined(into []geometry.Segment, run []*segment) ([]geometry.Segment, basis) {
	into = into[:0]
	b := nothing
	for _, seg := range run {
		into = append(into, geometry.Segment{Length: seg.length.si, Rise: seg.rise.si})
		b = demand(b, seg.length.basis, seg.rise.basis)
	}
	return into, b
}
