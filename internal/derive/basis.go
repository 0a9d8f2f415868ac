package derive

// A basis is what a value rests on: the places read and the defaults taken, or
// the places that keep it from being known. The first place is the one that
// findings about the value stand at. It is shared and never changed.
type basis struct {
	inputs  []*spot
	assumed assumptions
	lacks   []*spot // not empty when the value is not known
	why     string  // why what is recorded there cannot be used

	mem *memory // that it was taken from, nil when from none
}

// nothing rests on nothing.
var nothing = &basis{}

// reading rests on places of the record.
func reading(at ...*spot) *basis { return &basis{inputs: at} }

// refused is not known although recorded: the places hold what cannot be, or
// what cannot be worked with.
func refused(why string, at ...*spot) *basis { return &basis{lacks: at, why: why} }

// refuse is not known because what b rests on gave an error.
func (b *basis) refuse(err error) *basis {
	if len(b.inputs) == 0 {
		return refused(err.Error(), nil)
	}
	return &basis{lacks: b.inputs, why: err.Error()}
}

func (b *basis) known() bool { return len(b.lacks) == 0 }

func (b *basis) isNothing() bool { return len(b.inputs) == 0 && len(b.lacks) == 0 && b.assumed == 0 }

// without is what keeps b from being known, and nothing else.
func (b *basis) without() *basis { return &basis{lacks: b.lacks, why: b.why} }

// join rests on several at once. The order is that of the arguments; what is
// named twice is kept once.
func join(parts ...*basis) *basis {
	all := nothing
	for _, b := range parts {
		switch {
		case b == all || b.isNothing():
		case all == nothing:
			all = b
		default:
			all = all.and(b)
		}
	}
	return all
}

// and rests on two, which may be one of them.
func (b *basis) and(other *basis) *basis {
	mem := b.mem
	if mem == nil {
		mem = other.mem
	}
	inputs, lacks := mem.union(b.inputs, other.inputs), mem.union(b.lacks, other.lacks)
	if len(inputs) == len(b.inputs) && len(lacks) == len(b.lacks) && b.assumed|other.assumed == b.assumed {
		return b
	}
	both := mem.basis()
	both.inputs, both.lacks, both.assumed, both.why = inputs, lacks, b.assumed|other.assumed, b.why
	if both.why == "" {
		both.why = other.why
	}
	return both
}

// demand is join without the places read, for what names them by the list that
// they stand in.
func demand(parts ...*basis) *basis {
	all := nothing
	for _, b := range parts {
		if !b.known() || b.assumed&^all.assumed != 0 {
			all = all.and(&basis{lacks: b.lacks, assumed: b.assumed, why: b.why, mem: b.mem})
		}
	}
	return all
}
