package airflow

import "math"

// The functions here give the Darcy friction factor from the Reynolds number
// and the roughness over the hydraulic diameter. The network uses churchill,
// because loss then rises strictly with flow through every regime; the others
// are what it is checked against.

func laminar(re float64) float64 { return 64 / re }

// churchill holds for every regime (S. W. Churchill, Chemical Engineering,
// 7 November 1977). It returns the factor and its derivative by Reynolds number.
func churchill(re, relativeRoughness float64) (f, slope float64) {
	if re < 1 {
		// The general form is laminar here too, but its powers overflow.
		return 64 / re, -64 / (re * re)
	}
	p := math.Exp(0.9 * math.Log(7/re)) // (7/re)^0.9; Pow is slower
	w := p + 0.27*relativeRoughness
	theta := -2.457 * math.Log(w)
	a := pow16(theta)
	b := pow16(37530 / re)
	sum := a + b
	root := math.Sqrt(sum)
	viscous := pow12(8/re) * sum * root // over the turbulent part, which is sum^-1.5
	growth := 1 + viscous/12            // what it adds; exact to rounding while small
	if viscous > 1e-7 {
		growth = math.Cbrt(math.Sqrt(math.Sqrt(1 + viscous)))
	}
	f = 8 * growth / math.Sqrt(math.Sqrt(root))

	dSum := 2 * (2.457*0.9*a*p/(theta*w) - b) / sum // an eighth of its growth by ln re
	return f, -f * (viscous + dSum) / ((1 + viscous) * re)
}

// rubbing is a friction factor and its derivative by Reynolds number, with what
// they were worked out from: equal pipes in a row share them.
type rubbing struct {
	reynolds, relative float64
	factor, slope      float64
}

func newRubbing(re, relativeRoughness float64) rubbing {
	f, slope := churchill(re, relativeRoughness)
	return rubbing{re, relativeRoughness, f, slope}
}

func pow12(x float64) float64 { x2 := x * x; x4 := x2 * x2; return x4 * x4 * x4 }
func pow16(x float64) float64 { x2 := x * x; x4 := x2 * x2; x8 := x4 * x4; return x8 * x8 }

// colebrook solves the Colebrook-White equation for turbulent flow.
func colebrook(re, relativeRoughness float64) float64 {
	x := 1 / math.Sqrt(haaland(re, relativeRoughness))
	for range 50 {
		next := -2 * math.Log10(relativeRoughness/3.7+2.51*x/re)
		if math.Abs(next-x) <= 1e-14*next {
			return 1 / (next * next)
		}
		x = next
	}
	return 1 / (x * x)
}

// haaland is the explicit turbulent form of S. E. Haaland, Journal of Fluids
// Engineering 105 (1983).
func haaland(re, relativeRoughness float64) float64 {
	x := -1.8 * math.Log10(math.Pow(relativeRoughness/3.7, 1.11)+6.9/re)
	return 1 / (x * x)
}

// swameeJain is the explicit turbulent form of Swamee and Jain, Journal of the
// Hydraulics Division 102 (1976).
func swameeJain(re, relativeRoughness float64) float64 {
	x := math.Log10(relativeRoughness/3.7 + 5.74/math.Pow(re, 0.9))
	return 0.25 / (x * x)
}

// blasius holds for smooth pipe from about Re 4000 to 100000 (H. Blasius, 1913).
func blasius(re float64) float64 { return 0.3164 / math.Sqrt(math.Sqrt(re)) }
