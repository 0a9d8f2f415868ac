package derive

// memory holds the many small things that a document is made of in a few large
// lists. All of them live as long as the document does.
type memory struct {
	spots  []spot
	groups []group
	parts  []ref
	words  []string
	used   assumptions // by all values

	values  []value
	members []member
	entries []entry
}

// newMemory has room for what most records ask for, in pieces of the sizes that
// the runtime hands out. The first spot is the record itself, the first group
// nothing.
func newMemory() *memory {
	return &memory{
		spots:  make([]spot, 1, 510),
		groups: make([]group, 1, 384),
		parts:  make([]ref, 0, 1024),
	}
}

// spot is a place below another.
func (m *memory) spot(above int, key string) int {
	m.spots = append(m.spots, spot{key, above})
	return len(m.spots) - 1
}

// grouped starts a group, to which parts can be added until the next is started.
func (m *memory) grouped(g group, parts ...ref) ref {
	g.from = uint32(len(m.parts))
	m.parts = append(m.parts, parts...)
	g.past = uint32(len(m.parts))
	m.groups = append(m.groups, g)
	return refTo(len(m.groups)-1, toGroup)
}

// add is one more part of the last group.
func (m *memory) add(part ref) {
	m.parts = append(m.parts, part)
	m.groups[len(m.groups)-1].past++
}

func (m *memory) partsOf(g *group) []ref { return m.parts[g.from:g.past] }

// How many of each are asked for at once: what just fits a size of up to 4 kB that
// the runtime hands out.
const (
	valuePiece  = 46
	memberPiece = 127
	entryPiece  = 20
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
