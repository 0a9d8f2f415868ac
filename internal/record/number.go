package record

import (
	"errors"
	"fmt"
	"strconv"
	"strings"
)

// longestNumber is how many characters a number may have. Programs further on
// calculate exactly, and a number of a million digits would keep them busy;
// RFC 8259 section 6 leaves such bounds to the reader.
const longestNumber = 64

// checkRange refuses a number that a 64-bit binary floating-point number
// cannot hold; number is one by the grammar of JSON.
func checkRange(number string) (problem string) {
	if len(number) > longestNumber {
		return fmt.Sprintf("found a number of %s characters; at most %d are read", grouped(len(number)), longestNumber)
	}
	mantissa, _, hasExponent := strings.Cut(strings.ToLower(number), "e")
	if !hasExponent {
		return ""
	}
	f, err := strconv.ParseFloat(number, 64)
	switch {
	case err != nil:
		return fmt.Sprintf("found %s, which is beyond the largest number that is read, about 1.8e308", number)
	case f == 0 && strings.ContainsAny(mantissa, "123456789"):
		return fmt.Sprintf("found %s, which is nearer to zero than the smallest number that is read, about 4.9e-324", number)
	}
	return ""
}

// plainScalar reads unquoted YAML text by the core schema of YAML 1.2.2
// section 10.3.2, with these decisions: numbers that people and parsers read
// in two ways (012, 0x1F, 0o17) and those JSON cannot write (.inf, .nan) are
// refused; +5, .5 and 5. become 5, 0.5 and 5. Everything else is a string, and
// so are yes, no, on, off, 1_000, 190:20:30 and dates.
func plainScalar(text string) (kind Kind, value, problem string) {
	switch text {
	case "", "~", "null", "Null", "NULL":
		return Null, "", ""
	case "true", "True", "TRUE":
		return Bool, "true", ""
	case "false", "False", "FALSE":
		return Bool, "false", ""
	}
	switch c := text[0]; {
	case c >= '0' && c <= '9', c == '+', c == '-', c == '.':
		return plainNumber(text)
	}
	return String, text, ""
}

// plainNumber reads text that starts like a number but may be a string.
func plainNumber(text string) (kind Kind, value, problem string) {
	sign, rest := "", text
	switch text[0] {
	case '-':
		sign, rest = "-", text[1:]
	case '+':
		rest = text[1:]
	default:
		if decimal := otherBase(text); decimal != "" {
			return Number, "", fmt.Sprintf("found %s, which YAML reads as %s; write that, or put it in quotes if it is a code",
				shorten(text), decimal)
		}
	}
	switch rest {
	case ".inf", ".Inf", ".INF":
		return Number, "", fmt.Sprintf("found %s (infinity); expected a finite number, or quotes around text", text)
	case ".nan", ".NaN", ".NAN":
		if rest == text {
			return Number, "", fmt.Sprintf("found %s (not a number); leave out what is not known, or put text in quotes", text)
		}
	}

	whole, rest := cutDigits(rest)
	point := strings.HasPrefix(rest, ".")
	fraction := ""
	if point {
		fraction, rest = cutDigits(rest[1:])
	}
	if whole == "" && fraction == "" || !isExponent(rest) {
		return String, text, ""
	}
	zeros := len(whole) > 1 && whole[0] == '0'
	if !zeros && whole != "" && (fraction != "" || !point) && text[0] != '+' {
		return Number, text, checkRange(text) // as JSON writes it
	}
	if whole = strings.TrimLeft(whole, "0"); whole == "" {
		whole = "0"
	}
	value = sign + whole + rest
	if fraction != "" {
		value = sign + whole + "." + fraction + rest
	}
	if zeros {
		return Number, "", fmt.Sprintf(
			"found %s, which starts with a zero and may be read as an octal number; write %s, or put it in quotes if it is a code",
			shorten(text), shorten(value))
	}
	return Number, value, checkRange(value)
}

// otherBase gives the decimal form of 0x1F or 0o17, and "" for other text.
func otherBase(text string) string {
	base := 0
	switch {
	case strings.HasPrefix(text, "0x"):
		base = 16
	case strings.HasPrefix(text, "0o"):
		base = 8
	default:
		return ""
	}
	n, err := strconv.ParseUint(text[2:], base, 64)
	switch {
	case errors.Is(err, strconv.ErrRange):
		return "a number of another base"
	case err != nil:
		return ""
	}
	return strconv.FormatUint(n, 10)
}

func cutDigits(s string) (digits, rest string) {
	i := 0
	for i < len(s) && s[i] >= '0' && s[i] <= '9' {
		i++
	}
	return s[:i], s[i:]
}

// isExponent accepts what may follow the digits of a number: nothing, or e,
// a sign and digits.
func isExponent(s string) bool {
	if s == "" {
		return true
	}
	if s[0] != 'e' && s[0] != 'E' {
		return false
	}
	s = s[1:]
	if s != "" && (s[0] == '+' || s[0] == '-') {
		s = s[1:]
	}
	digits, rest := cutDigits(s)
	return digits != "" && rest == ""
}
