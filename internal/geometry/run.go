package geometry

import (
	"errors"
	"fmt"
	"math"
	"slices"
)

// Segment is one straight piece of a pipe run. A run lists its segments in the
// order in which the air flows, from the suction point to the discharge.
type Segment struct {
	Length float64 // m along the pipe
	Rise   float64 // m gained in the direction of flow; negative when it goes down
}

// fall compares the fall of a segment back toward the suction point with what is
// asked of it.
type fall struct {
	Required float64 // m
	Actual   float64 // m; negative when water would run toward the discharge
}

// RequiredFall is the fall asked of a run of the given length (m) by a slope
// (m per m), in metres. ANSI/AARST SGM-SF 2017 (12/20) 6.2.2 asks 1/8 in per ft.
func RequiredFall(length, slope float64) float64 { return length * slope }

// falls is the fall of each segment, in order, and of the run as a whole. An
// upright riser meets any slope by itself.
func falls(run []Segment, slope float64) (each []fall, whole fall, err error) {
	if err := checkRun(run); err != nil {
		return nil, fall{}, err
	}
	if err := notNegative("slope", slope); err != nil {
		return nil, fall{}, err
	}
	for _, s := range run {
		f := fall{RequiredFall(s.Length, slope), s.Rise}
		each = append(each, f)
		whole.Required += f.Required
		whole.Actual += f.Actual
	}
	return each, whole, nil
}

// LowPoint is a place of a run in which water stands: the air must bubble
// through it once Depth comes near the bore.
type LowPoint struct {
	After int     // index of the segment that ends in it
	Along float64 // m of pipe before it
	Depth float64 // m of water over it when it spills at the lower rim
}

// rounding is a rise, in metres, that only sums of floats make.
const rounding = 1e-9

// LowPoints lists the places in which water stands, in the order of flow. Both
// ends of the run let water out: the first into the soil, the last into the
// open. Of a level stretch its upstream end is named. Whether a low point has a
// drain of its own is for the caller to know. ANSI/AARST SGM-SF 2017 (12/20)
// 6.2.2 bans water traps that block the flow.
func LowPoints(run []Segment) ([]LowPoint, error) {
	if err := checkRun(run); err != nil {
		return nil, err
	}
	n := len(run)
	if !slices.ContainsFunc(run[:n-1], func(s Segment) bool { return s.Rise < -rounding }) {
		return nil, nil // nowhere does water run back from the open end
	}
	height := make([]float64, n+1)
	for i, s := range run {
		height[i+1] = height[i] + s.Rise
	}
	// rimAfter[i] is the highest place from joint i to the end.
	rimAfter := append([]float64(nil), height...)
	for i := n - 1; i >= 0; i-- {
		rimAfter[i] = max(rimAfter[i], rimAfter[i+1])
	}
	var lows []LowPoint
	rimBefore, along := height[0], 0.0
	for i := 1; i < n; i++ {
		rimBefore = max(rimBefore, height[i-1])
		along += run[i-1].Length
		if run[i-1].Rise < -rounding && risesNext(height[i:]) {
			lows = append(lows, LowPoint{After: i - 1, Along: along, Depth: min(rimBefore, rimAfter[i]) - height[i]})
		}
	}
	return lows, nil
}

// risesNext says whether the way goes up before it goes down.
func risesNext(height []float64) bool {
	for _, h := range height[1:] {
		if math.Abs(h-height[0]) > rounding {
			return h > height[0]
		}
	}
	return false
}

func checkRun(run []Segment) error {
	if len(run) == 0 {
		return errors.New("pipe run: no segment")
	}
	for i, s := range run {
		if err := notNegative("length", s.Length); err != nil {
			return fmt.Errorf("pipe segment %d: %w", i, err)
		}
		if !finite(s.Rise) {
			return fmt.Errorf("rise of pipe segment %d: %w", i, errNotFinite)
		}
		if math.Abs(s.Rise) > s.Length*(1+coincident) {
			return fmt.Errorf("pipe segment %d rises %g m over %g m of pipe", i, s.Rise, s.Length)
		}
	}
	return nil
}
