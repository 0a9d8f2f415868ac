package quantity

import (
	"cmp"
	"math"
	"math/big"
	"strconv"
	"strings"
)

// tapeSlack is how far, in inches, what is printed as on a tape may lie from the
// eighth that is printed: only the noise of a derived value is dropped, not what
// makes a bore 3.068 in or a distance short of 10 ft.
var tapeSlack = big.NewRat(1, 1_000_000)

// extraPlaces is how many decimals a value near zero, or a length near a round
// one, may have on top of those that its unit has anyway.
const extraPlaces = 3

// roundNoise is how far a length may lie from a round one and be printed as it,
// in its unit.
const roundNoise = 1e-9

// Format writes a value given in the SI unit of the dimension for people who
// think in the given unit; see Quantity.String. A float64 counts with its first
// 12 significant digits. It is an error if si is no finite number or the unit is
// not one of the dimension.
func Format[T string | float64](dim Dimension, si T, unit string) (string, error) {
	q, err := fromSI(dim, si, unit)
	if err != nil {
		return "", err
	}
	return q.String(), nil
}

// side is Cmp, but for the noise of numbers that were worked out.
func (q Quantity) side(bound Quantity) int {
	a, b := q.Float(), bound.Float()
	if math.Abs(a-b) <= 1e-12*math.Abs(b) {
		return 0
	}
	return cmp.Compare(a, b)
}

// String writes the quantity for people, in the writer's unit, and rounded, so
// not for comparing: feet with inches and inches with a fraction where an eighth
// is met, radon as it is reported (pCi/L with one decimal, Bq/m3 without, a
// half going up: ANSI/AARST MAH 2019, 8.5.2), a time in UTC, and anything else
// with the decimals its unit is read to, or two significant digits if that is
// more, without zeros at the end. A length that misses a round one, as 9.998 ft
// does, keeps the decimals that show it. Parse takes what it gives.
func (q Quantity) String() string {
	if q.unit == nil {
		return ""
	}
	u := q.unit
	value := u.fromSI(q.si)
	switch u.dimension {
	case Time, Date:
		return instantText(u.dimension, q.si)
	case Radon:
		return u.label(fixed(value, u.places))
	default:
	}
	if text := tape(u, value); text != "" {
		return text
	}
	return u.label(u.rounded(value))
}

// Beside gives the text of a quantity, which is si in SI, a decimal like the
// limit, as it can stand beside the limit. Where the text lies on another side of
// it than si does, si is written with as many more decimals as it takes: beside
// "at least 10 ft", 9.999999 ft does not read as 10 ft.
func Beside(dim Dimension, text, si, unit, limit string) (string, error) {
	q, err := fromSI(dim, si, unit)
	if err != nil {
		return "", err
	}
	bound, err := fromSI(dim, limit, unit)
	if err != nil {
		return "", err
	}
	side := q.side(bound)
	if side == 0 {
		return text, nil
	}
	value := q.unit.fromSI(q.si)
	for places := q.unit.places + 1; places <= siDigits; places++ {
		if printed, err := Parse(dim, text); err != nil || printed.side(bound) == side {
			return text, err
		}
		text = q.unit.label(trimZeros(fixed(value, places)))
	}
	return text, nil
}

// label puts the unit to a number, in a form that Parse takes.
func (u *unit) label(number string) string {
	before, after := u.affixes(number == "1", strings.HasPrefix(number, "-"))
	return before + number + after
}

// affixes is what stands before and after a number that may be one or negative.
func (u *unit) affixes(isOne, negative bool) (before, after string) {
	switch {
	case u.dimension.bare() && u.symbol == "1":
		return "", ""
	case u.dimension == Slope && u.symbol == "1":
		return "", " m/m"
	case u.symbol == "1/h":
		return "", " /h"
	case u.dimension == PerLength:
		return "", " per " + strings.TrimPrefix(u.symbol, "1/")
	case u.symbol == "R" && !negative:
		return "R-", ""
	case !isOne && (u.symbol == "week" || u.symbol == "year"):
		return "", u.spaced + "s"
	}
	return "", u.spaced
}

// rounded writes a number with the decimals of its unit, or more of them if it
// takes more to show two significant digits or that a length is no round one, and
// drops zeros at the end.
func (u *unit) rounded(value *big.Rat) string {
	ten := big.NewRat(10, 1)
	places := u.places
	size := new(big.Rat).Abs(value)
	size.Mul(size, new(big.Rat).SetInt(tens[places]))
	for range extraPlaces {
		if size.Cmp(ten) >= 0 {
			break
		}
		size.Mul(size, ten)
		places++
	}
	text := fixed(value, places)
	for more := 1; more <= extraPlaces && u.dimension == Length && seemsRound(text, value); more++ {
		text = fixed(value, places+more)
	}
	return trimZeros(text)
}

// seemsRound tells whether a text stands for quarters of a unit, in which limits
// are written, and value does not.
func seemsRound(text string, value *big.Rat) bool {
	printed, ok := new(big.Rat).SetString(text)
	if !ok || !new(big.Rat).Mul(printed, big.NewRat(4, 1)).IsInt() {
		return false
	}
	gap, _ := printed.Sub(printed, value).Float64()
	return math.Abs(gap) > roundNoise
}

// tape writes what is read off a tape as on the tape: "8 ft 6 1/8 in",
// "3 1/2 in", "1/8 in per ft". It gives "" for other units, and where no eighth
// of an inch is near enough. Nothing but zero is near zero.
func tape(u *unit, value *big.Rat) string {
	inches, wholeFeet, end := value, false, " in"
	switch {
	case u.dimension == Length && u.symbol == "ft":
		inches, wholeFeet = new(big.Rat).Mul(value, big.NewRat(12, 1)), true
	case u.dimension == Slope && u.symbol == "in/ft":
		end = " in per ft"
	case u.dimension != Length || u.symbol != "in":
		return ""
	}
	count, err := strconv.ParseInt(new(big.Rat).Mul(inches, big.NewRat(8, 1)).FloatString(0), 10, 64)
	gap := new(big.Rat).Sub(inches, big.NewRat(count, 8))
	if err != nil || gap.Abs(gap).Cmp(tapeSlack) > 0 || count == 0 && value.Sign() != 0 {
		return ""
	}
	return tapeText(count, wholeFeet, end)
}

// tapeText writes so many eighths of an inch.
func tapeText(count int64, wholeFeet bool, end string) string {
	sign := ""
	if count < 0 {
		sign, count = "-", -count
	}
	if wholeFeet && (count == 0 || count >= 96) {
		sign += strconv.FormatInt(count/96, 10) + " ft"
		if count %= 96; count == 0 {
			return sign
		}
		sign += " "
	}
	return sign + eighthsText(count) + end
}

// fractions are the eighths of an inch in lowest terms.
var fractions = [8]string{"", "1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8"}

// eighthsText writes so many eighths as a whole number and a fraction.
func eighthsText(count int64) string {
	whole, fraction := strconv.FormatInt(count/8, 10), fractions[count%8]
	switch {
	case fraction == "":
		return whole
	case whole == "0":
		return fraction
	default:
		return whole + " " + fraction
	}
}
