package derive

import (
	"github.com/slablint/slablint/internal/airflow"
	"github.com/slablint/slablint/internal/quantity"
)

// fillAir finds the pressure of the air at the site and the gas in the pipe.
func (d *deriver) fillAir() {
	altitude := d.house.get("altitude").quantity()
	if !d.house.get("altitude").exists() {
		altitude.basis = assuming(seaLevel)
	}
	d.site = figure{unit: units.pascals, basis: altitude.basis}
	if altitude.known() {
		p, err := airflow.StationPressure(altitude.si)
		if err != nil {
			d.site.basis = altitude.refuse(err)
		}
		d.site.si = p
	}
	d.gasBasis = join(d.site.basis, assuming(soilGas))
	if d.gasBasis.known() {
		gas, err := airflow.SoilGas(d.site.si)
		if err != nil {
			d.gasBasis = altitude.refuse(err)
		}
		d.gas = gas
	}
}

func (d *deriver) airValues() *entry {
	e := d.entry(3, 0)
	e.model("station_pressure", quantity.Pressure, d.site, "altitude by the US Standard Atmosphere 1976")
	e.model("density", quantity.Density, figure{d.gas.Density, units.density, d.gasBasis}, "moist air by the ideal gas law")
	e.model("viscosity", quantity.Viscosity, figure{d.gas.Viscosity, units.viscosity, d.gasBasis}, "Sutherland's law")
	return e
}
