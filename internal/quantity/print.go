package quantity

import (
	"math/big"
	"strconv"
	"strings"
)

// tapeSlack is how far, in inches, a length printed as feet and inches may lie
// from the eighth that is printed: less than a tape shows.
var tapeSlack = big.NewRat(5, 1000)

// exactSlack is the same where only the noise of a derived value may be dropped,
// as in a bore of 3.068 in or a fall of 0.12 in per ft.
var exactSlack = big.NewRat(1, 1_000_000)

// extraPlaces is how many decimals a value near zero may have on top of those
// that its unit has anyway.
const extraPlaces = 3

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

// String writes the quantity for people, in the writer's unit, and rounded, so
// not for comparing: feet with inches to the eighth if one is near, inches with
// a fraction, radon as it is reported (pCi/L with one decimal, Bq/m3 without, a
// half going up: ANSI/AARST MAH 2019, 8.5.2), a time in UTC, and anything else
// with the decimals its unit is read to, or two significant digits if that is
// more, without zeros at the end. Parse takes what it gives.
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
	return u.label(rounded(value, u.places))
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

// rounded writes a number with the given decimals, or more of them if it takes
// more to show two significant digits, and drops zeros at the end.
func rounded(value *big.Rat, places int) string {
	ten := big.NewRat(10, 1)
	size := new(big.Rat).Abs(value)
	size.Mul(size, new(big.Rat).SetInt(tens[places]))
	for range extraPlaces {
		if size.Cmp(ten) >= 0 {
			break
		}
		size.Mul(size, ten)
		places++
	}
	return trimZeros(fixed(value, places))
}

// tape writes what is read off a tape as on the tape: "8 ft 6 1/8 in",
// "3 1/2 in", "1/8 in per ft". It gives "" for other units, and where no eighth
// of an inch is near enough. Nothing but zero is near zero.
func tape(u *unit, value *big.Rat) string {
	inches, slack, wholeFeet, end := value, exactSlack, false, " in"
	switch {
	case u.dimension == Length && u.symbol == "ft":
		inches, slack, wholeFeet = new(big.Rat).Mul(value, big.NewRat(12, 1)), tapeSlack, true
	case u.dimension == Slope && u.symbol == "in/ft":
		end = " in per ft"
	case u.dimension != Length || u.symbol != "in":
		return ""
	}
	count, err := strconv.ParseInt(new(big.Rat).Mul(inches, big.NewRat(8, 1)).FloatString(0), 10, 64)
	gap := new(big.Rat).Sub(inches, big.NewRat(count, 8))
	if err != nil || gap.Abs(gap).Cmp(slack) > 0 || count == 0 && value.Sign() != 0 {
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
