package derive

import (
	"io/fs"

	"github.com/slablint/slablint/internal/airflow"
	"github.com/slablint/slablint/internal/record"
)

// A Workspace derives one record after another in the same memory, which saves
// most of the work of asking for it. What it returned for one record is gone
// when it is given the next. The zero Workspace is ready for use, by one
// goroutine at a time.
type Workspace struct{ mem memory }

// Derive is the function of that name, except that the document lasts only until
// the next call.
func (w *Workspace) Derive(input map[string]any, files fs.FS) record.Members {
	w.mem.empty()
	return derive(&w.mem, input, files)
}

// memory holds the many small things that a document is made of in a few large
// lists. All of them live as long as the document does.
type memory struct {
	spots  []spot
	groups []group
	parts  []ref
	words  []string
	used   assumptions // by all values

	values  store[value]
	members store[member]
	entries store[entry]
	lists   store[any]

	systems  store[system]
	points   store[suctionPoint]
	segments store[segment]
	fittings store[airflow.Fitting]
	pieces   store[airflow.Segment]
	branches store[airflow.Branch]
	nodes    store[node]
	bases    []basis // for one list after another
	tests    store[test]
	probes   store[probe]
	holes    store[hole]
}

// empty forgets what it held. The first spot is the record itself, the first
// group nothing.
func (m *memory) empty() {
	if m.spots == nil { // room for what most records ask for, in sizes that the runtime hands out
		m.spots, m.groups, m.parts = make([]spot, 0, 510), make([]group, 0, 384), make([]ref, 0, 1024)
	}
	m.spots, m.groups = append(m.spots[:0], spot{}), append(m.groups[:0], group{})
	m.parts, m.words, m.used = m.parts[:0], m.words[:0], 0
	m.values.empty()
	m.members.empty()
	m.entries.empty()
	m.lists.empty()
	m.systems.empty()
	m.points.empty()
	m.segments.empty()
	m.fittings.empty()
	m.pieces.empty()
	m.branches.empty()
	m.nodes.empty()
	m.tests.empty()
	m.probes.empty()
	m.holes.empty()
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
	listPiece   = 64
)

// A store hands out room for things of one kind, from pieces. When it is emptied,
// one piece with room for as many takes the place of several.
type store[T any] struct {
	piece []T
	full  int // how many lie in pieces that are used up
}

// room is an empty list with room for n, in a piece for at least as many as size.
// What it is extended by without being written is left from another record.
func (s *store[T]) room(size, n int) []T {
	from := len(s.piece)
	if cap(s.piece)-from < n {
		s.full += from
		s.piece, from = make([]T, 0, max(size, n)), 0
	}
	s.piece = s.piece[:from+n]
	return s.piece[from : from : from+n]
}

// several is n of them, all zero.
func (s *store[T]) several(n int) []*T {
	list := s.room(0, n)[:n]
	clear(list)
	all := make([]*T, n)
	for i := range list {
		all[i] = &list[i]
	}
	return all
}

func (s *store[T]) empty() {
	if s.full > 0 {
		s.piece, s.full = make([]T, 0, s.full+len(s.piece)), 0
	}
	s.piece = s.piece[:0]
}
