package derive

// An entry is a part of the document with members of its own.
type entry struct{ members []member }

type member struct {
	name  string
	value any // a *spot stands for its pointer
}

// entry is a part of the document with room for so many members.
func (d *deriver) entry(size int) *entry {
	return &entry{room(&d.record.mem.members, memberPiece, size)}
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

// Member is a member by its index.
func (e *entry) Member(i int) any {
	if at, ok := e.members[i].value.(*spot); ok {
		return string(at.pointer())
	}
	return e.members[i].value
}

// Get is a member by its name.
func (e *entry) Get(name string) any {
	for i := range e.members {
		if e.members[i].name == name {
			return e.Member(i)
		}
	}
	return nil
}
