package airflow

import (
	"errors"
	"fmt"
	"math"
	"sort"

	"gonum.org/v1/gonum/interp"
)

// Rating is the pressure that a fan's data sheet plots.
type Rating uint8

// The two ratings. Data sheets of small fans give static pressure.
const (
	StaticPressure Rating = iota // total rise less the velocity pressure at the outlet
	TotalPressure
)

// CurvePoint is one point of a fan's data sheet.
type CurvePoint struct {
	Flow     float64 // m3/s
	Pressure float64 // Pa
}

// CurveOptions says how to read the points; the zero value suits most sheets.
type CurveOptions struct {
	Rating  Rating
	Density float64 // kg/m3 that the points hold for; 0 is standard air
	Linear  bool    // straight lines between points in place of a smooth curve
	// StallDip tells that the maker's curve rises before it falls. Only the
	// part right of its last peak is then used: left of it a fan hunts.
	StallDip bool
}

// FanCurve gives a fan's pressure by flow between its recorded points, never
// beyond them. It never changes, so many goroutines may use it.
type FanCurve struct {
	points []CurvePoint // as recorded, at density
	fit    interface {
		interp.FittablePredictor
		interp.DerivativePredictor
	}
	rating  Rating
	density float64 // kg/m3 of the points
	scale   float64 // density now over density
}

// A CurvePointError names the point, counted from zero, that makes a fan curve
// unusable.
type CurvePointError struct {
	Index  int
	Reason string
}

func (e *CurvePointError) Error() string {
	return fmt.Sprintf("fan curve point %d: %s", e.Index+1, e.Reason)
}

// CurveSide is an end of a fan curve.
type CurveSide uint8

// The two ends.
const (
	AboveShutOff       CurveSide = iota // more pressure, or less flow, than the first point
	BeyondFreeDelivery                  // less pressure, or more flow, than the last point
)

// A CurveRangeError tells that the answer lies off the recorded curve.
type CurveRangeError struct {
	Side CurveSide
	// Measured is true when the curve reaches that end of the fan's range, no
	// flow or no pressure, and false when it merely stops there.
	Measured bool
	Limit    CurvePoint // the end of the curve, at the density in use
	What     string     // what lies beyond it
}

func (e *CurveRangeError) Error() string {
	end := "shut-off"
	if e.Side == BeyondFreeDelivery {
		end = "free delivery"
	}
	if !e.Measured {
		end = "the end of the recorded fan curve towards " + end
	}
	return fmt.Sprintf("%s is beyond %s, %.4g Pa at %.4g m3/s", e.What, end, e.Limit.Pressure, e.Limit.Flow)
}

// NewFanCurve checks the points, in order of flow, and joins them by the
// monotone cubic of Fritsch and Butland, or by straight lines. A point out of
// order, below zero, or with more pressure than the one before is a
// CurvePointError.
func NewFanCurve(points []CurvePoint, o CurveOptions) (*FanCurve, error) {
	if o.Density == 0 {
		o.Density = StandardDensity
	}
	if !(o.Density > 0) || math.IsInf(o.Density, 1) {
		return nil, fmt.Errorf("fan curve density %g kg/m3", o.Density)
	}
	if o.Rating > TotalPressure {
		return nil, fmt.Errorf("unknown fan rating %d", o.Rating)
	}
	first, err := checkCurve(points, o.StallDip)
	if err != nil {
		return nil, err
	}
	points = points[first:]
	if len(points) < 2 {
		return nil, errors.New("a fan curve needs two points or more")
	}
	c := &FanCurve{
		points: append([]CurvePoint(nil), points...), rating: o.Rating, density: o.Density, scale: 1,
		fit: new(interp.FritschButland),
	}
	if o.Linear {
		c.fit = new(lines)
	}
	flows, pressures := make([]float64, len(points)), make([]float64, len(points))
	for i, p := range points {
		flows[i], pressures[i] = p.Flow, p.Pressure
	}
	return c, c.fit.Fit(flows, pressures)
}

// checkCurve returns the index of the first usable point.
func checkCurve(points []CurvePoint, stallDip bool) (first int, err error) {
	for i, p := range points {
		switch {
		case !(p.Flow >= 0) || math.IsInf(p.Flow, 1) || !(p.Pressure >= 0) || math.IsInf(p.Pressure, 1):
			return 0, &CurvePointError{i, fmt.Sprintf("%g m3/s at %g Pa is not a flow and a pressure", p.Flow, p.Pressure)}
		case i > 0 && p.Flow <= points[i-1].Flow:
			return 0, &CurvePointError{i, fmt.Sprintf("flow %g m3/s does not follow %g m3/s in rising order", p.Flow, points[i-1].Flow)}
		case i > 0 && p.Pressure > points[i-1].Pressure && !stallDip:
			return 0, &CurvePointError{i, fmt.Sprintf("pressure rises from %g Pa to %g Pa with more flow; a curve with a stall dip has to be marked as such", points[i-1].Pressure, p.Pressure)}
		case i > 0 && p.Pressure > points[i-1].Pressure:
			first = i
		}
	}
	return first, nil
}

// lines joins points by straight lines and knows their slope, which gonum's
// PiecewiseLinear does not.
type lines struct {
	interp.PiecewiseLinear
	xs, ys []float64
}

func (l *lines) Fit(xs, ys []float64) error {
	l.xs, l.ys = xs, ys
	return l.PiecewiseLinear.Fit(xs, ys)
}

func (l *lines) PredictDerivative(x float64) float64 {
	i := min(max(sort.SearchFloat64s(l.xs, x), 1), len(l.xs)-1)
	return (l.ys[i] - l.ys[i-1]) / (l.xs[i] - l.xs[i-1])
}

// AtDensity returns the curve for air of a density in kg/m3: at equal flow the
// pressure goes with the density (fan law).
func (c *FanCurve) AtDensity(density float64) *FanCurve {
	thin := *c
	thin.scale = density / c.density
	return &thin
}

func (c *FanCurve) at(i int) CurvePoint {
	return CurvePoint{c.points[i].Flow, c.scale * c.points[i].Pressure}
}

// First returns the leftmost point of the curve at the density in use, and
// whether it is shut-off: no flow.
func (c *FanCurve) First() (point CurvePoint, shutOff bool) {
	p := c.at(0)
	return p, p.Flow == 0
}

// Last returns the rightmost point of the curve at the density in use, and
// whether it is free delivery: no pressure.
func (c *FanCurve) Last() (point CurvePoint, freeDelivery bool) {
	p := c.at(len(c.points) - 1)
	return p, p.Pressure == 0
}

func (c *FanCurve) above(what string) error {
	limit, measured := c.First()
	return &CurveRangeError{AboveShutOff, measured, limit, what}
}

func (c *FanCurve) beyond(what string) error {
	limit, measured := c.Last()
	return &CurveRangeError{BeyondFreeDelivery, measured, limit, what}
}

// Pressure returns the fan's pressure in Pa at a flow in m3/s and its slope in
// Pa/(m3/s), which is not above zero. Off the curve it returns a CurveRangeError.
func (c *FanCurve) Pressure(flow float64) (pressure, slope float64, err error) {
	first, _ := c.First()
	last, _ := c.Last()
	switch {
	case math.IsNaN(flow):
		return 0, 0, errors.New("fan flow is not a number")
	case flow < first.Flow:
		return 0, 0, c.above(fmt.Sprintf("a flow of %.4g m3/s", flow))
	case flow > last.Flow:
		return 0, 0, c.beyond(fmt.Sprintf("a flow of %.4g m3/s", flow))
	}
	pressure, slope = c.predict(flow)
	return pressure, slope, nil
}

func (c *FanCurve) predict(flow float64) (pressure, slope float64) {
	return c.scale * c.fit.Predict(flow), c.scale * c.fit.PredictDerivative(flow)
}

// Flow returns the flow in m3/s at which the fan has a pressure in Pa. Off the
// curve it returns a CurveRangeError, and where the curve is level at that
// pressure, so that many flows share it, an error that names them.
func (c *FanCurve) Flow(pressure float64) (float64, error) {
	first, _ := c.First()
	last, _ := c.Last()
	switch {
	case math.IsNaN(pressure):
		return 0, errors.New("fan pressure is not a number")
	case pressure > first.Pressure:
		return 0, c.above(fmt.Sprintf("a pressure of %.4g Pa", pressure))
	case pressure < last.Pressure:
		return 0, c.beyond(fmt.Sprintf("a pressure of %.4g Pa", pressure))
	}
	// The first point at or below the pressure ends the stretch that holds it.
	i := sort.Search(len(c.points), func(i int) bool { return c.at(i).Pressure <= pressure })
	if i+1 < len(c.points) && c.at(i).Pressure == pressure && c.at(i+1).Pressure == pressure {
		j := i + 1
		for j+1 < len(c.points) && c.at(j+1).Pressure == pressure {
			j++
		}
		return 0, fmt.Errorf("the fan has %.4g Pa at every flow from %.4g to %.4g m3/s", pressure, c.at(i).Flow, c.at(j).Flow)
	}
	if i == 0 {
		return first.Flow, nil
	}
	return c.within(i-1, i, pressure)
}

// FlowBand returns the least and the most flow in m3/s that a pressure in Pa
// known to within an error in Pa allows, kept to the recorded curve: near
// shut-off a small error is much flow. It returns a CurveRangeError when no part
// of the band is on the curve.
func (c *FanCurve) FlowBand(pressure, plusMinus float64) (least, most float64, err error) {
	if !(plusMinus >= 0) || math.IsNaN(pressure) {
		return 0, 0, fmt.Errorf("pressure %g Pa known to within %g Pa", pressure, plusMinus)
	}
	first, _ := c.First()
	last, _ := c.Last()
	high, low := pressure+plusMinus, pressure-plusMinus
	switch {
	case low > first.Pressure:
		return 0, 0, c.above(fmt.Sprintf("a pressure of %.4g Pa", low))
	case high < last.Pressure:
		return 0, 0, c.beyond(fmt.Sprintf("a pressure of %.4g Pa", high))
	}
	least, most = first.Flow, last.Flow
	if high < first.Pressure {
		i := sort.Search(len(c.points), func(i int) bool { return c.at(i).Pressure <= high })
		least, err = c.within(i-1, i, high)
	}
	if err == nil && low > last.Pressure {
		i := sort.Search(len(c.points), func(i int) bool { return c.at(i).Pressure < low })
		most, err = c.within(i-1, i, low)
	}
	return least, most, err
}

// within finds the flow at a pressure between points i and j.
func (c *FanCurve) within(i, j int, pressure float64) (float64, error) {
	return crossing(c.at(i).Flow, c.at(j).Flow, func(q float64) (float64, float64, error) {
		p, slope := c.predict(q)
		return p - pressure, slope, nil
	})
}
