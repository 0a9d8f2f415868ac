package quantity

import (
	"strings"
	"testing"
	"time"
)

// What people write on a job sheet, with the SI figure that it stands for.
var written = []struct {
	dimension Dimension
	text      string
	si        string
	value     string
	unit      string
}{
	{Length, "11 ft 6 in", "3.5052", "11.5", "ft"},
	{Length, `11' 6"`, "3.5052", "11.5", "ft"},
	{Length, `11'-6"`, "3.5052", "11.5", "ft"},
	{Length, "11′ 6″", "3.5052", "11.5", "ft"},
	{Length, "11’6”", "3.5052", "11.5", "ft"},
	{Length, "11ft6in", "3.5052", "11.5", "ft"},
	{Length, "5 ft 6 1/2 in", "1.6891", "5.54166666666667", "ft"},
	{Length, "1 ft .5 in", "0.3175", "1.04166666666667", "ft"},
	{Length, "-0 ft 6 in", "-0.1524", "-0.5", "ft"},
	{Length, "3-1/2 in", "0.0889", "3.5", "in"},
	{Length, "3 1/2 in", "0.0889", "3.5", "in"},
	{Length, "3½ in.", "0.0889", "3.5", "in"},
	{Length, "3\u00a0½ in", "0.0889", "3.5", "in"},
	{Length, "½ in", "0.0127", "0.5", "in"},
	{Length, "1/8 in", "0.003175", "0.125", "in"},
	{Length, "-6 in", "-0.1524", "-6", "in"},
	{Length, "−6 in", "-0.1524", "-6", "in"},
	{Length, "+6 in", "0.1524", "6", "in"},
	{Length, "3.5 m", "3.5", "3.5", "m"},
	{Length, " 3.50 m ", "3.5", "3.5", "m"},
	{Length, ".5 m", "0.5", "0.5", "m"},
	{Length, "2,640 ft", "804.672", "2640", "ft"},
	{Length, "1,234,567.5 mm", "1234.5675", "1234567.5", "mm"},
	{Length, "2.5e1 mm", "0.025", "25", "mm"},
	{Length, "6 mil", "0.0001524", "6", "mil"},
	{Length, "152 um", "0.000152", "152", "um"},
	{Length, "152 µm", "0.000152", "152", "um"},
	{Length, "152 μm", "0.000152", "152", "um"},
	{Area, "2,500 ft2", "232.2576", "2500", "ft2"},
	{Area, "2500 sq ft", "232.2576", "2500", "ft2"},
	{Area, "2500 sq. ft.", "232.2576", "2500", "ft2"},
	{Area, "2500 ft²", "232.2576", "2500", "ft2"},
	{Area, "2500 ft^2", "232.2576", "2500", "ft2"},
	{Volume, "5 gal", "0.01892705892", "5", "gal"},
	{Volume, "2 ft3", "0.056633693184", "2", "ft3"},
	{Volume, "2 cu. ft.", "0.056633693184", "2", "ft3"},
	{Pressure, "0.8 inH2O", "199.271128", "0.8", "inH2O"},
	{Pressure, "0.8 in H2O", "199.271128", "0.8", "inH2O"},
	{Pressure, "0.8 in wc", "199.271128", "0.8", "inH2O"},
	{Pressure, "0.8 in w.c.", "199.271128", "0.8", "inH2O"},
	{Pressure, "0.8 in. W.C.", "199.271128", "0.8", "inH2O"},
	{Pressure, "0.8 inWC", "199.271128", "0.8", "inH2O"},
	{Pressure, `0.8" WC`, "199.271128", "0.8", "inH2O"},
	{Pressure, "0.8 inches of water", "199.271128", "0.8", "inH2O"},
	{Pressure, "-0.004 inH2O", "-0.99635564", "-0.004", "inH2O"},
	{Pressure, "200 Pa", "200", "200", "Pa"},
	{Pressure, "0.2 kPa", "200", "0.2", "kPa"},
	{Pressure, "1.5 mbar", "150", "1.5", "mbar"},
	{Flow, "80 cfm", "0.037755795456", "80", "cfm"},
	{Flow, "80 CFM", "0.037755795456", "80", "cfm"},
	{Flow, "80 ft³/min", "0.037755795456", "80", "cfm"},
	{Flow, "40 L/s", "0.04", "40", "L/s"},
	{Flow, "120 m3/h", "0.0333333333333", "120", "m3/h"},
	{Flow, "120 m³/h", "0.0333333333333", "120", "m3/h"},
	{Velocity, "1600 fpm", "8.128", "1600", "fpm"},
	{Velocity, "1.2 m/s", "1.2", "1.2", "m/s"},
	{Radon, "4.0 pCi/L", "148", "4", "pCi/L"},
	{Radon, "4.0 pCi / l", "148", "4", "pCi/L"},
	{Radon, "148 Bq/m3", "148", "148", "Bq/m3"},
	{Radon, "148 Bq/m³", "148", "148", "Bq/m3"},
	{Exposure, "0.4 WLM", "0.4", "0.4", "WLM"},
	{Exposure, "3.54 mJ·h/m³", "1", "3.54", "mJ h/m3"},
	{Temperature, "68 F", "293.15", "68", "°F"},
	{Temperature, "68°F", "293.15", "68", "°F"},
	{Temperature, "68 deg F", "293.15", "68", "°F"},
	{Temperature, "20 °C", "293.15", "20", "°C"},
	{Temperature, "20 ℃", "293.15", "20", "°C"},
	{Temperature, "293 K", "293", "293", "K"},
	{Temperature, "70 F", "294.261111111", "70", "°F"},
	{Power, "90 W", "90", "90", "W"},
	{Energy, "650 kWh", "2340000000", "650", "kWh"},
	{Voltage, "120 V", "120", "120", "V"},
	{Current, "15 A", "15", "15", "A"},
	{Slope, "1/8 in per ft", "0.0104166666667", "0.125", "in/ft"},
	{Slope, `1/8"/ft`, "0.0104166666667", "0.125", "in/ft"},
	{Slope, "2 %", "0.02", "2", "%"},
	{Slope, "10 mm/m", "0.01", "10", "mm/m"},
	{Ratio, "10 %", "0.1", "10", "%"},
	{Ratio, "0.5", "0.5", "0.5", "1"},
	{Angle, "45 deg", "45", "45", "deg"},
	{Angle, "45°", "45", "45", "deg"},
	{Duration, "48 h", "172800", "48", "h"},
	{Duration, "2 d", "172800", "2", "d"},
	{Duration, "30 min", "1800", "30", "min"},
	{Duration, "90 days", "7776000", "90", "d"},
	{Duration, "2 years", "63072000", "2", "year"},
	{Duration, "1 h 30 min", "5400", "1.5", "h"},
	{Duration, "1 d 2 h 30 min 15 s", "95415", "1.10434027777778", "d"},
	{ThermalResistance, "R-4", "0.704440734729", "4", "R"},
	{ThermalResistance, "R4", "0.704440734729", "4", "R"},
	{ThermalResistance, "r 4", "0.704440734729", "4", "R"},
	{ThermalResistance, "0.7 m2K/W", "0.7", "0.7", "m2K/W"},
	{ThermalResistance, "0.7 m²·K/W", "0.7", "0.7", "m2K/W"},
	{ThermalResistance, "RSI 0.7", "0.7", "0.7", "m2K/W"},
	{AirChangeRate, "0.35 /h", "0.35", "0.35", "1/h"},
	{AirChangeRate, "0.35 1/h", "0.35", "0.35", "1/h"},
	{Date, "2026-03-01", "1772323200", "1772323200", "s"},
	{Date, "1969-12-31", "-86400", "-86400", "s"},
	{Time, "2026-03-01T09:00-05:00", "1772373600", "1772373600", "s"},
	{Time, "2026-03-01T14:00:00Z", "1772373600", "1772373600", "s"},
	{Time, "2026-03-01 09:00:00.25-05:00", "1772373600.25", "1772373600.25", "s"},
	{Time, "2026-03-01t09:00z", "1772355600", "1772355600", "s"},
	{Time, "2024-02-29T00:00+14:00", "1709114400", "1709114400", "s"},
}

func TestParse(t *testing.T) {
	for _, c := range written {
		q, err := Parse(c.dimension, c.text)
		if err != nil {
			t.Error(err)
			continue
		}
		if q.SI() != c.si || q.Value() != c.value || q.Unit() != c.unit || q.Text() != c.text || q.Dimension() != c.dimension {
			t.Errorf("%s %q: got SI %s, value %s %s, text %q, dimension %s; want SI %s, value %s %s",
				c.dimension, c.text, q.SI(), q.Value(), q.Unit(), q.Text(), q.Dimension(), c.si, c.value, c.unit)
		}
	}
}

// What is refused, each with words that the answer must hold.
var refused = []struct {
	dimension Dimension
	text      string
	answer    string
}{
	{Length, "12", "the unit is missing; write one of m, ft, in, cm, mm, mil, um, yd"},
	{Length, "0", "the unit is missing"},
	{Length, "", "does not start with a number"},
	{Length, "ft", "does not start with a number"},
	{Length, "e5 m", "does not start with a number"},
	{Length, "about 12 ft", "does not start with a number"},
	{Length, "NaN m", "does not start with a number"},
	{Length, "Inf m", "does not start with a number"},
	{Length, "-Infinity m", "does not start with a number"},
	{Length, "--5 m", "does not start with a number"},
	{Length, "3,5 m", "for a decimal write a point, as in 3.5"},
	{Length, "3,50 m", "for a decimal write a point"},
	{Length, "1234,567 m", "for a decimal write a point"},
	{Length, "0,500 m", "for a decimal write a point"},
	{Length, "1.234,5 m", "for a decimal write a point"},
	{Length, "1,234,56 m", "for a decimal write a point"},
	{Length, "1,,234 m", "for a decimal write a point"},
	{Length, ",5 m", "for a decimal write a point"},
	{Length, "5. m", "has a digit behind it"},
	{Length, "1.2.3 m", "comes once"},
	{Length, "2 500 m", "thousands are written as in 2,500"},
	{Length, "1/0 in", "a fraction is written as"},
	{Length, "3-9/8 in", "a fraction is written as"},
	{Length, "1/12345 in", "a fraction is written as"},
	{Length, "1e99 m", "the exponent is beyond 30"},
	{Length, "1e-99999999999999999999 m", "the exponent is beyond 30"},
	{Length, "1e30 m", "too large for a measurement"},
	{Length, "1e-30 m", "too close to zero for a measurement"},
	{Length, "10-12 ft", "looks like a range"},
	{Length, "10 – 12 ft", "looks like a range"},
	{Length, "12 parsecs", `the unit "parsecs" is not known; write one of m, ft`},
	{Length, "12 m2", `"m2" is a unit of area, not of length`},
	{Length, "12 ft3/min", `"ft3/min" is a unit of flow, not of length`},
	{Length, "11 ft 14 in", "the part in in comes to a whole ft or more"},
	{Length, "11 ft 6", "the unit is missing"},
	{Length, `11'6`, "the unit is missing"},
	{Length, "12e+ ft", `the unit "e+ ft" is not known`},
	{Length, "11 ft 1/0 in", "a fraction is written as"},
	{Length, "1.5 ft 6 in", "only the last part may have a fraction, not the ft"},
	{Length, "6 in 11 ft", "only feet and inches are added up"},
	{Length, "2 m 5 cm", "only feet and inches are added up"},
	{Length, "11 ft 6 in 3", "the unit is missing"},
	{Length, strings.Repeat("1", 70) + " m", "more than 64 bytes"},
	{Area, "12 ft", `"ft" is a unit of length, not of area`},
	{Volume, "5 oz", "write fl oz"},
	{Pressure, "0.8 in", "write inH2O"},
	{Pressure, `0.8"`, "write inH2O"},
	{Pressure, "5 mm", "write mmH2O"},
	{Pressure, "0.8", "write one of Pa, kPa, hPa, mbar, inH2O"},
	{Flow, "80", "write one of m3/s, cfm, L/s, m3/h"},
	{Flow, "80 m3", `"m3" is a unit of volume, not of flow`},
	{Radon, "4", "write one of Bq/m3, pCi/L"},
	{Radon, "4 pCi", "write pCi/L"},
	{Radon, "0.02 WL", "decay products"},
	{Radon, "< 0.3 pCi/L", "does not start with a number"},
	{Temperature, "70", "write one of K, °C, °F"},
	{Temperature, "70 deg", "which scale"},
	{Temperature, "-460 F", "below absolute zero"},
	{Temperature, "-1 K", "below absolute zero"},
	{Slope, "0.01", "write one of %, in/ft, mm/m"},
	{Slope, "1/8 in", "write in per ft"},
	{Ratio, "0.5 1", "follows the number"},
	{Angle, "45", "write one of deg"},
	{Duration, "2 months", "months differ in length"},
	{Duration, "5 m", "m may be minutes"},
	{Duration, "1 h 90 min", "the part in min comes to a whole h or more"},
	{Duration, "30 min 1 h", "the units must get smaller"},
	{Duration, "1.5 h 10 min", "only the last part may have a fraction"},
	{ThermalResistance, "R", "does not start with a number"},
	{ThermalResistance, "R--4", "does not start with a number"},
	{ThermalResistance, "R-13 batts", "follows the number"},
	{AirChangeRate, "5 ACH50", "at 50 Pa"},
	{Date, "3/1/2026", "write it as 2026-03-01"},
	{Date, "2026-3-1", "write it as 2026-03-01"},
	{Date, "2026-02-29", "no such day"},
	{Date, "2026-13-01", "no such day"},
	{Date, "2026-03-01T09:00Z", "write it as 2026-03-01"},
	{Date, "20260301", "write it as 2026-03-01"},
	{Date, "", "no such day"},
	{Time, "2026-03-01T09:00", "the zone is missing"},
	{Time, "2026-03-01T09:00:00", "the zone is missing"},
	{Time, "2026-03-01", "the time of day is missing"},
	{Time, "2026-03-01T09:00 EST", "the zone cannot be read"},
	{Time, "2026-03-01T09:00-0500", "the zone cannot be read"},
	{Time, "2026-03-01T09:00-25:00", "the zone cannot be read"},
	{Time, "2026-03-01T09:00:00,5Z", "the zone cannot be read"},
	{Time, "2026-03-01T9:00Z", "no such day and time"},
	{Time, "2026-03-01T24:00Z", "no such day and time"},
	{Time, "2026-03-01T23:59:60Z", "no such day and time"},
	{Time, "2026-02-29T09:00Z", "no such day and time"},
	{Time, "2026-03-01T09:00:0Z", "no such day and time"},
	{Time, "2026-03-01T09:00:00.1234567890Z", "no such day and time"},
	{Time, "9 am", "no such day and time"},
	{"mass", "1 kg", `"mass" is not a dimension`},
}

func TestParseRefuses(t *testing.T) {
	for _, c := range refused {
		q, err := Parse(c.dimension, c.text)
		switch {
		case err == nil:
			t.Errorf("%s %q was read as %s %s", c.dimension, c.text, q.SI(), SIUnit(c.dimension))
		case !strings.Contains(err.Error(), c.answer):
			t.Errorf("%s %q: the answer %q does not say %q", c.dimension, c.text, err, c.answer)
		case !strings.Contains(err.Error(), string(c.dimension)):
			t.Errorf("the answer %q does not name the %s", err, c.dimension)
		case q.unit != nil:
			t.Errorf("%s %q gives a quantity beside the error", c.dimension, c.text)
		}
	}
}

func TestNew(t *testing.T) {
	for _, c := range []struct {
		dimension    Dimension
		number, unit string
		si, text     string
	}{
		{Length, "11.5", "ft", "3.5052", "11.5 ft"},
		{Length, "3 1/2", "in", "0.0889", "3 1/2 in"},
		{Pressure, "-1e-1", "inWC", "-24.908891", "-1e-1 inWC"},
		{ThermalResistance, "4", "R", "0.704440734729", "4 R"},
		{Ratio, "0.5", "", "0.5", "0.5"},
		{Ratio, "0.5", "1", "0.5", "0.5 1"},
		{Slope, "0.02", "1", "0.02", "0.02 1"},
	} {
		q, err := New(c.dimension, c.number, c.unit)
		if err != nil || q.SI() != c.si || q.Text() != c.text {
			t.Errorf("%s %q %q: got %s, %q, %v; want %s, %q", c.dimension, c.number, c.unit, q.SI(), q.Text(), err, c.si, c.text)
		}
	}
	for _, c := range []struct {
		dimension            Dimension
		number, unit, answer string
	}{
		{Length, "3", "", "the unit is missing"},
		{Length, "3 ft", "in", `"ft" follows the number`},
		{Length, "", "in", "does not start with a number"},
		{Pressure, "1", "in", "write inH2O"},
		{Angle, "45", "", "the unit is missing"},
		{Time, "0", "s", "write it as 2026-03-01T09:00-05:00"},
		{Date, "0", "s", "write it as 2026-03-01"},
		{"mass", "1", "kg", "not a dimension"},
		{Length, strings.Repeat("0", 64), "m", "more than 64 bytes"},
	} {
		if q, err := New(c.dimension, c.number, c.unit); err == nil || !strings.Contains(err.Error(), c.answer) {
			t.Errorf("%s %q %q: got %s and the answer %v, want one that says %q", c.dimension, c.number, c.unit, q.SI(), err, c.answer)
		}
	}
}

// A machine whose local zone is that of the text must read the same instant as
// one whose zone is not.
func TestTimeIgnoresTheMachine(t *testing.T) {
	local := time.Local
	defer func() { time.Local = local }()
	for _, zone := range []*time.Location{time.UTC, time.FixedZone("here", -5*3600), time.FixedZone("there", 9*3600)} {
		time.Local = zone
		q, err := Parse(Time, "2026-03-01T09:00-05:00")
		if err != nil || q.SI() != "1772373600" || q.String() != "2026-03-01T14:00:00Z" {
			t.Errorf("in %s: got %s, %s, %v", zone, q.SI(), q, err)
		}
	}
}
