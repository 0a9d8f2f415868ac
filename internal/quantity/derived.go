package quantity

import (
	"fmt"
	"math"
	"strconv"
)

// Written is a computed value as three texts.
type Written struct {
	SI    string // decimal in the SI unit of the dimension, without an exponent
	Value string // the same in the unit asked for
	Text  string // for people; see Quantity.String
}

// Write is FromSI for the many values of one record: si counts with its first
// digits significant digits (12 at most), SI and Value have no more than that,
// and Text is what Format gives. It does without exact arithmetic wherever that
// would give the same text, which is nearly always. Errors are those of FromSI.
func Write(dim Dimension, si float64, unitName string, digits int) (Written, error) {
	f := families[dim]
	if f == nil {
		return Written{}, unknownDimension(dim)
	}
	u, ok := f.byName[unitName]
	if !ok {
		var err error
		if u, err = f.find(unitName); err != nil {
			return Written{}, fmt.Errorf("%s: %w", dim, err)
		}
	}
	digits = min(max(digits, 1), derivedDigits)
	if dim == Time || dim == Date || dim == Temperature || math.Abs(si) > 1e12 || math.Abs(si) < 1e-9 || math.IsNaN(si) {
		return writeExactly(dim, si, u, digits)
	}
	var w Written
	w.SI = plain(si, digits)
	si, _ = strconv.ParseFloat(w.SI, 64)
	value := si / u.approx
	w.Value = plain(value, digits)
	if w.Text = u.quickText(value); w.Text == "" {
		q, err := fromSI(dim, w.SI, u.symbol)
		if err != nil {
			return Written{}, err
		}
		w.Text = q.String()
	}
	return w, nil
}

// writeExactly is Write for what is too large, too small or no measure.
func writeExactly(dim Dimension, si float64, u *unit, digits int) (Written, error) {
	if rounded, err := strconv.ParseFloat(strconv.FormatFloat(si, 'e', digits-1, 64), 64); err == nil {
		si = rounded
	}
	q, err := fromSI(dim, si, u.symbol)
	if err != nil {
		return Written{}, err
	}
	return Written{q.SI(), q.Value(), q.String()}, nil
}

// plain writes x with so many significant digits, without an exponent and
// without needless zeros.
func plain(x float64, digits int) string {
	var scratch [32]byte
	text := strconv.AppendFloat(scratch[:0], x, 'e', digits-1, 64)
	negative := text[0] == '-'
	if negative {
		text = text[1:]
	}
	mark := len(text) - 1
	for text[mark] != 'e' {
		mark--
	}
	exponent, _ := strconv.Atoi(string(text[mark+1:]))
	mantissa := text[:mark]
	if mark > 1 {
		copy(mantissa[1:], mantissa[2:]) // the point goes
		mantissa = mantissa[:mark-1]
	}
	for len(mantissa) > 1 && mantissa[len(mantissa)-1] == '0' {
		mantissa = mantissa[:len(mantissa)-1]
	}
	var out [48]byte
	b := out[:0]
	if len(mantissa) == 1 && mantissa[0] == '0' {
		return "0"
	}
	if negative {
		b = append(b, '-')
	}
	switch {
	case exponent < 0:
		b = append(b, '0', '.')
		for i := -1; i > exponent; i-- {
			b = append(b, '0')
		}
		b = append(b, mantissa...)
	case exponent+1 >= len(mantissa):
		b = append(b, mantissa...)
		for i := len(mantissa); i <= exponent; i++ {
			b = append(b, '0')
		}
	default:
		b = append(b, mantissa[:exponent+1]...)
		b = append(b, '.')
		b = append(b, mantissa[exponent+1:]...)
	}
	return string(b)
}

// doubt is how near to a boundary of rounding, in units of the last decimal,
// the float64 arithmetic of quickText does not trust itself.
const doubt = 1e-6

// quickText is Quantity.String by float64; "" when only exact arithmetic can
// tell which text is right.
func (u *unit) quickText(value float64) string {
	places := u.places
	if u.dimension != Radon {
		text, decided := u.quickTape(value)
		if !decided || text != "" {
			return text
		}
		size := math.Abs(value) * math.Pow10(places)
		for range extraPlaces {
			if math.Abs(size-10) < doubt {
				return ""
			}
			if size >= 10 {
				break
			}
			size *= 10
			places++
		}
	}
	text := fixedFloat(value, places)
	switch {
	case text == "":
		return ""
	case u.dimension != Radon:
		text = trimZeros(text)
	}
	return u.label(text)
}

// quickTape is tape by float64, and whether it is sure.
func (u *unit) quickTape(value float64) (text string, decided bool) {
	inches, slack, wholeFeet, end := value, 1e-6, false, " in"
	switch {
	case u.dimension == Length && u.symbol == "ft":
		inches, slack, wholeFeet = value*12, 0.005, true
	case u.dimension == Slope && u.symbol == "in/ft":
		end = " in per ft"
	case u.dimension != Length || u.symbol != "in":
		return "", true
	}
	if math.Abs(inches) > 1e6 {
		return "", false
	}
	count := math.Round(inches * 8)
	gap := math.Abs(inches - count/8)
	switch {
	case math.Abs(gap-slack) < slack*1e-3:
		return "", false
	case gap > slack || count == 0 && value != 0:
		return "", true
	}
	return tapeText(int64(count), wholeFeet, end), true
}

// fixedFloat writes x with so many decimals, a half going away from zero; "" in
// doubt.
func fixedFloat(x float64, places int) string {
	scaled := math.Abs(x) * math.Pow10(places)
	whole := math.Floor(scaled)
	rest := scaled - whole
	if math.Abs(rest-0.5) < doubt || scaled > 1e9 {
		return ""
	}
	if rest > 0.5 {
		whole++
	}
	if whole == 0 {
		x = 0
	}
	return strconv.FormatFloat(math.Copysign(whole, x)/math.Pow10(places), 'f', places, 64)
}
