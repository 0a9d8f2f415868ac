package quantity

import (
	"fmt"
	"math"
	"math/big"
	"strconv"
	"strings"
)

// siDigits is how many significant digits SI text carries: no more than a
// float64 keeps, so that text and the number read from it agree.
const siDigits = 15

// derivedDigits is how many significant digits of a computed float64 count.
// What lies beyond is noise of the arithmetic.
const derivedDigits = 12

var one = big.NewRat(1, 1)

// tens are the powers of ten that writing a number takes.
var tens = func() (powers [4 * siDigits]*big.Int) {
	for i := range powers {
		powers[i] = new(big.Int).Exp(big.NewInt(10), big.NewInt(int64(i)), nil)
	}
	return powers
}()

// magnitude is the binary logarithm of |r| to within 1, for r other than zero.
func magnitude(r *big.Rat) int { return r.Num().BitLen() - r.Denom().BitLen() }

// significant writes r as a decimal without an exponent, rounded half to even
// to siDigits significant digits, and says whether that is exactly r.
func significant(r *big.Rat) (text string, exact bool) {
	if text, ok := short(r); ok {
		return text, true
	}
	// 30103/100000 is log10(2). The estimate of the decimals to keep is off by
	// one or two, which the loop mends.
	decimals := siDigits - 1 - magnitude(r)*30103/100000
	for {
		digits, exact := scaled(r, decimals)
		switch n := len(digits); {
		case n == siDigits || n == siDigits+1 && strings.HasSuffix(digits, "0"):
			return placePoint(r.Sign() < 0, digits, decimals), exact
		default:
			decimals += siDigits - n
		}
	}
}

// short writes r if its decimals end within siDigits digits and 64 bits suffice
// to find them, which is so of nearly everything that people write.
func short(r *big.Rat) (text string, ok bool) {
	if !r.Num().IsInt64() || !r.Denom().IsInt64() {
		return "", false
	}
	const most = 1_000_000_000_000_000 // 10 to the power of siDigits
	n, d, decimals := r.Num().Int64(), r.Denom().Int64(), 0
	for ; d > 1 && n < most && n > -most; decimals++ {
		switch {
		case d%10 == 0:
			d /= 10
		case d%5 == 0:
			n, d = n*2, d/5
		case d%2 == 0:
			n, d = n*5, d/2
		default:
			return "", false
		}
	}
	if d > 1 || n >= most || n <= -most {
		return "", false
	}
	var digits [siDigits + 1]byte
	return placePoint(n < 0, string(strconv.AppendInt(digits[:0], max(n, -n), 10)), decimals), true
}

// scaled is |r| times ten to the power of decimals, rounded half to even to a
// whole number.
func scaled(r *big.Rat, decimals int) (digits string, exact bool) {
	n, d := new(big.Int).Abs(r.Num()), r.Denom()
	if decimals >= 0 {
		n.Mul(n, tens[decimals])
	} else {
		d = new(big.Int).Mul(d, tens[-decimals])
	}
	q, rest := n.QuoRem(n, d, new(big.Int))
	exact = rest.Sign() == 0
	if half := rest.Lsh(rest, 1).Cmp(d); half > 0 || half == 0 && q.Bit(0) == 1 {
		q.Add(q, big.NewInt(1))
	}
	return q.String(), exact
}

// placePoint writes digits with the last decimals of them behind the point,
// without needless zeros.
func placePoint(negative bool, digits string, decimals int) string {
	sign := ""
	if negative {
		sign = "-"
	}
	if decimals <= 0 {
		return sign + digits + strings.Repeat("0", -decimals)
	}
	if missing := decimals + 1 - len(digits); missing > 0 {
		digits = strings.Repeat("0", missing) + digits
	}
	at := len(digits) - decimals
	return sign + trimZeros(digits[:at]+"."+digits[at:])
}

// trimZeros drops zeros at the end of decimals, and the point with them.
func trimZeros(text string) string {
	if strings.Contains(text, ".") {
		text = strings.TrimRight(strings.TrimRight(text, "0"), ".")
	}
	return text
}

// fixed writes r with so many decimals, a half going away from zero, and zero
// without a sign.
func fixed(r *big.Rat, places int) string {
	text := r.FloatString(places)
	if strings.Trim(text, "-0.") == "" {
		text = strings.TrimPrefix(text, "-")
	}
	return text
}

// RoundHalfUp writes x with the given number of decimals, a half going away
// from zero, as radon results are reported (ANSI/AARST MAH 2019, 8.5.2(b): a
// mean of 3.95 is reported as 4.0). It works on decimals: text as it stands, a
// float64 by its first 12 significant digits, because the mean of 0.6 and 0.7
// is 0.6499999999999999 to the machine and 0.65 to everybody else. What is no
// number, or too large to be a measurement, comes back as it is, so that a
// report shows it.
func RoundHalfUp[T string | float64](x T, places int) string {
	if f, ok := any(x).(float64); ok && places >= 0 && places < siDigits {
		if whole, decided := nearest(f, places); decided && whole < 1e5 {
			if f < 0 {
				whole = -whole
			}
			return strconv.FormatFloat(whole/math.Pow10(places)+0, 'f', places, 64) // no minus zero
		}
	}
	r, err := exactly(x)
	if err != nil {
		return fmt.Sprint(x)
	}
	return fixed(r, max(places, 0))
}

// exactly is the number that x stands for: decimal text as it is, a float64
// rounded to derivedDigits significant digits.
func exactly[T string | float64](x T) (*big.Rat, error) {
	text := fmt.Sprint(x)
	if f, ok := any(x).(float64); ok {
		if math.Abs(f) < math.Ldexp(1, -maxBits) {
			f = 0
		}
		text = strconv.FormatFloat(f, 'e', derivedDigits-1, 64)
	}
	if len(text) > maxText {
		return nil, errLong
	}
	value, rest, err := scanNumber(text)
	if err == nil && rest != "" {
		err = errAfter(rest)
	}
	return value, err
}
