package derive

import "github.com/slablint/slablint/internal/place"

// A spot is a place of the record: a name or an index below another, which is
// told by its index in the memory. The pointer that it stands for is put together
// when somebody reads it, which is seldom.
type spot struct {
	key   string
	above int
}

// theRecord is the spot that stands for the record itself.
const theRecord = 0

// same reports whether two spots are one place.
func (m *memory) same(a, b int) bool {
	for a != b {
		if a == theRecord || b == theRecord || m.spots[a].key != m.spots[b].key {
			return false
		}
		a, b = m.spots[a].above, m.spots[b].above
	}
	return true
}

// pointer writes a spot out. Keys are names of the record's schema and indexes,
// which need no escapes.
func (m *memory) pointer(at int) place.Pointer {
	var scratch [128]byte
	return place.Pointer(m.appendSpot(scratch[:0], at))
}

func (m *memory) appendSpot(b []byte, at int) []byte {
	if at == theRecord {
		return b
	}
	s := m.spots[at]
	return append(append(m.appendSpot(b, s.above), '/'), s.key...)
}
