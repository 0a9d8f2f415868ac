package quantity

import (
	"errors"
	"math/big"
	"strconv"
	"strings"
	"unicode/utf8"
)

// eighths are the fractions that have a character of their own.
var eighths = map[rune]int64{'⅛': 1, '¼': 2, '⅜': 3, '½': 4, '⅝': 5, '¾': 6, '⅞': 7}

var (
	errNoNumber = errors.New("it does not start with a number")
	errComma    = errors.New("a comma is read only between groups of three digits, as in 2,500; for a decimal write a point, as in 3.5")
	errPoint    = errors.New("a decimal point comes once and has a digit behind it")
	errFraction = errors.New("a fraction is written as in 1/8 or 3-1/2, with at most four digits on either side")
	errExponent = errors.New("the exponent is beyond 30, too far for a measurement")
)

// scanNumber reads a number at the start of s and returns what follows it. A
// number is a sign, then digits with or without thousands groups, decimals, a
// power of ten or a fraction.
func scanNumber(s string) (value *big.Rat, rest string, err error) {
	negative, s := cutSign(s)
	value, rest, err = scanUnsigned(s)
	if negative && err == nil {
		value.Neg(value)
	}
	return value, rest, err
}

// cutSign takes a sign off the start of s.
func cutSign(s string) (negative bool, rest string) {
	for _, minus := range [...]string{"-", "−"} {
		if rest, ok := strings.CutPrefix(s, minus); ok {
			return true, rest
		}
	}
	return false, strings.TrimPrefix(s, "+")
}

func scanUnsigned(s string) (value *big.Rat, rest string, err error) {
	whole, rest, err := scanWhole(s)
	if err != nil {
		return nil, "", err
	}
	decimals := ""
	if hasByte(rest, 0, '.') {
		n := countDigits(rest[1:])
		decimals, rest = rest[1:1+n], rest[1+n:]
		switch {
		case n == 0 || hasByte(rest, 0, '.'):
			return nil, "", errPoint
		case hasByte(rest, 0, ','):
			return nil, "", errComma
		}
	}
	exponent := ""
	if whole+decimals != "" {
		exponent, rest, err = scanExponent(rest)
	}
	switch {
	case err != nil:
		return nil, "", err
	case decimals == "" && exponent == "":
		return scanFraction(whole, rest)
	}
	return decimal(whole, decimals, exponent), rest, nil
}

// scanWhole reads the digits before the point, if any, and takes the commas out.
func scanWhole(s string) (whole, rest string, err error) {
	n := countDigits(s)
	whole, rest = s[:n], s[n:]
	if hasByte(rest, 0, ',') && (n == 0 || n > 3 || s[0] == '0') {
		return "", "", errComma
	}
	for hasByte(rest, 0, ',') {
		if countDigits(rest[1:]) != 3 {
			return "", "", errComma
		}
		whole, rest = whole+rest[1:4], rest[4:]
	}
	return whole, rest, nil
}

// scanExponent reads a power of ten such as e5 or E-3, if there is one.
func scanExponent(s string) (exponent, rest string, err error) {
	if !hasByte(s, 0, 'e') && !hasByte(s, 0, 'E') {
		return "", s, nil
	}
	sign := 1
	if hasByte(s, 1, '+') || hasByte(s, 1, '-') {
		sign = 2
	}
	end := sign + countDigits(s[sign:])
	if end == sign {
		return "", s, nil
	}
	if n, err := strconv.Atoi(s[sign:end]); err != nil || n > 30 {
		return "", "", errExponent
	}
	return s[1:end], s[end:], nil
}

// decimal puts a number together from its digits.
func decimal(whole, decimals, exponent string) *big.Rat {
	if len(whole)+len(decimals) <= 18 && exponent == "" { // nearly always
		m, scale := int64(0), int64(1)
		for _, c := range []byte(whole) {
			m = m*10 + int64(c-'0')
		}
		for _, c := range []byte(decimals) {
			m, scale = m*10+int64(c-'0'), scale*10
		}
		if scale == 1 {
			return new(big.Rat).SetInt64(m)
		}
		return big.NewRat(m, scale)
	}
	if exponent == "" {
		exponent = "0"
	}
	value, _ := new(big.Rat).SetString("0" + whole + "." + decimals + "e" + exponent)
	return value
}

// scanFraction completes the number that starts with the digits in whole, where
// s is what follows: 1/8, 3-1/2, 3 1/2, 3½ or just 3.
func scanFraction(whole, s string) (value *big.Rat, rest string, err error) {
	if hasByte(s, 0, '/') && countDigits(s[1:]) > 0 {
		if value, rest, ok := divide(whole + s); ok {
			return value, rest, nil
		}
		return nil, "", errFraction
	}
	tail := strings.TrimLeft(s, " ")
	if hasByte(s, 0, '-') && whole != "" {
		tail = s[1:]
	}
	part, rest, ok := divide(tail)
	switch {
	case ok && part.Cmp(one) < 0:
		return part.Add(part, decimal(whole, "", "")), rest, nil
	case ok:
		return nil, "", errFraction
	case whole == "":
		return nil, "", errNoNumber
	}
	return decimal(whole, "", ""), s, nil
}

// divide reads the fraction that s starts with, if it does.
func divide(s string) (value *big.Rat, rest string, ok bool) {
	r, size := utf8.DecodeRuneInString(s)
	if n := eighths[r]; n > 0 {
		return big.NewRat(n, 8), s[size:], true
	}
	i := countDigits(s)
	if i == 0 || i > 4 || !hasByte(s, i, '/') {
		return nil, s, false
	}
	j := i + 1 + countDigits(s[i+1:])
	under := decimal(s[i+1:j], "", "")
	if j == i+1 || j > i+5 || under.Sign() == 0 {
		return nil, s, false
	}
	value = decimal(s[:i], "", "")
	return value.Quo(value, under), s[j:], true
}

func countDigits(s string) int {
	n := 0
	for n < len(s) && '0' <= s[n] && s[n] <= '9' {
		n++
	}
	return n
}

func hasByte(s string, i int, c byte) bool { return i < len(s) && s[i] == c }
