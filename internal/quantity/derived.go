package quantity

import (
	"fmt"
	"math"
	"strconv"
	"strings"
)

// Written is a computed value as three texts.
type Written struct {
	SI    string // decimal in the SI unit of the dimension, without an exponent
	Value string // the same in the unit asked for
	Text  string // for people; see Quantity.String
}

// A Writer writes the many computed values of one record. It keeps their texts
// together in memory. The zero Writer is ready.
type Writer struct {
	text strings.Builder
}

// writerRoom is how many bytes of text are asked for at once.
const writerRoom = 8 << 10

// Write is FromSI for one value: si counts with its first digits significant
// digits (12 at most), SI and Value have no more than that, and Text is what
// Format gives. It does without exact arithmetic wherever that would give the
// same text, which is nearly always. Errors are those of FromSI.
func (w *Writer) Write(dim Dimension, si float64, unitName string, digits int) (Written, error) {
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
	if dim == Time || dim == Date || dim == Temperature || math.Abs(si) > 1e12 || math.Abs(si) < 1e-9 && si != 0 || math.IsNaN(si) {
		return writeExactly(dim, si, u, digits)
	}
	var scratch [64]byte
	var out Written
	out.SI = w.keep(appendPlain(scratch[:0], si, digits))
	si, _ = strconv.ParseFloat(out.SI, 64)
	value := si / u.approx
	out.Value = out.SI
	if u.approx != 1 {
		out.Value = w.keep(appendPlain(scratch[:0], value, digits))
	}
	if text := u.appendText(scratch[:0], value); text != nil {
		out.Text = w.keep(text)
		return out, nil
	}
	q, err := fromSI(dim, out.SI, u.symbol)
	if err != nil {
		return Written{}, err
	}
	out.Text = q.String()
	return out, nil
}

// keep makes a string of b among the others.
func (w *Writer) keep(b []byte) string {
	if w.text.Len()+len(b) > w.text.Cap() {
		w.text = strings.Builder{}
		w.text.Grow(writerRoom)
	}
	from := w.text.Len()
	w.text.Write(b)
	return w.text.String()[from:]
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
