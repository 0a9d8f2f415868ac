package record

import (
	"strconv"
	"strings"
	"unicode/utf16"
	"unicode/utf8"
)

// word reads true, false or null.
func (r *jsonReader) word() (Kind, string, error) {
	rest := r.text[r.off:]
	end := 0
	for end < len(rest) && (rest[end]|0x20 >= 'a' && rest[end]|0x20 <= 'z') {
		end++
	}
	kind, text := Null, ""
	switch rest[:end] {
	case "true", "false":
		kind, text = Bool, rest[:end]
	case "null":
	case "":
		return Null, "", r.fail("found %s; expected a value%s", r.found(), advice(rest))
	default:
		return Null, "", r.fail("found %s; expected a value (text stands in double quotes)", shorten(rest[:end]))
	}
	r.off += end
	return kind, text, nil
}

// advice knows what people write where JSON wants something else.
func advice(rest string) string {
	switch {
	case strings.HasPrefix(rest, "'"):
		return " (text stands in double quotes)"
	case strings.HasPrefix(rest, "/"), strings.HasPrefix(rest, "#"):
		return " (JSON has no comments)"
	case strings.HasPrefix(rest, "."), strings.HasPrefix(rest, "+"):
		return " (a number begins with a digit or -)"
	}
	return ""
}

// number reads a number by the grammar of RFC 8259 section 6.
func (r *jsonReader) number() (string, error) {
	start, from := r.off, r.pos()
	if r.peek() == '-' {
		r.off++
	}
	zero := r.peek() == '0'
	if whole := r.digits(); whole == 0 {
		return "", r.fail("found %s; expected a digit after -", r.found())
	} else if zero && whole > 1 {
		return "", newError(r.file, from, r.pos(), "found %s; expected a number without leading zeros, or text in double quotes", shorten(r.text[start:r.off]))
	}
	if r.peek() == '.' {
		if r.off++; r.digits() == 0 {
			return "", r.fail("found %s; expected a digit after the decimal point", r.found())
		}
	}
	if c := r.peek(); c == 'e' || c == 'E' {
		r.off++
		if c := r.peek(); c == '+' || c == '-' {
			r.off++
		}
		if r.digits() == 0 {
			return "", r.fail("found %s; expected a digit of the exponent", r.found())
		}
	}
	text := r.text[start:r.off]
	if problem := checkRange(text); problem != "" {
		return "", newError(r.file, from, r.pos(), "%s", problem)
	}
	return text, nil
}

// digits skips digits and says how many there were.
func (r *jsonReader) digits() int {
	start := r.off
	for r.off < len(r.text) && r.text[r.off] >= '0' && r.text[r.off] <= '9' {
		r.off++
	}
	return r.off - start
}

// str reads the string whose opening quote is at the cursor.
func (r *jsonReader) str() (string, error) {
	r.off++
	start := r.off
	for ; r.off < len(r.text); r.off++ {
		switch c := r.text[r.off]; {
		case c == '"':
			r.off++
			return r.text[start : r.off-1], nil
		case c == '\\':
			return r.escaped(start)
		case c < ' ':
			return "", r.badInString()
		case c >= utf8.RuneSelf && !utf8.RuneStart(c):
			r.wide++
		}
	}
	return "", r.badInString()
}

// escaped reads on from the first escape of the string that began at start.
func (r *jsonReader) escaped(start int) (string, error) {
	out := append(make([]byte, 0, 2*(r.off-start)+16), r.text[start:r.off]...)
	for r.off < len(r.text) {
		c := r.text[r.off]
		switch {
		case c == '"':
			r.off++
			return string(out), nil
		case c < ' ':
			return "", r.badInString()
		case c == '\\':
			var err error
			if out, err = r.escape(out); err != nil {
				return "", err
			}
			continue
		case c >= utf8.RuneSelf && !utf8.RuneStart(c):
			r.wide++
		}
		out = append(out, c)
		r.off++
	}
	return "", r.badInString()
}

func (r *jsonReader) badInString() error {
	switch c := r.peek(); {
	case r.off == len(r.text), c == '\n', c == '\r':
		return r.fail(`found %s inside a string; expected the closing double quote`, r.found())
	case c == '\t':
		return r.fail(`found a tab inside a string; write \t`)
	default:
		return r.fail(`found the control character %U inside a string; write \u%04x`, c, c)
	}
}

// escape appends what the escape at the cursor stands for.
func (r *jsonReader) escape(out []byte) ([]byte, error) {
	rest := r.text[r.off:]
	if len(rest) < 2 {
		r.off++
		return nil, r.badInString()
	}
	i := strings.IndexByte(`"\/bfnrt`, rest[1])
	if i >= 0 {
		r.off += 2
		return append(out, "\"\\/\b\f\n\r\t"[i]), nil
	}
	if rest[1] != 'u' {
		return nil, r.fail(`found a backslash that begins no escape; write \\ for a backslash`)
	}
	unit, ok := hex4(rest)
	if !ok {
		return nil, r.fail(`found \u without four hexadecimal digits after it`)
	}
	if !utf16.IsSurrogate(unit) {
		r.off += 6
		return utf8.AppendRune(out, unit), nil
	}
	low, _ := hex4(rest[6:])
	if char := utf16.DecodeRune(unit, low); char != utf8.RuneError {
		r.off += 12
		return utf8.AppendRune(out, char), nil
	}
	return nil, r.fail(`found %s, which is half of a surrogate pair; expected both halves, or the character itself`, rest[:6])
}

// hex4 reads an escape like \u00e9.
func hex4(s string) (rune, bool) {
	if len(s) < 6 || s[:2] != `\u` {
		return 0, false
	}
	n, err := strconv.ParseUint(s[2:6], 16, 16)
	return rune(n), err == nil
}
