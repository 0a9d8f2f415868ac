// Package airflow computes what the air in a soil depressurization system does:
// its density, the losses in pipe and fittings, the flow that fan and soil agree
// on, what a gauge reading implies, and what the exhaust asks of the house.
//
// Every quantity is SI: pressure in Pa, flow in m3/s, length in m, area in m2,
// speed in m/s, density in kg/m3, dynamic viscosity in Pa s, absolute
// temperature in K, energy in J, power in W. Suction is a positive number:
// the pressure below that of the room. Loss coefficients, friction factors,
// Reynolds numbers and humidity ratios have no unit.
//
// Functions are pure. A plain formula given an argument outside its stated
// range returns NaN, as package math does; everything that takes a record's
// values returns an error that names the value instead.
package airflow

import (
	"fmt"
	"math"
)

const (
	// SeaLevelPressure is the standard atmosphere, Pa (US Standard Atmosphere 1976).
	SeaLevelPressure = 101325.0
	// StandardDensity is the density of standard air in fan and duct work,
	// 0.075 lb/ft3 in kg/m3.
	StandardDensity = 0.075 * 0.45359237 / (0.3048 * 0.3048 * 0.3048)

	gravity         = 9.80665 // m/s2, standard value
	gasConstant     = 287.05  // J/(kg K), dry air
	freezing        = 273.15  // K
	waterToAir      = 0.621945
	soilTemperature = freezing + 12.5 // K; soil gas is about 10 to 15 C (from memory)
)

// StationPressure returns the standard pressure in Pa at an elevation in m
// (US Standard Atmosphere 1976, troposphere). It returns an error outside
// -1000 m to 11000 m.
func StationPressure(elevation float64) (float64, error) {
	return StationFromSeaLevel(SeaLevelPressure, elevation)
}

// StationFromSeaLevel undoes the usual reduction of a weather service's
// barometer: it returns the pressure in Pa at an elevation in m from the
// reading reduced to sea level in Pa. It returns an error for an elevation
// outside -1000 m to 11000 m or a reading outside 85 kPa to 110 kPa.
func StationFromSeaLevel(reduced, elevation float64) (float64, error) {
	if !(elevation >= -1000 && elevation <= 11000) {
		return 0, fmt.Errorf("elevation %g m is outside -1000 m to 11000 m", elevation)
	}
	if !(reduced >= 85e3 && reduced <= 110e3) {
		return 0, fmt.Errorf("sea-level pressure %g Pa is outside 85 kPa to 110 kPa", reduced)
	}
	return reduced * math.Pow(1-2.25577e-5*elevation, 5.2559), nil
}

// Density returns the density in kg/m3 of air at a pressure in Pa, an absolute
// temperature in K and a humidity ratio in kg water per kg dry air (0 for dry air).
func Density(pressure, temperature, humidityRatio float64) float64 {
	if !(pressure > 0 && temperature > 0 && humidityRatio >= 0) {
		return math.NaN()
	}
	w := humidityRatio
	return (1 + w) * pressure / (gasConstant * temperature * (1 + w/waterToAir))
}

// Viscosity returns the dynamic viscosity in Pa s of air at an absolute
// temperature in K (Sutherland's law, constants of the US Standard Atmosphere 1976).
func Viscosity(temperature float64) float64 {
	if !(temperature > 0) {
		return math.NaN()
	}
	return 1.458e-6 * temperature * math.Sqrt(temperature) / (temperature + 110.4)
}

// SaturationPressure returns the saturation pressure in Pa of water vapour at
// an absolute temperature in K from 173.15 K to 473.15 K: over ice below 0 C,
// over water from there (Hyland and Wexler, as printed in the ASHRAE Handbook,
// Fundamentals 2017, chapter 1, and coded in the open-source psychrolib).
func SaturationPressure(temperature float64) float64 {
	t := temperature
	switch {
	case !(t >= 173.15 && t <= 473.15):
		return math.NaN()
	case t < freezing:
		return math.Exp(-5.6745359e3/t + 6.3925247 + t*(-9.677843e-3+t*(6.2215701e-7+
			t*(2.0747825e-9+t*-9.484024e-13))) + 4.1635019*math.Log(t))
	default:
		return math.Exp(-5.8002206e3/t + 1.3914993 + t*(-4.8640239e-2+t*(4.1764768e-5+
			t*-1.4452093e-8)) + 6.5459673*math.Log(t))
	}
}

// SaturationHumidity returns the humidity ratio, kg water per kg dry air, of
// air saturated at an absolute temperature in K under a pressure in Pa. It is
// NaN where the vapour pressure reaches the total pressure.
func SaturationHumidity(temperature, pressure float64) float64 {
	e := SaturationPressure(temperature)
	if !(e < pressure) {
		return math.NaN()
	}
	return waterToAir * e / (pressure - e)
}

// Air is the state of the gas in a system that the losses depend on.
type Air struct {
	Density   float64 // kg/m3
	Viscosity float64 // Pa s, dynamic
}

// StandardAir is the air that fan curves and duct charts are drawn for:
// 0.075 lb/ft3 and 1.82e-5 Pa s.
var StandardAir = Air{Density: StandardDensity, Viscosity: 1.82e-5}

// NewAir returns air at a pressure in Pa, an absolute temperature in K and a
// humidity ratio. It returns an error outside 20 to 120 kPa, 200 to 350 K and
// humidity ratios 0 to 0.5, where the formulas or the record must be wrong.
func NewAir(pressure, temperature, humidityRatio float64) (Air, error) {
	switch {
	case !(pressure >= 20e3 && pressure <= 120e3):
		return Air{}, fmt.Errorf("air pressure %g Pa is outside 20 kPa to 120 kPa", pressure)
	case !(temperature >= 200 && temperature <= 350):
		return Air{}, fmt.Errorf("air temperature %g K is outside 200 K to 350 K", temperature)
	case !(humidityRatio >= 0 && humidityRatio <= 0.5):
		return Air{}, fmt.Errorf("humidity ratio %g is outside 0 to 0.5", humidityRatio)
	}
	return Air{Density(pressure, temperature, humidityRatio), Viscosity(temperature)}, nil
}

// SoilGas returns the usual gas of a suction pipe at a station pressure in Pa:
// saturated at 12.5 C (from memory: soil gas comes at 10 to 15 C, near
// saturation). It returns an error as NewAir does.
func SoilGas(pressure float64) (Air, error) {
	if !(pressure >= 20e3 && pressure <= 120e3) {
		return Air{}, fmt.Errorf("air pressure %g Pa is outside 20 kPa to 120 kPa", pressure)
	}
	return NewAir(pressure, soilTemperature, SaturationHumidity(soilTemperature, pressure))
}
