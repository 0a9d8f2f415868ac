package derive

import "github.com/slablint/slablint/internal/place"

// A spot is a place of the record: a name or an index below another. Nil is the
// record itself. The pointer that it stands for is put together when somebody
// reads it, which is seldom.
type spot struct {
	above *spot
	key   string
}

// is reports whether two spots are one place.
func (s *spot) is(other *spot) bool {
	for s != other {
		if s == nil || other == nil || s.key != other.key {
			return false
		}
		s, other = s.above, other.above
	}
	return true
}

// pointer writes the spot out. Keys are names of the record's schema and
// indexes, which need no escapes.
func (s *spot) pointer() place.Pointer {
	var scratch [128]byte
	return place.Pointer(s.append(scratch[:0]))
}

func (s *spot) append(b []byte) []byte {
	if s == nil || s.key == "" {
		return b
	}
	return append(append(s.above.append(b), '/'), s.key...)
}
