package quantity

import "slices"

// Dimension names what kind of thing a number measures. Its value is the name
// the schemas use.
type Dimension string

// The dimensions a job record uses, each with the SI unit behind it.
const (
	Length            Dimension = "length"             // m
	Area              Dimension = "area"               // m2
	Volume            Dimension = "volume"             // m3
	Pressure          Dimension = "pressure"           // Pa, a difference from the air around
	Flow              Dimension = "flow"               // m3/s, volumetric
	Velocity          Dimension = "velocity"           // m/s
	Radon             Dimension = "radon"              // Bq/m3, activity concentration of radon gas
	Exposure          Dimension = "exposure"           // WLM, see table
	Temperature       Dimension = "temperature"        // K
	Power             Dimension = "power"              // W
	Energy            Dimension = "energy"             // J
	Voltage           Dimension = "voltage"            // V
	Current           Dimension = "current"            // A
	Slope             Dimension = "slope"              // 1, rise over run
	Ratio             Dimension = "ratio"              // 1
	Angle             Dimension = "angle"              // degree, see table
	Duration          Dimension = "duration"           // s
	Time              Dimension = "time"               // s since 1970-01-01T00:00:00Z
	Date              Dimension = "date"               // s since 1970-01-01T00:00:00Z of that day's 00:00 UTC
	ThermalResistance Dimension = "thermal-resistance" // m2K/W
	AirChangeRate     Dimension = "airchange-rate"     // 1/h
	Density           Dimension = "density"            // kg/m3
	Viscosity         Dimension = "viscosity"          // Pa s, dynamic
	MassPerDay        Dimension = "mass-per-day"       // kg/s
	PerLength         Dimension = "per-length"         // 1/m
	Number            Dimension = "number"             // 1
	Percent           Dimension = "percent"            // percent, see table
)

// dimensionOrder is the order in which dimensions are listed.
var dimensionOrder = []Dimension{
	Length, Area, Volume, Pressure, Flow, Velocity, Radon, Exposure,
	Temperature, Power, Energy, Voltage, Current, Slope, Ratio, Angle,
	Duration, Time, Date, ThermalResistance, AirChangeRate,
	Density, Viscosity, MassPerDay, PerLength, Number, Percent,
}

// Dimensions lists every dimension, in a fixed order.
func Dimensions() []Dimension { return slices.Clone(dimensionOrder) }

// SIUnit is the symbol of the unit that Quantity.SI counts in: "m" for length,
// "WLM" for exposure, "deg" for angle. It is "" for an unknown dimension.
func SIUnit(dim Dimension) string {
	if f := families[dim]; f != nil {
		return f.units[0].symbol
	}
	return ""
}

// bare says whether a number of the dimension may stand without a unit.
func (dim Dimension) bare() bool { return dim == Ratio || dim == Number }

// Units lists the symbols of the units that a quantity of this dimension may be
// written in, the SI one first. Time and Date have none: they are written as
// text of their own form.
func Units(dim Dimension) []string {
	f := families[dim]
	if f == nil || dim == Time || dim == Date {
		return nil
	}
	symbols := make([]string, len(f.units))
	for i, u := range f.units {
		symbols[i] = u.symbol
	}
	return symbols
}
