package derive

import (
	"github.com/slablint/slablint/internal/geometry"
	"github.com/slablint/slablint/internal/quantity"
)

// clearances is one entry for each outlet and each opening that it could reach,
// whether the crew measured the distance or wrote down positions.
func (d *deriver) clearances() []any {
	out := d.list(0)
	list := d.house.get("openings")
	openings := list.items()
	for _, s := range d.outlets() {
		recorded := s.discharge.get("clearances")
		measured := recorded.items()
		if !list.isList() && !recorded.isList() {
			e := d.named(s.id()+"/openings", list, 2, 2)
			e.set("system", s.name())
			e.set("opening", "openings")
			e.unknown("distance", list.lack())
			e.unknown("drop", list.lack())
			out = append(out, e)
			continue
		}
		for _, o := range openings {
			times := 0
			for _, m := range measured {
				if m.get("opening").text() == o.id() && o.id() != "" {
					id := s.id() + "/" + o.id()
					if times++; times > 1 { // each measurement must hold by itself
						id += "/" + m.id()
					}
					out = append(out, d.clearance(id, s, o, m))
				}
			}
			if times == 0 {
				out = append(out, d.clearance(s.id()+"/"+o.id(), s, o, node{}))
			}
		}
		for _, m := range measured {
			if find(openings, m.get("opening").text()) < 0 {
				out = append(out, d.clearance(s.id()+"/"+m.id(), s, node{}, m))
			}
		}
	}
	return out
}

// clearance is how far an outlet is from an opening of the house's list (o), as
// measured (m), or both.
func (d *deriver) clearance(id string, s *system, o, m node) *entry {
	subject, where := o, m
	if !o.exists() {
		subject = m
	}
	if !m.exists() {
		where = o
	}
	e := d.named(id, where, 4, 6)
	e.set("system", s.name())
	e.set("opening", subject.name())
	for _, name := range [...]string{"building", "kind"} {
		if word := agreed(o, m, name); word.text() != "" {
			e.set(name, word.value)
		}
	}
	for _, name := range [...]string{"into_conditioned_space", "operable"} {
		if said := agreed(o, m, name); said.isBool() {
			e.set(name, said.value)
		}
	}
	straight, drop := s.toOpening(o)
	var straightAt, dropAt node // where they are recorded
	straightMethod, dropMethod := "nearest place of the opening, from positions", "from positions"
	var round *figure
	if m.exists() {
		round = legs(m.get("legs"))
		if told := m.get("distance"); told.exists() || !o.exists() {
			f := told.quantity().notBelow("a length")
			if o.exists() {
				e.exact("disagreement", quantity.Length, apart(f, straight), "recorded distance against the one from positions, either way")
			}
			straight, straightMethod, straightAt = f, "as recorded, straight", told
		}
		if told := m.get("drop"); told.exists() || !o.exists() {
			drop, dropMethod, dropAt = told.quantity(), "as recorded", told
		}
	}
	e.recorded("straight_distance", quantity.Length, straight, straightAt, straightMethod)
	if round != nil {
		e.exact("distance", quantity.Length, *round, "legs round an obstacle, added up")
	} else {
		e.recorded("distance", quantity.Length, straight, straightAt, straightMethod)
	}
	e.recorded("drop", quantity.Length, drop, dropAt, "outlet less top of the opening, "+dropMethod)
	return e
}

// agreed is what the list of openings and a measurement say of an opening: what
// one of them says, or both; nothing when they contradict each other.
func agreed(listed, measured node, name string) node {
	a, b := listed.get(name), measured.get(name)
	switch {
	case !a.exists():
		return b
	case !b.exists() || a.text() == b.text() && a.isTrue() == b.isTrue():
		return a
	}
	return node{}
}

// legs is the length of a way round an obstacle; nil when none is recorded.
func legs(n node) *figure {
	if n.length() == 0 {
		return nil
	}
	f := figure{basis: nothing}
	lengths := make([]float64, n.length())
	for i, item := range n.each() {
		q := item.quantity()
		lengths[i] = q.si
		f.basis = join(f.basis, q.basis)
		if i == 0 {
			f.unit = q.unit
		}
	}
	if f.known() {
		sum, err := geometry.SumLegs(lengths)
		if err != nil {
			f.basis = refused(err.Error(), n)
		}
		f.si = sum
	}
	return &f
}

// toOpening is the straight distance from the outlet to an opening by their
// positions, and how far the outlet is above its top.
func (s *system) toOpening(o node) (distance, drop figure) {
	from, at, unit := point(s.discharge.get("position"))
	if !o.exists() {
		b := s.discharge.get("position").lack()
		return figure{basis: b}, figure{basis: b}
	}
	rect, b := opening(o)
	distance, drop = figure{unit: unit, basis: join(at, b)}, figure{unit: unit, basis: join(at, b)}
	if !distance.known() {
		return distance, drop
	}
	distance.si = rect.Distance(from)
	below, err := geometry.Drop(from, rect, geometry.PartTop)
	if err != nil {
		drop.basis = b.refuse(err)
	}
	drop.si = below
	return distance, drop
}
