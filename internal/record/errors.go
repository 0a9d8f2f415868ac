package record

import (
	"fmt"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"github.com/slablint/slablint/internal/place"
)

// Error says why a record cannot be read: what was found, what was expected,
// and where.
type Error struct {
	Spot    place.Spot
	Message string
	cause   error
}

// Error starts with file:line:column so that editors jump there.
func (e *Error) Error() string {
	return e.Spot.String() + ": " + e.Message
}

// Unwrap is the failure of the stream itself, if that is what stopped reading.
func (e *Error) Unwrap() error { return e.cause }

func newError(file string, from, to pos, format string, args ...any) *Error {
	return &Error{Spot: spot(file, from, to), Message: fmt.Sprintf(format, args...)}
}

// placeOf counts lines and columns up to a byte offset. It starts from the top
// each time: for errors only.
func placeOf(text string, off int) pos {
	c := newCursor(text)
	c.advance(min(off, len(text)))
	return c.pos()
}

// longestQuote is how many runes of the record an error repeats.
const longestQuote = 40

func shorten(s string) string {
	n := 0
	for i := range s {
		if n == longestQuote {
			return s[:i] + "…"
		}
		n++
	}
	return s
}

// quote prints a text of the record so that it cannot disturb a terminal.
func quote(s string) string { return strconv.Quote(shorten(s)) }

// found names what stands at the start of rest.
func found(rest string) string {
	if rest == "" {
		return "the end of the file"
	}
	r, _ := utf8.DecodeRuneInString(rest)
	switch {
	case r == '\n', r == '\r':
		return "the end of the line"
	case r == '\t':
		return "a tab"
	case r == ' ':
		return "a space"
	case !unicode.IsPrint(r):
		return fmt.Sprintf("the invisible character %U", r)
	}
	return "'" + string(r) + "'"
}

// grouped prints a count with a comma before each three digits.
func grouped(n int) string {
	s := strconv.Itoa(n)
	var b strings.Builder
	for i, c := range []byte(s) {
		if i > 0 && (len(s)-i)%3 == 0 {
			b.WriteByte(',')
		}
		b.WriteByte(c)
	}
	return b.String()
}
