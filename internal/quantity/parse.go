package quantity

import (
	"errors"
	"fmt"
	"math/big"
	"strings"
)

// maxText is the length in bytes beyond which text is not read.
const maxText = 64

// maxBits is the power of two that bounds a quantity in SI, about 1e18; nearer
// to zero than its inverse is refused as well.
const maxBits = 60

var (
	errLarge = errors.New("the number is too large for a measurement")
	errSmall = errors.New("the number is too close to zero for a measurement")
	errLong  = fmt.Errorf("it has more than %d bytes", maxText)
	errRange = errors.New("it looks like a range; write one number with its unit")
	errCold  = errors.New("it is below absolute zero")
	errFeet  = errors.New("only feet and inches are added up, as in 11 ft 6 in")
)

func errAfter(rest string) error {
	return fmt.Errorf("%q follows the number; a number has no gaps, and thousands are written as in 2,500", rest)
}

// parse reads text.
func (f *family) parse(s string) (Quantity, error) {
	s = strings.TrimSpace(strings.ReplaceAll(s, "\u00a0", " "))
	switch f.dimension {
	case Time:
		si, err := parseTime(s)
		return Quantity{unit: f.units[0], si: si}, err
	case Date:
		si, err := parseDate(s)
		return Quantity{unit: f.units[0], si: si}, err
	case ThermalResistance:
		if number, mark := cutMark(s); mark != "" {
			if signed, _ := cutSign(number); signed {
				return Quantity{}, errNoNumber
			}
			return f.join(number, mark)
		}
	default:
	}
	value, rest, err := scanNumber(s)
	if err != nil {
		return Quantity{}, err
	}
	name := strings.TrimLeft(rest, " ")
	u, ok := f.lookUp(name)
	switch {
	case name == "" && f.dimension.bare():
		return f.finish(value, f.units[0])
	case ok && name != "1":
		return f.finish(value, u)
	case countDigits(name) > 0:
		return Quantity{}, errAfter(name)
	case startsRange(name):
		return Quantity{}, errRange
	case name == "" || f.dimension != Length && f.dimension != Duration:
		return Quantity{}, f.unknown(name)
	}
	sum, err := f.parseSum(s)
	if err != nil && knownTo(name) != "" {
		err = f.unknown(name) // m2 is not a sum of metres
	}
	return sum, err
}

// join puts a number and the name of its unit, given apart, together.
func (f *family) join(number, name string) (Quantity, error) {
	switch {
	case f.dimension == Time:
		return Quantity{}, errTime
	case f.dimension == Date:
		return Quantity{}, errDate
	case f.dimension.bare() && name == "":
		name = "1"
	}
	value, rest, err := scanNumber(number)
	if err != nil {
		return Quantity{}, err
	}
	if rest = strings.TrimSpace(rest); rest != "" {
		return Quantity{}, errAfter(rest)
	}
	u, err := f.find(name)
	if err != nil {
		return Quantity{}, err
	}
	return f.finish(value, u)
}

// finish is a value in u, if that can be a measurement.
func (f *family) finish(value *big.Rat, u *unit) (Quantity, error) {
	q := Quantity{unit: u, si: u.toSI(value), value: value}
	return q, f.check(q.si)
}

// check refuses what no instrument reads and no calendar shows.
func (f *family) check(si *big.Rat) error {
	switch size := magnitude(si); {
	case f.dimension == Temperature && si.Sign() < 0:
		return errCold
	case (f.dimension == Time || f.dimension == Date) && (si.Cmp(firstInstant) < 0 || si.Cmp(lastInstant) > 0):
		return errYear
	case si.Sign() != 0 && size > maxBits:
		return errLarge
	case si.Sign() != 0 && size < -maxBits:
		return errSmall
	}
	return nil
}

// cutMark takes the mark off an insulation value such as R-4, R4 or RSI 0.7.
func cutMark(s string) (number, mark string) {
	for _, mark := range [...]string{"RSI", "R"} {
		if len(s) > len(mark) && strings.EqualFold(s[:len(mark)], mark) {
			number = strings.TrimPrefix(strings.TrimLeft(s[len(mark):], " "), "-")
			return strings.TrimLeft(number, " "), mark
		}
	}
	return s, ""
}

// startsRange reports whether s is a dash and a number.
func startsRange(s string) bool {
	rest := strings.TrimLeft(s, "-– ")
	return rest != s && countDigits(rest) > 0
}

// parseSum reads a sum of units that get smaller: 11 ft 6 in, 1 h 30 min. A sign
// in front counts for all of it, and its unit is that of the first part.
func (f *family) parseSum(s string) (Quantity, error) {
	negative, s := cutSign(s)
	var first, before *unit
	sum := new(big.Rat)
	for s != "" {
		value, rest, err := scanUnsigned(s)
		if err != nil {
			return Quantity{}, err
		}
		name, tail := f.cutName(rest)
		u, err := f.find(name)
		if err != nil {
			return Quantity{}, err
		}
		isInt, si := value.IsInt(), value.Mul(value, u.factor)
		if before == nil {
			first = u
		} else if err := follows(before, u, si); err != nil {
			return Quantity{}, err
		}
		if tail != "" && !isInt {
			return Quantity{}, fmt.Errorf("only the last part may have a fraction, not the %s", u.symbol)
		}
		sum.Add(sum, si)
		before, s = u, tail
	}
	if negative {
		sum.Neg(sum)
	}
	return Quantity{unit: first, si: sum}, f.check(sum)
}

// follows says what is wrong with si, written in u, after a part written in the
// unit before.
func follows(before, u *unit, si *big.Rat) error {
	switch {
	case u.dimension == Length && (before.symbol != "ft" || u.symbol != "in"):
		return errFeet
	case u.factor.Cmp(before.factor) >= 0:
		return fmt.Errorf("%s stands after %s: the units must get smaller", u.symbol, before.symbol)
	case si.Cmp(before.factor) >= 0:
		return fmt.Errorf("the part in %s comes to a whole %s or more; check the number", u.symbol, before.symbol)
	}
	return nil
}

// cutName splits s, which follows a number in a sum, where the next one starts.
func (f *family) cutName(s string) (name, tail string) {
	at := strings.IndexFunc(s, func(r rune) bool { return '0' <= r && r <= '9' || eighths[r] > 0 })
	if at < 0 {
		return strings.TrimSpace(s), ""
	}
	if strings.HasSuffix(s[:at], " .") {
		at-- // a number such as .5
	}
	name = strings.TrimSpace(s[:at])
	if f.dimension == Length {
		name = strings.TrimRight(name, "- ") // 11'-6"
	}
	return name, s[at:]
}
