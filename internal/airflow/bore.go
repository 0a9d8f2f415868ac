package airflow

import (
	"fmt"
	"math"
)

const inch = 0.0254 // m

// Bore is the open cross-section of a pipe: the true area sets the speed, the
// hydraulic diameter sets the friction.
type Bore struct {
	Area      float64 // m2
	Hydraulic float64 // m, four times the area over the wetted perimeter
}

// Round returns the bore of a round pipe of an inner diameter in m. A
// diameter that is not positive gives a bore that NewNetwork refuses.
func Round(diameter float64) Bore {
	return Bore{math.Pi / 4 * diameter * diameter, diameter}
}

// Rectangular returns the bore of a rectangular pipe, such as a downspout, of
// two inner sides in m. The sides are to be measured: makers' nominal sizes
// (2x3, 3x4) differ from the opening and corrugation takes more.
func Rectangular(a, b float64) Bore {
	return Bore{a * b, 2 * a * b / (a + b)}
}

func (b Bore) valid() bool {
	return b.Area > 0 && b.Hydraulic > 0 && !math.IsInf(b.Area, 1) && !math.IsInf(b.Hydraulic, 1)
}

// Wall is the wall class or product standard that, with the nominal size,
// fixes the bore.
type Wall string

// The walls that have a bore table here.
const (
	Schedule40 Wall = "sch-40"     // PVC to ASTM D1785 or D2665
	Schedule80 Wall = "sch-80"     // PVC to ASTM D1785
	SDR35      Wall = "sdr-35"     // PVC sewer pipe to ASTM D3034
	ThinWall   Wall = "astm-d2729" // PVC sewer and drain pipe
)

var (
	sourceD1785 = Source{"ASTM D1785 and D2665 wall and outer diameter lists, as tabulated in the open-source fluids library, piping.py", Published}
	sourceD3034 = Source{"ASTM D3034 outer diameters and 35:1 wall, as listed on a public page on SDR 35 pipe; bore at the least wall", Published}
	sourceD2729 = Source{"ASTM D2729 sewer and drain pipe, average inner diameters as listed on a public page", Published}
)

type boreRow struct {
	wall     Wall
	nominal  float64 // in
	diameter float64 // in
	source   *Source
}

var boreTable = []boreRow{
	{Schedule40, 1.5, 1.610, &sourceD1785},
	{Schedule40, 2, 2.067, &sourceD1785},
	{Schedule40, 2.5, 2.469, &sourceD1785},
	{Schedule40, 3, 3.068, &sourceD1785},
	{Schedule40, 3.5, 3.548, &sourceD1785},
	{Schedule40, 4, 4.026, &sourceD1785},
	{Schedule40, 5, 5.047, &sourceD1785},
	{Schedule40, 6, 6.065, &sourceD1785},
	{Schedule40, 8, 7.981, &sourceD1785},
	{Schedule80, 2, 1.939, &sourceD1785},
	{Schedule80, 3, 2.900, &sourceD1785},
	{Schedule80, 4, 3.826, &sourceD1785},
	{Schedule80, 6, 5.761, &sourceD1785},
	{SDR35, 4, 4.215 * 33 / 35, &sourceD3034},
	{SDR35, 6, 6.275 * 33 / 35, &sourceD3034},
	{ThinWall, 3, 3.11, &sourceD2729},
	{ThinWall, 4, 4.065, &sourceD2729},
	{ThinWall, 6, 6.075, &sourceD2729},
}

// PipeBore returns the bore of round plastic pipe from its nominal size in m
// (3 in is 0.0762) and wall, and where the figure comes from. A size or wall
// without a sourced figure is an error, never a guess: the record then has to
// give the inner diameter. That holds for "Schedule 20", which standards name
// as a least wall but no table found here defines, and for foam-core pipe
// (ASTM F891), whose inner diameter its standard leaves free.
func PipeBore(nominal float64, wall Wall) (Bore, Source, error) {
	for i := range boreTable {
		row := &boreTable[i]
		if row.wall == wall && sameSize(nominal, row.nominal) {
			return Round(row.diameter * inch), *row.source, nil
		}
	}
	return Bore{}, Source{}, fmt.Errorf(
		"no sourced bore for nominal %.4g in pipe of wall %q: record the inner diameter or the pipe specification", nominal/inch, wall)
}

// sameSize tells whether a length in m is a nominal size in inches; half a
// millimetre forgives a size written in rounded millimetres.
func sameSize(nominal, inches float64) bool {
	return math.Abs(nominal-inches*inch) < 0.5e-3
}

// Material is what the inside of a pipe is made of, as far as friction cares.
type Material string

// The materials whose roughness is known.
const (
	SmoothPlastic Material = "smooth-plastic" // PVC, ABS and other drawn plastic
	SteelDuct     Material = "steel-duct"     // galvanized duct with seams, charts of today
	OldSteelDuct  Material = "old-steel-duct" // galvanized duct, older charts
)

// Roughness returns the absolute roughness in m of a material and its source.
// A material without a figure, such as corrugated drain tubing, is an error.
func Roughness(m Material) (float64, Source, error) {
	switch m {
	case SmoothPlastic:
		return 1.5e-6, Source{"drawn plastic taken as smooth, textbook figure", FromMemory}, nil
	case SteelDuct:
		return 0.0003 * 0.3048, Source{"ASHRAE-type duct friction fit labelled 0.0003 ft, read in public source code", Published}, nil
	case OldSteelDuct:
		return 0.0005 * 0.3048, Source{"ASHRAE galvanized duct chart, 0.0005 ft, as fitted in public source code", Published}, nil
	}
	return 0, Source{}, fmt.Errorf("no sourced roughness for material %q", m)
}
