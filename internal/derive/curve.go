package derive

import (
	"encoding/json"
	"math"
	"slices"
	"strconv"
)

// curvePoints is how many points of a curve are given for drawing.
const curvePoints = 16

// fanCurve is the fan's curve at the site for drawing.
func (s *system) fanCurve() []any {
	first, _ := s.siteCurve.First()
	last, _ := s.siteCurve.Last()
	out := make([]any, 0, curvePoints)
	for i := range curvePoints {
		flow := first.Flow + (last.Flow-first.Flow)*float64(i)/(curvePoints-1)
		if p, _, err := s.siteCurve.Pressure(math.Min(flow, last.Flow)); err == nil {
			out = append(out, &drawnPoint{flow, p})
		}
	}
	return out
}

// solved is at how many flows the network is solved for the drawing of its
// curve. They halve from one to the next.
const solved = 5

// systemCurve is what pipe and ground ask of the fan, for drawing, without points
// where that cannot be worked out. It is solved at a few flows, between which the pressure is taken as a power of flow. That is off
// by less than a line's width, as no part of it is far from a power.
func (s *system) systemCurve() []any {
	last, _ := s.curve.Last()
	var flows [solved]float64
	for i := range solved {
		flows[i] = last.Flow * math.Exp2(float64(i-solved+1))
	}
	pressures, err := s.network.FanStatics(flows[:])
	if err != nil || slices.ContainsFunc(pressures, func(p float64) bool { return !(p > 0) }) {
		return []any{}
	}
	out := make([]any, 0, curvePoints)
	out = append(out, &drawnPoint{})
	k := 1
	for i := 1; i < curvePoints; i++ {
		flow := last.Flow * float64(i) / (curvePoints - 1)
		for k < solved-1 && flows[k] < flow {
			k++
		}
		power := math.Log2(pressures[k] / pressures[k-1])
		out = append(out, &drawnPoint{flow, pressures[k] * math.Pow(flow/flows[k], power)})
	}
	return out
}

// A drawnPoint is one point of a curve for drawing, SI.
type drawnPoint struct{ flow, pressure float64 }

// Len is the number of members.
func (p *drawnPoint) Len() int { return 2 }

// Name is the name of a member.
func (p *drawnPoint) Name(i int) string { return [...]string{"flow", "pressure"}[i] }

// Get is a member by its name.
func (p *drawnPoint) Get(name string) any {
	x := p.flow
	switch name {
	case "flow":
	case "pressure":
		x = p.pressure
	default:
		return nil
	}
	return json.Number(strconv.FormatFloat(x, 'g', modelDigits, 64))
}
