package derive

import "slices"

// An entry is a part of the document with members of its own.
type entry struct{ members []member }

type member struct {
	name  string
	value any // a *spot stands for its pointer, a function for what it gives
}

// entry is a part of the document with room for so many members.
func (d *deriver) entry(size int) *entry {
	e := take(&d.record.mem.entries, entryPiece)
	e.members = room(&d.record.mem.members, memberPiece, size)
	return e
}

// about is the start of what is said of one subject, with room for so many
// members.
func (d *deriver) about(n node, size int) *entry {
	e := d.entry(size)
	e.set("id", n.name())
	e.set("at", n.at())
	return e
}

// set adds a member.
func (e *entry) set(name string, value any) {
	e.members = append(e.members, member{name, value})
}

// Len is the number of members.
func (e *entry) Len() int { return len(e.members) }

// Name is the name of a member.
func (e *entry) Name(i int) string { return e.members[i].name }

// Get is a member by its name.
func (e *entry) Get(name string) any {
	i := slices.IndexFunc(e.members, func(m member) bool { return m.name == name })
	if i < 0 {
		return nil
	}
	switch v := e.members[i].value.(type) {
	case *spot:
		return string(v.pointer())
	case func() []any:
		return v()
	default:
		return v
	}
}
