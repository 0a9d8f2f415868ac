package quantity

// row is one unit as the table states it. A value in the unit becomes SI by
// SI = (value + offset) * factor; a factor is a product of exact numbers.
type row struct {
	dimension Dimension
	symbol    string
	factor    string
	places    int    // decimals that people expect to see; see Quantity.String
	names     string // other spellings, between bars; normalise finds more
}

// offsets holds what is added to a temperature before its factor applies.
var offsets = map[string]string{
	"°C": "273.15", // NIST SP 811 App. B.8: T/K = t/°C + 273.15
	"°F": "459.67", // NIST SP 811 App. B.8: T/K = (t/°F + 459.67)/1.8
}

// table holds every unit, the SI unit of a dimension first. The figure beside a
// factor is the one of NIST Special Publication 811 (2008), Guide for the Use of
// the International System of Units, App. B.8, read in a public copy of it;
// "exact" says that no digits follow. Where the figure is rounded, the factor is
// the definition behind it: pound-force 4.4482216152605 N, U.S. gallon
// 231 in3, International Table Btu 1055.05585262 J (these three from memory).
//
// Three bases are not the SI's own, on purpose. Exposure stays in WLM, in which
// every worker limit is written, so that no rounded conversion stands between a
// record and a limit. Angle stays in degrees, in which every installation limit
// is written: the way to radians leads through pi, and no number is exact after.
// Percent stays in percent: a difference of percentages, such as an uncertainty in
// percentage points, is no share of anything.
var table = []row{
	{Length, "m", "1", 2, "meter|meters|metre|metres"},
	{Length, "ft", "0.3048", 2, "'|foot|feet"},                            // 3.048 E-01, exact
	{Length, "in", "0.0254", 3, `"|''|inch|inches`},                       // 2.54 E-02, exact
	{Length, "cm", "0.01", 1, "centimeter|centimeters|centimetre"},        // prefix
	{Length, "mm", "0.001", 1, "millimeter|millimeters|millimetre"},       // prefix
	{Length, "mil", "0.0000254", 1, "mils"},                               // 2.54 E-05, exact
	{Length, "um", "0.000001", 1, "micron|microns|micrometer|micrometre"}, // 1.0 E-06, exact
	{Length, "yd", "0.9144", 2, "yard|yards"},                             // 9.144 E-01, exact

	{Area, "m2", "1", 2, "sq m|sqm|square meters|square metres"},
	{Area, "ft2", "0.3048 0.3048", 1, "sq ft|sqft|sf|square feet"}, // 9.290 304 E-02, exact
	{Area, "in2", "0.0254 0.0254", 2, "sq in|sqin|square inches"},  // 6.4516 E-04, exact
	{Area, "cm2", "0.0001", 1, "sq cm"},                            // prefix

	{Volume, "m3", "1", 3, "cu m|cubic meters|cubic metres"},
	{Volume, "ft3", "0.3048 0.3048 0.3048", 2, "cu ft|cuft|cf|cubic feet"}, // 2.831 685 E-02
	{Volume, "in3", "0.0254 0.0254 0.0254", 1, "cu in|cubic inches"},       // 1.638 706 E-05
	{Volume, "yd3", "0.9144 0.9144 0.9144", 2, "cu yd|cubic yards"},        // 7.645 549 E-01
	{Volume, "L", "0.001", 2, "liter|liters|litre|litres"},                 // 1.0 E-03, exact
	{Volume, "mL", "0.000001", 0, "milliliters|millilitres"},               // prefix
	{Volume, "gal", "231 0.0254 0.0254 0.0254", 2, "gallon|gallons"},       // 3.785 412 E-03, U.S.
	{Volume, "fl oz", "231/128 0.0254 0.0254 0.0254", 1, "floz"},           // 2.957 353 E-05, U.S.

	// The plain inch of water is the conventional one, 1000 kg/m3 times
	// 9.80665 m/s2 times 0.0254 m; gauges do not say which they mean, and the
	// three differ by 0.1 %, less than any of them can be read to.
	{Pressure, "Pa", "1", 1, "pascal|pascals"},
	{Pressure, "kPa", "1000", 3, "kilopascal|kilopascals"},                          // prefix
	{Pressure, "hPa", "100", 2, "hectopascal|hectopascals"},                         // prefix
	{Pressure, "mbar", "100", 2, "millibar|millibars"},                              // 1.0 E+02, exact
	{Pressure, "inH2O", "9806.65 0.0254", 2, waterInch},                             // 2.490 889 E+02
	{Pressure, "inH2O (39.2 °F)", "249.082", 2, "inwc (39.2 °F)|inH2O (4 °C)"},      // 2.490 82 E+02
	{Pressure, "inH2O (60 °F)", "248.84", 2, "inwc (60 °F)"},                        // 2.4884 E+02
	{Pressure, "mmH2O", "9.80665", 1, "mm h2o|mmwc|mm wc|mmwg|mm wg"},               // 9.806 65 E+00
	{Pressure, "psi", "4.4482216152605 10000/254 10000/254", 3, "lbf/in2"},          // 6.894 757 E+03
	{Pressure, "inHg", "13595.1 9.80665 0.0254", 2, `in hg|inches of mercury|" hg`}, // 3.386 389 E+03, conventional

	{Flow, "m3/s", "1", 4, ""},
	{Flow, "cfm", "0.3048 0.3048 0.3048 1/60", 0, "ft3/min|cu ft/min|cubic feet per minute"}, // 4.719 474 E-04
	{Flow, "L/s", "0.001", 1, "lps|l/sec|liters per second|litres per second"},               // L: 1.0 E-03, exact
	{Flow, "m3/h", "1/3600", 0, "m3/hr|cmh|cubic meters per hour|cubic metres per hour"},     // h: 3.6 E+03, exact
	{Flow, "L/min", "0.001 1/60", 1, "lpm|liters per minute|litres per minute"},              // min: 6.0 E+01, exact
	{Flow, "gpm", "231 0.0254 0.0254 0.0254 1/60", 1, "gal/min"},                             // 6.309 020 E-05

	{Velocity, "m/s", "1", 2, "m/sec|meters per second|metres per second"},
	{Velocity, "fpm", "0.3048 1/60", 0, "ft/min|feet per minute"},  // 5.08 E-03, exact
	{Velocity, "ft/s", "0.3048", 1, "ft/sec|fps"},                  // 3.048 E-01, exact
	{Velocity, "mph", "1609.344 1/3600", 1, "mi/h|miles per hour"}, // 4.4704 E-01, exact
	{Velocity, "km/h", "1000 1/3600", 1, "kph|kmh|km/hr"},          // 2.777 778 E-01

	{Radon, "Bq/m3", "1", 0, "becquerels per cubic meter|becquerels per cubic metre"},
	{Radon, "pCi/L", "37", 1, "picocuries per liter|picocuries per litre"}, // Ci: 3.7 E+10, exact; L: 1.0 E-03, exact
	{Radon, "kBq/m3", "1000", 3, ""},                                       // prefix

	// 1 WLM = 3.54 mJ h/m3: ICRP Publication 137, Table A.1, as quoted elsewhere.
	{Exposure, "WLM", "1", 3, "working level months|working level month"},
	{Exposure, "mJ h/m3", "100/354", 2, "mJh/m3"},
	{Exposure, "J h/m3", "100000/354", 5, "Jh/m3"},

	{Temperature, "K", "1", 1, "kelvin"},
	{Temperature, "°C", "1", 1, "deg c|degc|celsius|degrees c|degrees celsius"},
	{Temperature, "°F", "10/18", 1, "deg f|degf|fahrenheit|degrees f|degrees fahrenheit"},

	{Power, "W", "1", 0, "watt|watts"},
	{Power, "kW", "1000", 2, "kilowatt|kilowatts"},               // prefix
	{Power, "hp", "550 0.3048 4.4482216152605", 2, "horsepower"}, // 7.456 999 E+02, 550 ft lbf/s
	{Power, "Btu/h", "1055.05585262 1/3600", 0, "btu/hr|btuh"},   // 2.930 711 E-01, International Table

	{Energy, "J", "1", 0, "joule|joules"},
	{Energy, "Wh", "3600", 0, "watt hours|watt-hours"},             // 3.6 E+03, exact
	{Energy, "kWh", "3600000", 1, "kilowatt hours|kilowatt-hours"}, // 3.6 E+06, exact
	{Energy, "Btu", "1055.05585262", 0, "btus"},                    // 1.055 056 E+03, International Table
	{Energy, "therm", "105480400", 2, "therms"},                    // 1.054 804 E+08, exact, U.S.

	{Voltage, "V", "1", 0, "volt|volts|vac|v ac"},
	{Voltage, "kV", "1000", 2, "kilovolt|kilovolts"}, // prefix

	{Current, "A", "1", 2, "amp|amps|ampere|amperes"},
	{Current, "mA", "0.001", 0, "milliamp|milliamps"}, // prefix

	{Slope, "1", "1", 4, "m/m|ft/ft|in/in"},
	{Slope, "%", "0.01", 2, "percent|pct"},
	{Slope, "in/ft", "1/12", 3, `in per ft|inch per foot|inches per foot|in per foot|"/ft|" per ft|" per foot|"/'`},
	{Slope, "mm/m", "0.001", 1, "mm per m|mm per metre|mm per meter"},

	{Ratio, "1", "1", 3, ""},
	{Ratio, "%", "0.01", 1, "percent|pct"},

	{Angle, "deg", "1", 1, "°|º|degree|degrees"},

	{Duration, "s", "1", 1, "sec|secs|second|seconds"},
	{Duration, "min", "60", 1, "mins|minute|minutes"},   // 6.0 E+01, exact
	{Duration, "h", "3600", 2, "hr|hrs|hour|hours"},     // 3.6 E+03, exact
	{Duration, "d", "86400", 2, "day|days"},             // 8.64 E+04, exact
	{Duration, "week", "604800", 2, "wk|wks|weeks"},     // 7 d
	{Duration, "year", "31536000", 2, "y|yr|yrs|years"}, // 3.1536 E+07, exact: the year of 365 days

	{Time, "s", "1", 3, ""},
	{Date, "s", "1", 0, ""},

	{ThermalResistance, "m2K/W", "1", 2, "m2 K/W|K m2/W|RSI"},
	{ThermalResistance, "R", "10/18 3600 0.3048 0.3048 100000000/105505585262", 1, insulationR}, // 1.761 102 E-01, Btu International Table

	{AirChangeRate, "1/h", "1", 2, "/h|/hr|1/hr|h-1|ach|per hour|air changes per hour"},

	{Density, "kg/m3", "1", 3, ""},
	{Density, "lb/ft3", "45359237/100000000 10000/3048 10000/3048 10000/3048", 4, ""}, // 1.601 846 E+01

	{Viscosity, "Pa s", "1", 7, "Pa·s"},

	{MassPerDay, "kg/s", "1", 6, ""},
	{MassPerDay, "kg/d", "1/86400", 1, "kg/day|kg a day|kg per day"},                    // d: 8.64 E+04, exact
	{MassPerDay, "lb/d", "45359237/100000000 1/86400", 1, "lb/day|lb a day|lb per day"}, // lb: 4.535 924 E-01

	{PerLength, "1/m", "1", 3, "/m|per m|per metre|per meter"},
	{PerLength, "1/ft", "10000/3048", 3, "/ft|per ft|per foot"}, // ft: 3.048 E-01, exact

	{Number, "1", "1", 3, ""},

	{Percent, "%", "1", 1, "percent|pct"},
}

const (
	waterInch = `in h2o|inwc|in wc|inwg|in wg|iwc|iwg|" h2o|"h2o|" wc|"wc|" wg|"wg|` +
		"in water|in of water|inch of water|inches of water|in of wc|inches of wc|inches wc|inches h2o|" +
		"in water column|inches water column|inches of water column"
	insulationR = "h ft2 °F/Btu|ft2 h °F/Btu|ft2 °F h/Btu|°F h ft2/Btu|°F ft2 h/Btu"
)

const (
	inchAdvice  = "it is a length, and may stand for water or mercury; for a water column write inH2O"
	monthAdvice = "months differ in length, and m may be minutes; write min, d (90 days) or years"
	scaleAdvice = "it does not say which scale; write °F or °C"
	runAdvice   = "the run is missing; write in per ft"
)

// advice answers spellings that people use but that are not clear. The keys are
// normalised.
var advice = map[Dimension]map[string]string{
	Pressure: {
		"in": inchAdvice, "inch": inchAdvice, "inches": inchAdvice, `"`: inchAdvice,
		"mm": "it is a length; for a water column write mmH2O",
		"cm": "it is a length; for a water column write mmH2O",
	},
	Duration: {
		"m": monthAdvice, "mo": monthAdvice, "mos": monthAdvice, "month": monthAdvice, "months": monthAdvice,
	},
	Volume:      {"oz": "it may be a weight; for U.S. fluid ounces write fl oz"},
	Temperature: {"deg": scaleAdvice, "degrees": scaleAdvice},
	Radon: {
		"pci": "the volume is missing; write pCi/L",
		"bq":  "the volume is missing; write Bq/m3",
		"wl":  "working levels count decay products, not radon gas; write the radon result in pCi/L or Bq/m3",
	},
	Slope:         {"in": runAdvice, "inch": runAdvice, "inches": runAdvice, `"`: runAdvice},
	AirChangeRate: {"ach50": "a figure at 50 Pa is not the rate the house has by itself"},
}
