package derive

import (
	"slices"

	"github.com/slablint/slablint/internal/place"
)

// A basis is what a value rests on: the places read and the defaults taken, or
// the places that keep it from being known. It is put together from others and
// never changed; which places those are together is worked out when somebody
// asks, which is seldom.
type basis struct {
	kind    kind
	unknown bool        // something keeps the value from being known
	assumed assumptions // by all parts
	above   *spot       // of a place: what it stands below, see node
	words   string      // of a place its name there, of a refusal why
	parts   []*basis
	mem     *memory // that it was taken from, nil when from none
}

// kind is what a basis says of its parts.
type kind uint8

const (
	several kind = iota // it rests on all of them
	read                // it has none: it is a place that was read
	lack                // it has none: it is a place that holds nothing
	refusal             // what they read cannot be, or cannot be worked with
	need                // it needs them, but does not name what they read
)

// nothing rests on nothing.
var nothing = &basis{}

// refused is not known although recorded: the places hold what cannot be, or
// what cannot be worked with.
func refused(why string, at ...node) *basis {
	b := &basis{kind: refusal, unknown: true, words: why}
	for _, n := range at {
		b.parts = append(b.parts, n.read())
	}
	return b
}

// refuse is not known because what b rests on gave an error.
func (b *basis) refuse(err error) *basis {
	return &basis{kind: refusal, unknown: true, words: err.Error(), parts: []*basis{b}}
}

func (b *basis) known() bool { return !b.unknown }

// without is what keeps b from being known, and nothing else.
func (b *basis) without() *basis { return &basis{kind: need, unknown: b.unknown, parts: []*basis{b}} }

// join rests on several at once. The order is that of the arguments; what is
// named twice counts once.
func join(parts ...*basis) *basis {
	first, filled := nothing, 0
	var mem *memory
	for _, b := range parts {
		if b == nothing || b == first {
			continue
		}
		if filled++; filled == 1 {
			first = b
		}
		if mem == nil {
			mem = b.mem
		}
	}
	if filled < 2 {
		return first
	}
	all := mem.basis()
	all.parts = mem.list(filled)
	for _, b := range parts {
		if b == nothing || b == first && len(all.parts) > 0 {
			continue
		}
		all.parts = append(all.parts, b)
		all.unknown = all.unknown || b.unknown
		all.assumed |= b.assumed
	}
	return all
}

// demand is join without the places read, for what names them by the list that
// they stand in.
func demand(parts ...*basis) *basis {
	some := func(b *basis) bool { return b.unknown || b.assumed != 0 }
	if !slices.ContainsFunc(parts, some) {
		return nothing
	}
	all := join(parts...)
	return &basis{kind: need, unknown: all.unknown, assumed: all.assumed, parts: []*basis{all}, mem: all.mem}
}

// inputs are the places read. The first is the one that findings about the value
// stand at.
func (b *basis) inputs() []*basis {
	var s search
	s.inputs(b)
	return s.found
}

// first is the first of the inputs, nil when there are none.
func (b *basis) first() *basis {
	if b.kind == read {
		return b
	}
	if b.kind != several {
		return nil
	}
	for _, part := range b.parts {
		if at := part.first(); at != nil {
			return at
		}
	}
	return nil
}

// lacks are the places that keep the value from being known; none when it is.
func (b *basis) lacks() []*basis {
	var s search
	s.lacks(b)
	return s.found
}

// why is why what is recorded at these places cannot be used, "" where nothing
// is.
func (b *basis) why() string { return new(search).why(b) }

// search goes through the parts of a basis in their order, each once, and
// collects places, each once.
type search struct {
	found   []*basis
	visited []*basis
}

func (s *search) why(b *basis) string {
	switch {
	case b.known():
		return ""
	case b.kind == refusal:
		return b.words
	}
	for _, part := range s.partsOf(b) {
		if why := s.why(part); why != "" {
			return why
		}
	}
	return ""
}

func (s *search) inputs(b *basis) {
	if b.kind == read {
		s.add(b)
	}
	if b.kind != several {
		return
	}
	for _, part := range s.partsOf(b) {
		s.inputs(part)
	}
}

func (s *search) lacks(b *basis) {
	switch {
	case b.known():
	case b.kind == lack:
		s.add(b)
	case b.kind == refusal:
		wrong := (&basis{parts: b.parts}).inputs()
		if len(wrong) == 0 {
			wrong = []*basis{{kind: read}} // the record as a whole
		}
		for _, at := range wrong {
			s.add(at)
		}
	default:
		for _, part := range s.partsOf(b) {
			s.lacks(part)
		}
	}
}

// partsOf is the parts of a basis when it is met for the first time.
func (s *search) partsOf(b *basis) []*basis {
	if slices.Contains(s.visited, b) {
		return nil
	}
	s.visited = append(s.visited, b)
	return b.parts
}

func (s *search) add(at *basis) {
	for _, known := range s.found {
		if known.words == at.words && known.above.is(at.above) {
			return
		}
	}
	s.found = append(s.found, at)
}

// pointer writes a place out.
func (b *basis) pointer() place.Pointer { return (&spot{b.above, b.words}).pointer() }

// pointers is places as a document has them.
func pointers(places []*basis) []any {
	list := make([]any, len(places))
	for i, at := range places {
		list[i] = string(at.pointer())
	}
	return list
}
