package derive

import "github.com/slablint/slablint/internal/quantity"

// Units of figures whose writer chose none. One symbol serves every dimension
// that has it.
var units = struct {
	one, percent, perMeter, perFoot                  quantity.Unit
	feet, inches, inchesPerFoot, millimetersPerMeter quantity.Unit
	seconds, hours, days                             quantity.Unit
	pascals, watts, kilowattHours                    quantity.Unit
	feetPerMinute, metersPerSecond                   quantity.Unit
	kilogramsPerDay, poundsPerDay                    quantity.Unit
	density, viscosity, exposure                     quantity.Unit
}{
	one: named("1"), percent: named("%"), perMeter: named("1/m"), perFoot: named("1/ft"),
	feet: named("ft"), inches: named("in"), inchesPerFoot: named("in/ft"), millimetersPerMeter: named("mm/m"),
	seconds: named("s"), hours: named("h"), days: named("d"),
	pascals: named("Pa"), watts: named("W"), kilowattHours: named("kWh"),
	feetPerMinute: named("fpm"), metersPerSecond: named("m/s"),
	kilogramsPerDay: named("kg/d"), poundsPerDay: named("lb/d"),
	density: named("kg/m3"), viscosity: named("Pa s"), exposure: named("WLM"),
}

func named(symbol string) quantity.Unit { return quantity.UnitNamed(symbol) }

// isFeet tells a writer who thinks in feet and inches.
func isFeet(unit quantity.Unit) bool {
	switch unit.String() {
	case "ft", "in", "yd", "mil", "cfm", "gpm", "inH2O", "psi", "ft2", "in2":
		return true
	}
	return false
}

// speedUnit goes with a unit of flow.
func speedUnit(flow quantity.Unit) quantity.Unit {
	if isFeet(flow) {
		return units.feetPerMinute
	}
	return units.metersPerSecond
}
