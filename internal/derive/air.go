package derive

import (
	"github.com/slablint/slablint/internal/airflow"
	"github.com/slablint/slablint/internal/quantity"
)

// fillAir finds the air of the site and the gas in the pipe.
func (d *deriver) fillAir() {
	altitude := d.house.get("altitude").quantity()
	if !d.house.get("altitude").exists() {
		altitude = figure{0, "m", assuming(seaLevel)}
	}
	d.pressure = figure{basis: altitude.basis, unit: "Pa"}
	if altitude.known() {
		p, err := airflow.StationPressure(altitude.si)
		if err != nil {
			d.pressure.basis = refused(err.Error(), inputsOf(altitude.basis)...)
		}
		d.pressure.si = p
	}
	d.gasBasis = d.pressure.basis
	if d.gasBasis.known() {
		gas, err := airflow.SoilGas(d.pressure.si)
		if err != nil {
			d.gasBasis = refused(err.Error(), inputsOf(altitude.basis)...)
			return
		}
		d.gas, d.gasBasis = gas, join(d.pressure.basis, assuming(soilGas))
	}
}

func (d *deriver) airValues() map[string]any {
	return map[string]any{
		"station_pressure": d.value(quantity.Pressure, d.pressure, "US Standard Atmosphere 1976"),
		"density":          d.value("density", figure{d.gas.Density, "kg/m3", d.gasBasis}, "moist air by the ideal gas law"),
		"viscosity":        d.value("viscosity", figure{d.gas.Viscosity, "Pa s", d.gasBasis}, "Sutherland's law"),
	}
}
