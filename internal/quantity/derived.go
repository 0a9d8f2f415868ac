package quantity

import (
	"math"
	"strconv"
)

// A Computed is a number that was worked out, with the unit that its reader
// thinks in. Few of the many that a record gives are ever read, so each text is
// made when it is asked for. The zero Computed is no number.
type Computed struct {
	si     float64
	unit   *unit
	digits int8
}

// Compute is FromSI for one of many values: si counts with its first digits
// significant digits (12 at most), and SI and Value have no more than that. Where
// the dimension has no such unit, its SI unit stands for it. Errors are those of
// FromSI otherwise.
func Compute(dim Dimension, si float64, unit Unit, digits int) (Computed, error) {
	u, err := unit.of(dim)
	if err != nil {
		return Computed{}, err
	}
	c := Computed{si, u, int8(min(max(digits, 1), derivedDigits))}
	if c.isPlain() || u.surelyHolds(si) {
		return c, nil
	}
	_, err = c.exactly()
	return c, err
}

// surelyHolds tells of instants and temperatures, which are written exactly,
// that a value is well within what they can be.
func (u *unit) surelyHolds(si float64) bool {
	if u.dimension == Temperature {
		return si > 0 && si < 1e12
	}
	return (u.dimension == Time || u.dimension == Date) && si > -62e9 && si < 253e9
}

// isPlain tells whether a value is written without exact arithmetic wherever
// that gives the same text, which is nearly always. Others are too large, too
// small or no measure.
func (c Computed) isPlain() bool {
	size := math.Abs(c.si)
	return c.unit.plain && (size <= 1e12 && size >= 1e-9 || size == 0)
}

// exactly is the value as a quantity.
func (c Computed) exactly() (Quantity, error) {
	si := c.si
	if rounded, err := strconv.ParseFloat(strconv.FormatFloat(si, 'e', int(c.digits)-1, 64), 64); err == nil {
		si = rounded
	}
	return fromSI(c.unit.dimension, si, c.unit.symbol)
}

// Unit is the symbol of the unit that the reader thinks in.
func (c Computed) Unit() string { return c.unit.symbol }

// SI is the number in the SI unit of its dimension, a decimal without an
// exponent.
func (c Computed) SI() string {
	if !c.isPlain() {
		q, _ := c.exactly()
		return q.SI()
	}
	var scratch [64]byte
	return string(appendPlain(scratch[:0], c.si, int(c.digits)))
}

// Value is the same in the unit of the reader.
func (c Computed) Value() string {
	switch {
	case !c.isPlain():
		q, _ := c.exactly()
		return q.Value()
	case c.unit.approx == 1:
		return c.SI()
	}
	var scratch [64]byte
	return string(appendPlain(scratch[:0], c.inUnit(), int(c.digits)))
}

// Text is the number with its unit, for people: what Format gives.
func (c Computed) Text() string {
	if c.isPlain() {
		var scratch [64]byte
		if text := c.unit.appendText(scratch[:0], c.inUnit()); text != nil {
			return string(text)
		}
	}
	q, _ := c.exactly()
	return q.String()
}

// inUnit is the number in the unit of the reader, worked out from the digits
// that count.
func (c Computed) inUnit() float64 {
	var scratch [64]byte
	si, _ := strconv.ParseFloat(string(appendPlain(scratch[:0], c.si, int(c.digits))), 64)
	return si / c.unit.approx
}

// appendPlain writes x with so many significant digits, without an exponent and
// without needless zeros.
func appendPlain(b []byte, x float64, digits int) []byte {
	var scratch [32]byte
	text := strconv.AppendFloat(scratch[:0], math.Abs(x), 'e', digits-1, 64)
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
	if mantissa[0] == '0' {
		return append(b, '0')
	}
	if x < 0 {
		b = append(b, '-')
	}
	switch {
	case exponent < 0:
		b = append(b, "0."...)
		for range -1 - exponent {
			b = append(b, '0')
		}
		return append(b, mantissa...)
	case exponent+1 >= len(mantissa):
		b = append(b, mantissa...)
		for range exponent + 1 - len(mantissa) {
			b = append(b, '0')
		}
		return b
	}
	b = append(b, mantissa[:exponent+1]...)
	b = append(b, '.')
	return append(b, mantissa[exponent+1:]...)
}

// doubt is how near to a boundary of rounding, in units of the last decimal,
// float64 arithmetic does not trust itself here.
const doubt = 1e-6

// appendText is Quantity.String by float64; nil when only exact arithmetic can
// tell which text is right.
func (u *unit) appendText(b []byte, value float64) []byte {
	places := u.places
	if u.dimension != Radon {
		text, decided := u.quickTape(value)
		if !decided {
			return nil
		}
		if text != "" {
			return append(b, text...)
		}
		size := math.Abs(value) * math.Pow10(places)
		for range extraPlaces {
			if math.Abs(size-10) < doubt {
				return nil
			}
			if size >= 10 {
				break
			}
			size *= 10
			places++
		}
	}
	whole, decided := nearest(value, places)
	for more := 1; more <= extraPlaces && decided && u.dimension == Length; more++ {
		step := math.Pow10(places)
		gap := math.Abs(math.Abs(value) - whole/step)
		if math.Mod(4*whole, step) != 0 || gap < roundNoise/2 {
			break
		}
		if gap < roundNoise*2 {
			return nil
		}
		places++
		whole, decided = nearest(value, places)
	}
	if !decided {
		return nil
	}
	negative := value < 0 && whole != 0
	before, after := u.affixes(!negative && whole == math.Pow10(places), negative)
	b = append(b, before...)
	if negative {
		b = append(b, '-')
	}
	b = strconv.AppendFloat(b, whole/math.Pow10(places), 'f', places, 64)
	if places > 0 && u.dimension != Radon {
		for b[len(b)-1] == '0' {
			b = b[:len(b)-1]
		}
		if b[len(b)-1] == '.' {
			b = b[:len(b)-1]
		}
	}
	return append(b, after...)
}

// nearest is |value| in units of the last of its decimals, rounded, and whether
// that is sure.
func nearest(value float64, places int) (whole float64, decided bool) {
	scaled := math.Abs(value) * math.Pow10(places)
	whole = math.Floor(scaled)
	rest := scaled - whole
	if math.Abs(rest-0.5) < doubt || scaled > 1e9 {
		return 0, false
	}
	if rest > 0.5 {
		whole++
	}
	return whole, true
}

// quickTape is tape by float64, and whether it is sure.
func (u *unit) quickTape(value float64) (text string, decided bool) {
	const slack = 1e-6 // tapeSlack
	inches, wholeFeet, end := value, false, " in"
	switch {
	case u.dimension == Length && u.symbol == "ft":
		inches, wholeFeet = value*12, true
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
