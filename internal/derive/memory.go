package derive

// memory hands out the many small things that a document is made of from a few
// large pieces. All of them live as long as the document does.
type memory struct {
	spots   []spot
	bases   []basis
	parts   []*basis
	values  []value
	members []member
	entries []entry
}

// How many of each are asked for at once: about 4 kB, and one short of a round
// number, as the runtime adds a word to what holds pointers.
const (
	spotPiece   = 127
	basisPiece  = 63
	partPiece   = 255
	valuePiece  = 63
	memberPiece = 127
	entryPiece  = 31
)

// take is the next of a piece, which is filled anew when it is used up.
func take[T any](piece *[]T, size int) *T {
	if len(*piece) == cap(*piece) {
		*piece = make([]T, 0, size)
	}
	*piece = (*piece)[:len(*piece)+1]
	return &(*piece)[len(*piece)-1]
}

// room is an empty list with room for n.
func room[T any](piece *[]T, size, n int) []T {
	if cap(*piece)-len(*piece) < n {
		if n > size/4 {
			return make([]T, 0, n)
		}
		*piece = make([]T, 0, size)
	}
	from := len(*piece)
	*piece = (*piece)[:from+n]
	return (*piece)[from : from : from+n]
}

// spot is a place below another.
func (m *memory) spot(above *spot, key string) *spot {
	if m == nil {
		return &spot{above, key}
	}
	s := take(&m.spots, spotPiece)
	*s = spot{above, key}
	return s
}

// basis is an empty basis.
func (m *memory) basis() *basis {
	if m == nil {
		return new(basis)
	}
	b := take(&m.bases, basisPiece)
	b.mem = m
	return b
}

// list is an empty list of bases with room for n.
func (m *memory) list(n int) []*basis {
	if m == nil {
		return make([]*basis, 0, n)
	}
	return room(&m.parts, partPiece, n)
}
