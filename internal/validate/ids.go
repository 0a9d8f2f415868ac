package validate

import (
	"fmt"

	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/record"
)

// anyID as a target of references allows every id of the record.
const anyID = "*"

// checkIDs finds ids that stand twice and references that lead to nothing;
// sound says that the schema allows the record.
func (v *Validator) checkIDs(doc *record.Document, sound bool) []mistake {
	x := index{
		doc:     doc,
		sound:   sound,
		entries: make(map[string]*entry),
		unread:  make(map[string]bool),
		lacking: make(map[place.Pointer]bool),
	}
	x.collect(doc.Root, v.root, place.Root)
	for _, r := range x.references {
		x.resolve(r)
	}
	return x.mistakes
}

// entry is an element of a list that others can refer to.
type entry struct {
	id    *record.Node
	list  place.Pointer
	twice bool
}

type reference struct {
	node *record.Node
	at   place.Pointer
	to   place.Pointer // a pattern of a list, or anyID
}

// index is what is known about the ids of one record.
type index struct {
	doc        *record.Document
	sound      bool
	entries    map[string]*entry
	ids        []string // in the order written
	references []reference
	mistakes   []mistake

	// What the schema refuses may hide an id. A reference that could mean such
	// a one is not called wrong: that the id cannot be read is told already.
	unread  map[string]bool        // texts in such parts of the record
	lacking map[place.Pointer]bool // lists, and what lists stand in, with ids that cannot be read
}

func (x *index) collect(n *record.Node, s *shape, at place.Pointer) {
	if s == nil || n.Kind() != record.Null && !s.Type.allows(n.Kind()) {
		x.skip(n)
		if s != nil && s.holdsIDs {
			x.lacking[at] = true
		}
		return
	}
	switch n.Kind() {
	case record.String:
		if s.Refers != "" && accepts(n, s) {
			x.references = append(x.references, reference{n, at, place.Pointer(s.Refers)})
		}
	case record.Object:
		for _, name := range s.Required {
			if s.Properties[name].holdsIDs && !isRecorded(n.Get(name)) {
				x.lacking[at.Append(name)] = true
			}
		}
		for i := range n.Len() {
			m := n.Item(i)
			known := s.Properties[m.Key()]
			if x.sound && !known.holdsIDs && !known.namesIDs {
				continue // before its pointer is made, which takes longer
			}
			x.collect(m, known, at.Append(m.Key()))
		}
	case record.Array:
		for i := range n.Len() {
			if s.isSubjects() {
				x.enter(n.Item(i), s.Items, at)
			}
			x.collect(n.Item(i), s.Items, at.Append(i))
		}
	}
}

// skip remembers the texts of a part that is not understood.
func (x *index) skip(n *record.Node) {
	for i := range n.Len() {
		x.skip(n.Item(i))
	}
	x.unread[n.Text()] = true
}

// enter takes up the id of one element of a list.
func (x *index) enter(n *record.Node, s *shape, list place.Pointer) {
	id := n.Get("id")
	if id == nil || !accepts(id, s.Properties["id"]) {
		x.lacking[list] = true
		return
	}
	first := x.entries[id.Text()]
	if first == nil {
		x.entries[id.Text()] = &entry{id: id, list: list}
		x.ids = append(x.ids, id.Text())
		return
	}
	first.twice = true
	x.lacking[list], x.lacking[first.list] = true, true // one of them has lost its own
	spot := id.Spot(x.doc.Name)
	x.mistakes = append(x.mistakes, mistake{spot, list, "twice", func() string {
		one := first.id.Spot(x.doc.Name)
		return fmt.Sprintf("%s: found the id %q on line %d and again on line %d; give each entry of the record an id of its own",
			where(x.doc, list), id.Text(), one.Line, spot.Line)
	}})
}

func (x *index) resolve(r reference) {
	e := x.entries[r.node.Text()]
	if e != nil && (r.to == anyID || e.twice) {
		return
	}
	target := r.to
	if target != anyID {
		target = bind(target, r.at)
	}
	if e != nil && e.list == target || e == nil && x.mayHide(r.node.Text(), target) {
		return
	}
	x.mistakes = append(x.mistakes, mistake{r.node.Spot(x.doc.Name), r.at, "refers", func() string {
		return fmt.Sprintf("%s: %s", where(x.doc, r.at), x.dangling(r.node.Text(), e, target))
	}})
}

// mayHide says whether the id may stand in a part of the record that is not
// understood.
func (x *index) mayHide(id string, target place.Pointer) bool {
	if x.unread[id] || target == anyID {
		return x.unread[id] || len(x.lacking) > 0
	}
	for ; target != place.Root; target = target.Parent() {
		if x.lacking[target] {
			return true
		}
	}
	return false
}

// dangling says of an id what it should have been; e is the entry of that id
// in another list, or nil.
func (x *index) dangling(id string, e *entry, target place.Pointer) string {
	list := "the record"
	if target != anyID {
		list = where(x.doc, target)
		if n := x.doc.Root.At(target); isRecorded(n) && n.Len() == 0 {
			return fmt.Sprintf("found %s, but %s says that there is none (line %d); correct the one that is wrong",
				quote(id), list, n.Spot(x.doc.Name).Line)
		}
	}
	var known []string
	for _, other := range x.ids {
		if target == anyID || target == x.entries[other].list {
			known = append(known, other)
		}
	}
	switch near := nearest(id, known); {
	case e != nil:
		return fmt.Sprintf("found the id %s, which is in %s (line %d); expected an id of %s%s",
			quote(id), where(x.doc, e.list), e.id.Spot(x.doc.Name).Line, list, listed(known))
	case near != nil:
		return fmt.Sprintf("found %s, which is no id of %s; did you mean %s?", quote(id), list, either(quoted(near)))
	}
	return fmt.Sprintf("found %s, which is no id of %s%s", quote(id), list, listed(known))
}

func listed(ids []string) string {
	if len(ids) == 0 {
		return ", where there is none"
	}
	return ": " + some(quoted(ids))
}
