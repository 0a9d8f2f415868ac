package derive

import (
	"strings"

	"github.com/slablint/slablint/internal/place"
)

// memory hands out the many small things that a document is made of from a few
// large pieces, which spares two allocations of five. All of them live as long as
// the document does.
type memory struct {
	text   strings.Builder
	bases  []basis
	places []any
}

const (
	textPiece  = 8 << 10 // bytes
	basisPiece = 128
	placePiece = 512
)

// pointer is a pointer and a key below it.
func (m *memory) pointer(above place.Pointer, key string) place.Pointer {
	if m == nil {
		return above + "/" + place.Pointer(key)
	}
	if m.text.Len()+len(above)+len(key)+1 > m.text.Cap() {
		m.text = strings.Builder{}
		m.text.Grow(max(textPiece, len(above)+len(key)+1))
	}
	from := m.text.Len()
	m.text.WriteString(string(above))
	m.text.WriteByte('/')
	m.text.WriteString(key)
	return place.Pointer(m.text.String()[from:])
}

// basis is an empty basis.
func (m *memory) basis() *basis {
	if m == nil {
		return new(basis)
	}
	if len(m.bases) == cap(m.bases) {
		m.bases = make([]basis, 0, basisPiece)
	}
	m.bases = m.bases[:len(m.bases)+1]
	b := &m.bases[len(m.bases)-1]
	b.mem = m
	return b
}

// list is an empty list with room for n.
func (m *memory) list(n int) []any {
	if m == nil || n > placePiece/4 {
		return make([]any, 0, n)
	}
	if cap(m.places)-len(m.places) < n {
		m.places = make([]any, 0, placePiece)
	}
	from := len(m.places)
	m.places = m.places[:from+n]
	return m.places[from : from : from+n]
}

// lacking is not known because one place holds nothing.
func (m *memory) lacking(at place.Pointer) *basis {
	b := m.basis()
	b.lacks = append(m.list(1), string(at))
	return b
}

// reading rests on one place.
func (m *memory) reading(at place.Pointer) *basis {
	b := m.basis()
	b.inputs = append(m.list(1), string(at))
	return b
}
