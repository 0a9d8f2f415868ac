package derive

import (
	"errors"

	"github.com/slablint/slablint/internal/airflow"
	"github.com/slablint/slablint/internal/quantity"
)

// readCurve reads the points of the fan's data sheet and brings the curve to
// the gas of the pipe.
func (s *system) readCurve(d *deriver) {
	list := s.fan.get("curve")
	points := make([]airflow.CurvePoint, 0, list.length())
	b := list.read()
	for i, n := range list.each() {
		flow, flowUnit, hasFlow := n.get("flow").measure()
		pressure, pressureUnit, hasPressure := n.get("pressure").measure()
		if !hasFlow || !hasPressure {
			b = join(b, demand(n.get("flow").quantity().basis, n.get("pressure").quantity().basis))
		}
		points = append(points, airflow.CurvePoint{Flow: flow, Pressure: pressure})
		if i == 0 {
			s.curveUnits = [2]quantity.Unit{flowUnit, pressureUnit}
		}
	}
	if len(points) == 0 {
		b = list.lack()
	}
	s.curveBasis = b
	defer func() {
		if !s.curveBasis.known() {
			s.shutOff.basis = s.curveBasis
		}
	}()
	if !b.known() {
		return
	}
	curve, err := airflow.NewFanCurve(points, airflow.CurveOptions{})
	var wrong *airflow.CurvePointError
	switch {
	case errors.As(err, &wrong):
		s.curveBasis = refused(err.Error(), list.item(wrong.Index))
		return
	case err != nil:
		s.curveBasis = refused(err.Error(), list)
		return
	}
	s.curve, s.curveBasis = curve, join(b, d.gasBasis)
	s.shutOff = figure{unit: s.curveUnits[1], basis: s.curveBasis}
	if s.curveBasis.known() {
		s.siteCurve = curve.AtDensity(d.gas.Density)
		first, measured := s.siteCurve.First()
		s.shutOff.si = first.Pressure
		if !measured {
			s.shutOff.basis = refused("the curve does not start at no flow", list.item(0))
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
		f.basis = flow.refuse(err)
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
	at, err := airflow.Operate(s.curve, s.network)
	var off *airflow.CurveRangeError
	switch {
	case errors.As(err, &off):
		s.operatingState = "above-shut-off"
		if off.Side == airflow.BeyondFreeDelivery {
			s.operatingState = "beyond-free-delivery"
		}
		s.operating.basis = refused(err.Error(), s.fan.get("curve"))
	case err != nil:
		s.operating.basis = refused(err.Error(), s.get("pipe"))
	default:
		s.operatingState = "crosses"
		s.operating.si, s.operatingPoint = at.Flow, at
	}
}
