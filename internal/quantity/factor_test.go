package quantity

import (
	"math"
	"testing"
)

// Where the expected figures of this file come from.
const (
	sp811 = "NIST SP 811 (2008) App. B.8"
	icrp  = "ICRP Publication 137, Table A.1, as quoted in public dose-calculation sources"
	exact = "exact arithmetic from the definition"
)

// check is one published figure: text must come out as want in the unit to.
// tolerance is relative, and no wider than the figure's own rounding.
type check struct {
	id        string
	dimension Dimension
	text, to  string
	want      float64
	tolerance float64
	source    string
}

// SP 811 prints seven digits, so its figures hold to half of the seventh.
const sevenDigits = 5e-7

var checks = []check{
	{"U01", Pressure, "1 inH2O", "Pa", 249.08891, 1e-7, sp811 + ", inch of water, conventional, in full: 1000 x 9.80665 x 0.0254"},
	{"U02", Pressure, "1 inH2O (39.2 °F)", "Pa", 249.082, 1e-5, sp811},
	{"U03", Pressure, "1 inH2O (60 °F)", "Pa", 248.84, 2e-5, sp811},
	{"U04", Flow, "1 cfm", "m3/s", 0.0004719474, 2e-7, sp811},
	{"U05", Pressure, "1 psi", "Pa", 6894.757, 1e-7, sp811},
	{"U06", Radon, "1e9 pCi/L", "Bq/m3", 3.7e10, 1e-12, sp811 + ", curie 3.7 E+10 Bq; 1e9 pCi/L is 1 Ci/m3"},
	{"U07", Radon, "4 pCi/L", "Bq/m3", 148, 1e-12, exact + ": 0.037 Bq in 0.001 m3"},
	{"U08", Radon, "200 Bq/m3", "pCi/L", 5.405405, 1e-6, exact + "; the Canadian guideline"},
	{"U09", Length, "6 mil", "um", 152.4, 1e-12, sp811},
	{"U10", Temperature, "70 F", "K", 294.261111, 1e-8, exact + ": 529.67/1.8"},
	{"U11", Volume, "1 gal", "m3", 0.003785412, 1e-6, sp811 + ", gallon (U.S.)"},
	{"U12", Area, "1 ft2", "m2", 0.09290304, 1e-12, sp811},
	{"U14", Exposure, "1 WLM", "mJ h/m3", 3.54, 0.002, icrp},

	{"", Length, "1 ft", "m", 0.3048, 1e-15, sp811},
	{"", Length, "1 in", "m", 0.0254, 1e-15, sp811},
	{"", Length, "1 yd", "m", 0.9144, 1e-15, sp811},
	{"", Area, "1 in2", "m2", 6.4516e-4, 1e-15, sp811},
	{"", Volume, "1 ft3", "m3", 2.831685e-2, sevenDigits, sp811},
	{"", Volume, "1 in3", "m3", 1.638706e-5, sevenDigits, sp811},
	{"", Volume, "1 yd3", "m3", 7.645549e-1, sevenDigits, sp811},
	{"", Volume, "1 fl oz", "m3", 2.957353e-5, sevenDigits, sp811},
	{"", Pressure, "1 mmH2O", "Pa", 9.80665, 1e-15, sp811},
	{"", Pressure, "1 inHg", "Pa", 3386.389, sevenDigits, sp811},
	{"", Pressure, "1 mbar", "Pa", 100, 1e-15, sp811},
	{"", Flow, "1 gpm", "m3/s", 6.309020e-5, sevenDigits, sp811},
	{"", Velocity, "1 fpm", "m/s", 0.00508, 1e-15, sp811},
	{"", Velocity, "1 ft/s", "m/s", 0.3048, 1e-15, sp811},
	{"", Velocity, "1 mph", "m/s", 0.44704, 1e-15, sp811},
	{"", Velocity, "1 km/h", "m/s", 0.2777778, sevenDigits, sp811},
	{"", Power, "1 hp", "W", 745.6999, sevenDigits, sp811},
	{"", Power, "1 Btu/h", "W", 0.2930711, sevenDigits, sp811},
	{"", Energy, "1 Btu", "J", 1055.056, sevenDigits, sp811},
	{"", Energy, "1 kWh", "J", 3.6e6, 1e-15, sp811},
	{"", Energy, "1 therm", "J", 1.054804e8, 1e-15, sp811},
	{"", Duration, "1 d", "s", 86400, 1e-15, sp811},
	{"", Duration, "1 year", "s", 3.1536e7, 1e-15, sp811},
	{"", ThermalResistance, "R-1", "m2K/W", 0.1761102, sevenDigits, sp811},
	{"", Temperature, "32 F", "°C", 0, 0, exact},
	{"", Temperature, "-40 °C", "°F", -40, 0, exact},
	{"", Flow, "1 L/s", "cfm", 2.118880, sevenDigits, exact + ": 0.001/(0.3048^3/60)"},
	{"", Flow, "1 m3/h", "cfm", 0.5885778, sevenDigits, exact + ": (1/3600)/(0.3048^3/60)"},
	{"", Slope, "1/4 in per ft", "%", 2.083333, sevenDigits, exact + ": 1/48"},
	{"", AirChangeRate, "0.35 ACH", "1/h", 0.35, 0, exact},
	{"", Density, "1 lb/ft3", "kg/m3", 16.01846, sevenDigits, sp811},
	{"", MassPerDay, "86400 lb/d", "kg/s", 0.4535924, sevenDigits, sp811 + ", pound"},
	{"", MassPerDay, "1 kg/d", "kg/s", 1.157407e-5, sevenDigits, exact + ": 1/86400"},
	{"", PerLength, "1 per ft", "1/m", 3.280840, sevenDigits, exact + ": 1/0.3048"},
}

func TestPublishedFactors(t *testing.T) {
	for _, c := range checks {
		got := in(t, c.dimension, c.text, c.to)
		if math.Abs(got-c.want) > c.tolerance*math.Abs(c.want) {
			t.Errorf("%s %s = %.12g %s, want %.12g (%s)", c.id, c.text, got, c.to, c.want, c.source)
		}
	}
}

// in is a quantity as a number in another unit.
func in(t *testing.T, dim Dimension, text, unit string) float64 {
	t.Helper()
	q, err := Parse(dim, text)
	if err != nil {
		t.Fatal(err)
	}
	u, err := families[dim].find(unit)
	if err != nil {
		t.Fatal(err)
	}
	f, _ := u.fromSI(q.si).Float64()
	return f
}

// The checks that need a step of arithmetic besides the conversion.
func TestPublishedFactorsInUse(t *testing.T) {
	within := func(id string, got, want, tolerance float64, source string) {
		t.Helper()
		if math.Abs(got-want) > tolerance*want {
			t.Errorf("%s: got %.9g, want %.9g (%s)", id, got, want, source)
		}
	}
	const hoursPerMonth = 170 // of the working level month, by definition
	workingLevel := in(t, Exposure, "1 WLM", "J h/m3") / hoursPerMonth
	within("U13 J/m3 in a working level", workingLevel, 2.08e-5, 0.002,
		"1.3e5 MeV per litre times 1.602176634e-13 J, printed as 2.08e-5 J/m3")
	within("U15 working levels from equilibrium-equivalent radon",
		in(t, Radon, "101.2 pCi/L", "Bq/m3")*5.56e-9, workingLevel, 0.001,
		icrp+": 5.56e-9 J/m3 for 1 Bq/m3 of equilibrium-equivalent radon")

	// 1 WL is what 100 pCi/L gives at full equilibrium, by the U.S. convention.
	ratio := in(t, Ratio, "0.5", "1")
	within("U16", in(t, Radon, "148 Bq/m3", "pCi/L")*ratio/100, 0.02, 1e-12, "EPA convention, 4 pCi/L is 0.02 WL")
	within("U17", in(t, Radon, "370 Bq/m3", "pCi/L")*ratio/100, 0.05, 1e-12, "EPA convention, 10 pCi/L is 0.05 WL")

	const standardAir = 1.2014 // kg/m3, 0.075 lb/ft3
	speed := in(t, Velocity, "4005 fpm", "m/s")
	pressure, err := FromSI(Pressure, standardAir*speed*speed/2, "inH2O")
	if err != nil {
		t.Fatal(err)
	}
	f, _ := pressure.unit.fromSI(pressure.si).Float64()
	within("U18 velocity pressure of 4005 fpm", f, 1, 0.0025, "common practice: V = 4005 sqrt(VP)")
}

// Each spelling must lead to its own unit, and no unit may be shadowed.
func TestTableIsUnambiguous(t *testing.T) {
	owner := map[Dimension]map[string]string{}
	for _, r := range table {
		if owner[r.dimension] == nil {
			owner[r.dimension] = map[string]string{}
		}
		for _, name := range r.spellings() {
			for _, key := range []string{name, normalise(name)} {
				if other, taken := owner[r.dimension][key]; taken && other != r.symbol {
					t.Errorf("%s: %q names both %s and %s", r.dimension, key, other, r.symbol)
				}
				owner[r.dimension][key] = r.symbol
			}
			if u, err := families[r.dimension].find(name); err != nil || u.symbol != r.symbol {
				t.Errorf("%s: %q does not find %s: %v", r.dimension, name, r.symbol, err)
			}
		}
		for key := range advice[r.dimension] {
			if key != normalise(key) || owner[r.dimension][key] != "" {
				t.Errorf("%s: the advice on %q can never be given", r.dimension, key)
			}
		}
	}
}

func TestDimensions(t *testing.T) {
	want := map[Dimension]string{
		Length: "m", Area: "m2", Volume: "m3", Pressure: "Pa", Flow: "m3/s", Velocity: "m/s",
		Radon: "Bq/m3", Exposure: "WLM", Temperature: "K", Power: "W", Energy: "J", Voltage: "V",
		Current: "A", Slope: "1", Ratio: "1", Angle: "deg", Duration: "s", Time: "s", Date: "s",
		ThermalResistance: "m2K/W", AirChangeRate: "1/h",
		Density: "kg/m3", Viscosity: "Pa s", MassPerDay: "kg/s", PerLength: "1/m", Number: "1", Percent: "%",
	}
	if got := Dimensions(); len(got) != len(want) || len(families) != len(want) {
		t.Errorf("%d dimensions listed, %d in the table, want %d", len(got), len(families), len(want))
	}
	for _, dim := range Dimensions() {
		if SIUnit(dim) != want[dim] {
			t.Errorf("%s: SI unit %q, want %q", dim, SIUnit(dim), want[dim])
		}
		units := Units(dim)
		if dim == Time || dim == Date {
			if units != nil {
				t.Errorf("%s: units %q, want none", dim, units)
			}
		} else if units[0] != want[dim] {
			t.Errorf("%s: units %q do not start with %q", dim, units, want[dim])
		}
		si, err := New(dim, "1", SIUnit(dim))
		if dim != Time && dim != Date && (err != nil || si.SI() != "1") {
			t.Errorf("%s: one %s is %q: %v", dim, SIUnit(dim), si.SI(), err)
		}
	}
	if SIUnit("mass") != "" || Units("mass") != nil {
		t.Error("an unknown dimension has units")
	}
}
