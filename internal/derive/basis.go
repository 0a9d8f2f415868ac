package derive

import "slices"

// A basis is what a value rests on: the places read and the defaults taken, or
// the places that keep it from being known. It is put together from others and
// never changed; which places those are together is worked out when somebody
// asks, which is seldom. The zero basis rests on nothing.
type basis struct {
	mem     *memory     // that rests lies in
	rests   ref         // on what, besides defaults
	assumed assumptions // by all parts
	unknown bool        // something keeps the value from being known
}

var nothing basis

// A ref says where in the memory it stands what a basis rests on: a place that
// was read, a place that holds nothing, or a group of others. Zero is nothing.
// Numbers stand here for pointers because there are many of them, and each
// pointer costs the collector of memory a look.
type ref uint32

// The low bits of a ref say which list it is an index of.
const (
	toGroup ref = iota
	toRead
	toLack
	tagBits = 2
)

func (r ref) tag() ref   { return r & (1<<tagBits - 1) }
func (r ref) index() int { return int(r >> tagBits) }

func refTo(index int, tag ref) ref { return ref(index)<<tagBits | tag }

// A group is several bases together.
type group struct {
	kind       kind
	unknown    bool
	words      uint32 // of a refusal why
	from, past uint32 // its parts
}

// kind is what a group says of its parts.
type kind uint8

const (
	several kind = iota // it rests on all of them
	refusal             // what they read cannot be, or cannot be worked with
	need                // it needs them, but does not name what they read
)

// refused is not known although recorded: the places hold what cannot be, or
// what cannot be worked with.
func refused(why string, at ...node) basis {
	mem := at[0].mem
	var scratch [2]ref
	parts := scratch[:0]
	for _, n := range at {
		parts = append(parts, n.read().rests)
	}
	return mem.refusal(why, parts...)
}

// refuse is not known because what b rests on gave an error. Of nothing but
// defaults there is no place to name.
func (b basis) refuse(err error) basis {
	if b.mem == nil {
		b.unknown = true
		return b
	}
	return b.mem.refusal(err.Error(), b.rests)
}

func (m *memory) refusal(why string, parts ...ref) basis {
	m.words = append(m.words, why)
	all := group{kind: refusal, unknown: true, words: uint32(len(m.words) - 1)}
	return basis{mem: m, rests: m.grouped(all, parts...), unknown: true}
}

func (b basis) known() bool { return !b.unknown }

// without is what keeps b from being known, and nothing else.
func (b basis) without() basis {
	if b.known() || b.mem == nil {
		return basis{unknown: b.unknown}
	}
	return basis{mem: b.mem, rests: b.mem.grouped(group{kind: need, unknown: true}, b.rests), unknown: true}
}

// join rests on several at once. The order is that of the arguments; what is
// named twice counts once.
func join(parts ...basis) basis {
	var all basis
	filled := 0
	for i := range parts {
		b := &parts[i]
		all.assumed |= b.assumed
		all.unknown = all.unknown || b.unknown
		if b.rests == 0 || b.rests == all.rests {
			continue
		}
		if filled++; filled == 1 {
			all.mem, all.rests = b.mem, b.rests
		}
	}
	if filled < 2 {
		return all
	}
	m, first := all.mem, all.rests
	all.rests = m.grouped(group{kind: several, unknown: all.unknown}, first)
	for i := range parts {
		if r := parts[i].rests; r != 0 && r != first {
			m.add(r)
		}
	}
	return all
}

// demand is join without the places read, for what names them by the list that
// they stand in.
func demand(parts ...basis) basis {
	if !slices.ContainsFunc(parts, func(b basis) bool { return b.unknown }) {
		var all basis
		for _, b := range parts {
			all.assumed |= b.assumed
		}
		return all
	}
	all := join(parts...)
	needed := all.without()
	needed.assumed = all.assumed
	return needed
}

// inputs are the places read, as indexes of spots. The first is the one that
// findings about the value stand at.
func (b basis) inputs() []int {
	s := search{mem: b.mem}
	s.inputs(b.rests)
	return s.found
}

// first is the first of the inputs, whether there is one.
func (b basis) first() (spot int, ok bool) {
	s := search{mem: b.mem}
	return s.first(b.rests)
}

// lacks are the places that keep the value from being known; none when it is.
func (b basis) lacks() []int {
	if b.known() {
		return nil
	}
	s := search{mem: b.mem}
	s.lacks(b.rests)
	if len(s.found) == 0 {
		s.found = append(s.found, theRecord)
	}
	return s.found
}

// why is why what is recorded at these places cannot be used, "" where nothing
// is.
func (b basis) why() string {
	s := search{mem: b.mem}
	return s.why(b.rests)
}

// search goes through the parts of a basis in their order, each once, and
// collects places, each once.
type search struct {
	mem     *memory
	found   []int // indexes of spots
	visited []ref
}

func (s *search) why(r ref) string {
	g := s.groupAt(r)
	switch {
	case g == nil || !g.unknown:
		return ""
	case g.kind == refusal:
		return s.mem.words[g.words]
	}
	for _, part := range s.partsOf(r, g) {
		if why := s.why(part); why != "" {
			return why
		}
	}
	return ""
}

func (s *search) first(r ref) (spot int, ok bool) {
	if r.tag() == toRead {
		return r.index(), true
	}
	if g := s.groupAt(r); g != nil && g.kind == several {
		for _, part := range s.mem.partsOf(g) {
			if spot, ok = s.first(part); ok {
				break
			}
		}
	}
	return spot, ok
}

func (s *search) inputs(r ref) {
	if r.tag() == toRead {
		s.add(r.index())
	}
	if g := s.groupAt(r); g != nil && g.kind == several {
		for _, part := range s.partsOf(r, g) {
			s.inputs(part)
		}
	}
}

func (s *search) lacks(r ref) {
	if r.tag() == toLack {
		s.add(r.index())
	}
	switch g := s.groupAt(r); {
	case g == nil || !g.unknown:
	case g.kind == refusal:
		wrong := search{mem: s.mem}
		for _, part := range s.mem.partsOf(g) {
			wrong.inputs(part)
		}
		if len(wrong.found) == 0 {
			s.add(theRecord)
		}
		for _, at := range wrong.found {
			s.add(at)
		}
	default:
		for _, part := range s.partsOf(r, g) {
			s.lacks(part)
		}
	}
}

// groupAt is the group that a ref points to, nil when it points to none.
func (s *search) groupAt(r ref) *group {
	if r == 0 || r.tag() != toGroup {
		return nil
	}
	return &s.mem.groups[r.index()]
}

// partsOf is the parts of a group when it is met for the first time.
func (s *search) partsOf(r ref, g *group) []ref {
	if slices.Contains(s.visited, r) {
		return nil
	}
	s.visited = append(s.visited, r)
	return s.mem.partsOf(g)
}

func (s *search) add(spot int) {
	if !slices.ContainsFunc(s.found, func(known int) bool { return s.mem.same(known, spot) }) {
		s.found = append(s.found, spot)
	}
}

// pointers is places as a document has them.
func (m *memory) pointers(spots []int) []any {
	list := make([]any, len(spots))
	for i, at := range spots {
		list[i] = string(m.pointer(at))
	}
	return list
}
