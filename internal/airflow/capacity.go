package airflow

import "fmt"

const feetPerMinute = foot / 60 // m/s

// SpeedClass grades the speed of air in a pipe.
type SpeedClass string

// The classes (ANSI/AARST SGM-SF 2017 (12/20) 6.3.8: noise turns objectionable
// at about 1,600 fpm, condensate may not fall back above 2,000 fpm).
const (
	Quiet             SpeedClass = "quiet"
	Noisy             SpeedClass = "noisy"
	CarriesCondensate SpeedClass = "carries-condensate"
)

const (
	noiseSpeed      = 1600 * feetPerMinute
	condensateSpeed = 2000 * feetPerMinute
)

// ClassifySpeed grades a speed in m/s; a speed at a limit belongs below it.
func ClassifySpeed(speed float64) SpeedClass {
	switch {
	case speed <= noiseSpeed:
		return Quiet
	case speed <= condensateSpeed:
		return Noisy
	default:
		return CarriesCondensate
	}
}

const (
	twoInchFlow   = 40 * cfm
	threeInchFlow = 80 * cfm
)

// NominalSizeFor returns the least nominal size in m of the main pipe for the
// flow in m3/s of a whole system: 2 in to 40 cfm, 3 in to 80 cfm, 4 in above
// (ANSI/AARST RMS-LB 2018 (12/20) 6.3).
func NominalSizeFor(flow float64) float64 {
	switch {
	case flow <= twoInchFlow:
		return 2 * inch
	case flow <= threeInchFlow:
		return 3 * inch
	default:
		return 4 * inch
	}
}

// FoundationArea returns the largest foundation area in m2 that one system of
// new construction serves by its nominal pipe size in m: 2,500 ft2 for 3 in and
// 4,500 ft2 for 4 in (ANSI/AARST RRNC 2020 Table 302.3). For existing houses it
// is advice. Other sizes are an error.
func FoundationArea(nominal float64) (float64, error) {
	switch {
	case sameSize(nominal, 3):
		return 2500 * foot * foot, nil
	case sameSize(nominal, 4):
		return 4500 * foot * foot, nil
	}
	return 0, fmt.Errorf("no foundation area is given for nominal %.4g in pipe", nominal/inch)
}

// Least, median and most exhaust flow in m3/s of 87 measured systems in New
// Jersey houses (Brodhead and Saum, 1996 International Radon Symposium,
// abstract). A record outside them deserves a second look, no more.
const (
	MeasuredLeast  = 11 * cfm
	MeasuredMedian = 70 * cfm
	MeasuredMost   = 167 * cfm
)
