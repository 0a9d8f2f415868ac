package derive

import (
	"errors"

	"github.com/slablint/slablint/internal/airflow"
	"github.com/slablint/slablint/internal/place"
)

// readCurve reads the points of the fan's data sheet and brings the curve to
// the gas of the pipe.
func (s *system) readCurve(d *deriver) {
	list := s.fan.get("curve")
	var points []airflow.CurvePoint
	b := reading(list.at)
	for i, n := range list.items() {
		flow, pressure := n.get("flow").quantity(), n.get("pressure").quantity()
		if lacks := join(flow.basis, pressure.basis); !lacks.known() {
			b = join(b, &basis{lacks: lacks.lacks, why: lacks.why})
		}
		points = append(points, airflow.CurvePoint{Flow: flow.si, Pressure: pressure.si})
		if i == 0 {
			s.curveUnits = [2]string{flow.unit, pressure.unit}
		}
	}
	if len(points) == 0 {
		b = lacking(list.at)
	}
	s.curveBasis = b
	if !b.known() {
		return
	}
	curve, err := airflow.NewFanCurve(points, airflow.CurveOptions{})
	var wrong *airflow.CurvePointError
	switch {
	case errors.As(err, &wrong):
		s.curveBasis = refused(err.Error(), list.at.Append(wrong.Index))
		return
	case err != nil:
		s.curveBasis = refused(err.Error(), list.at)
		return
	}
	s.curve, s.curveBasis = curve, join(b, d.gasBasis)
	s.shutOff = figure{unit: s.curveUnits[1], basis: s.curveBasis}
	if s.curveBasis.known() {
		s.siteCurve = curve.AtDensity(d.gas.Density)
		first, measured := s.siteCurve.First()
		s.shutOff.si = first.Pressure
		if !measured {
			s.shutOff.basis = refused("the curve does not start at no flow", list.at.Append(0))
		}
	}
}

// fanPressure is what the fan gives at a flow.
func (s *system) fanPressure(flow figure) figure {
	f := figure{unit: s.curveUnits[1], basis: join(s.curveBasis, flow.basis)}
	if !f.known() {
		return f
	}
	p, _, err := s.siteCurve.Pressure(flow.si)
	if err != nil {
		f.basis = refused(err.Error(), flow.places()...)
	}
	f.si = p
	return f
}

// operate finds where the fan's curve crosses what pipe and ground ask for.
func (s *system) operate() {
	s.operating = figure{unit: s.curveUnits[0], basis: join(s.curveBasis, s.pipe, s.soilBasis)}
	if !s.operating.known() {
		return
	}
	s.operating.basis = s.brief(s.operating.basis)
	at, err := airflow.Operate(s.curve, s.network)
	var off *airflow.CurveRangeError
	switch {
	case errors.As(err, &off):
		s.operatingState = "above-shut-off"
		if off.Side == airflow.BeyondFreeDelivery {
			s.operatingState = "beyond-free-delivery"
		}
		s.operating.basis = refused(err.Error(), s.fan.get("curve").at)
	case err != nil:
		s.operating.basis = refused(err.Error(), s.get("pipe").at)
	default:
		s.operatingState = "crosses"
		s.operating.si, s.operatingAt = at.Flow, at.Pressure
	}
}

// places are where a figure was read.
func (f figure) places() []place.Pointer {
	at := make([]place.Pointer, 0, len(f.inputs))
	for _, p := range f.inputs {
		at = append(at, place.Pointer(p.(string)))
	}
	if len(at) == 0 {
		at = append(at, place.Root)
	}
	return at
}

// curvePoints is how many points of a curve are given for drawing.
const curvePoints = 16

// fanCurve is the fan's curve at the site for drawing.
func (s *system) fanCurve() []any {
	if s.siteCurve == nil {
		return nil
	}
	first, _ := s.siteCurve.First()
	last, _ := s.siteCurve.Last()
	out := make([]any, 0, curvePoints)
	for i := range curvePoints {
		flow := first.Flow + (last.Flow-first.Flow)*float64(i)/(curvePoints-1)
		if i == curvePoints-1 {
			flow = last.Flow
		}
		if p, _, err := s.siteCurve.Pressure(flow); err == nil {
			out = append(out, drawn(flow, p))
		}
	}
	return out
}
