package airflow

import (
	"errors"
	"fmt"
	"math"
)

// HouseDepressurization estimates the pressure in Pa by which drawing a flow of
// house air in m3/s lowers a house whose air leakage at 50 Pa is known in m3/s:
// 50 (flow/leakage)^(1/0.65), the usual leakage exponent. It replaces no
// backdraft test.
func HouseDepressurization(houseAir, leakage50 float64) (float64, error) {
	if !(houseAir >= 0) || !(leakage50 > 0) || math.IsInf(houseAir, 1) {
		return 0, fmt.Errorf("house air %g m3/s against a leakage of %g m3/s at 50 Pa", houseAir, leakage50)
	}
	return 50 * math.Pow(houseAir/leakage50, 1/0.65), nil
}

// Protocol names the document whose depressurization limits are used.
type Protocol string

// The protocols with limits. They differ, so a limit without its protocol
// means nothing.
const (
	// WeatherizationTable is the table of appliance-zone limits of the
	// building-performance trade, as reproduced in a public weatherization form.
	WeatherizationTable Protocol = "weatherization-table"
	// PublicSpecification is a second, coarser list in a public specification.
	PublicSpecification Protocol = "public-specification"
)

// Appliance is a class of combustion appliance by how its flue gas leaves.
type Appliance string

// The classes that limits are given for.
const (
	// OrphanWaterHeater is a natural-draft water heater alone on its flue, also
	// one into a chimney outside the heated space.
	OrphanWaterHeater Appliance = "orphan-water-heater"
	// CommonVented is a natural-draft boiler or furnace that shares its flue with
	// a water heater; CommonVentedDamper has a vent damper.
	CommonVented       Appliance = "commonly-vented"
	CommonVentedDamper Appliance = "commonly-vented-with-damper"
	// NaturalDraftAlone is a natural-draft boiler or furnace with its own flue.
	NaturalDraftAlone Appliance = "natural-draft-alone"
	// NaturalDraftHeater is any natural-draft water heater.
	NaturalDraftHeater Appliance = "natural-draft-water-heater"
	// InducedDraft is an induced-draft or power-vented boiler or furnace alone,
	// or a fan-assisted water heater alone.
	InducedDraft Appliance = "induced-draft-alone"
	// SealedCombustion is a direct-vent appliance, one with an inducer at the
	// chimney top, or a flame-retention oil burner.
	SealedCombustion Appliance = "sealed-combustion"
	// DirectOrPowerVented is a direct-vent or power-vented appliance of any kind.
	DirectOrPowerVented Appliance = "direct-or-power-vented"
)

var (
	sourceForm = Source{"appliance-zone depressurization table reproduced in a public weatherization form", Published}
	sourceSpec = Source{"depressurization limits in a public specification", Published}
)

var depressurizationLimits = []struct {
	protocol  Protocol
	appliance Appliance
	limit     float64 // Pa
	source    *Source
}{
	{WeatherizationTable, OrphanWaterHeater, -2, &sourceForm},
	{WeatherizationTable, CommonVented, -3, &sourceForm},
	{WeatherizationTable, CommonVentedDamper, -5, &sourceForm},
	{WeatherizationTable, NaturalDraftAlone, -5, &sourceForm},
	{WeatherizationTable, InducedDraft, -15, &sourceForm},
	{WeatherizationTable, SealedCombustion, -50, &sourceForm},
	{PublicSpecification, NaturalDraftHeater, -2, &sourceSpec},
	{PublicSpecification, NaturalDraftAlone, -3, &sourceSpec},
	{PublicSpecification, InducedDraft, -5, &sourceSpec},
	{PublicSpecification, DirectOrPowerVented, -15, &sourceSpec},
}

// DepressurizationLimit returns the pressure in Pa relative to outdoors, a
// negative number, below which a zone with the appliance may not be drawn under
// the protocol. A class that the protocol does not list, such as a fireplace,
// is an error.
func DepressurizationLimit(p Protocol, a Appliance) (float64, Source, error) {
	for _, row := range depressurizationLimits {
		if row.protocol == p && row.appliance == a {
			return row.limit, *row.source, nil
		}
	}
	return 0, Source{}, fmt.Errorf("protocol %q has no depressurization limit for %q", p, a)
}

// DepressurizationMargin returns how far a zone's net pressure in Pa (worst case
// less baseline, negative below outdoors) stays above the strictest of the
// limits in Pa, and that limit: the weakest appliance governs. A margin below
// zero fails by that much; meeting the limit exactly passes.
func DepressurizationMargin(net float64, limits ...float64) (margin, governing float64, err error) {
	if len(limits) == 0 {
		return 0, 0, errors.New("no depressurization limit to compare with")
	}
	governing = math.Inf(-1)
	for _, limit := range limits {
		if !(limit <= 0) || math.IsInf(limit, -1) {
			return 0, 0, fmt.Errorf("depressurization limit %g Pa: limits are zero or negative", limit)
		}
		governing = math.Max(governing, limit)
	}
	if math.IsNaN(net) || math.IsInf(net, 0) {
		return 0, 0, fmt.Errorf("zone pressure %g Pa", net)
	}
	return net - governing, governing, nil
}

// MinimumDraft returns the flue pressure in Pa relative to the room, a negative
// number, that a gas appliance with natural draft has to reach at least, by the
// outdoor absolute temperature in K: a straight line from -2.5 Pa at 10 F and
// below to -0.5 Pa at 90 F and above.
//
// Source: draft table on a public weatherization form. It prints -2.00 Pa at
// 20 F beside -0.009 in of water, which is -2.25 Pa: the line is kept there.
func MinimumDraft(outdoors float64) float64 {
	fahrenheit := outdoors*1.8 - 459.67
	// The table counts whole degrees; without this 40 F comes back from kelvin
	// a hair off.
	fahrenheit = math.Round(fahrenheit*1e6) / 1e6
	return math.Max(-2.5, math.Min(-0.5, fahrenheit/40-2.75))
}

const (
	airHeat        = 0.24 * 4186.8 // J/(kg K), 0.24 Btu/(lb F)
	secondsPerDay  = 86400.0
	secondsPerYear = 365 * secondsPerDay
)

// ConditioningLoss returns the heat in J that a steady flow of house air in
// m3/s of a density in kg/m3 carries off over heating degree days in K d
// (5/9 of those in F d). Divide by the heating system's efficiency for fuel.
func ConditioningLoss(houseAir, density, degreeDays float64) float64 {
	return density * airHeat * houseAir * degreeDays * secondsPerDay
}

// YearlyEnergy returns the energy in J that a power in W takes in 365 days.
func YearlyEnergy(power float64) float64 { return power * secondsPerYear }
