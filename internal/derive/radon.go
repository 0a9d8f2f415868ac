package derive

import (
	"cmp"
	"math"
	"slices"

	"github.com/slablint/slablint/internal/quantity"
	"github.com/slablint/slablint/internal/radon"
)

// A level is what the tests of one phase say of the house: its worst room.
type level struct {
	radon.Result
	unit    quantity.Unit
	found   basis // what the value rests on
	places  int   // how many there are, duplicates and blanks left out
	counted basis // what that rests on
	told    basis // what its uncertainty rests on besides
}

// worst finds the worst room of a phase. Every result counts: one that is not
// recorded could be the worst. Only duplicates are averaged.
func (d *deriver) worst(phase string) level {
	w := level{Result: radon.Result{Value: math.Inf(-1)}, found: nothing, told: nothing, counted: nothing}
	done := map[*test]bool{}
	decisive := nothing // the result that is the worst
	for _, t := range d.all {
		stands, b := t.standsFor(phase)
		w.found = join(w.found, b)
		w.counted = join(w.counted, b)
		if twin := t.get("duplicate_of"); stands && twin.exists() {
			w.counted = join(w.counted, twin.read())
		}
		if !stands || done[t] {
			continue
		}
		w.places++
		w.found = join(w.found, t.result.basis, bounds(t))
		group := d.group(t, done)
		r, b := d.together(group)
		w.found = join(w.found, b)
		for _, g := range group {
			w.found = join(w.found, g.result.basis)
			w.told = join(w.told, g.toldBasis)
		}
		if r.Value > w.Value {
			w.Result, w.unit, decisive = r, t.result.unit, worstOf(group).result.basis
		}
	}
	if w.found.known() && math.IsInf(w.Value, -1) {
		w.found = d.noTest(phase)
	}
	w.found = join(decisive, w.found)
	w.told = join(w.found, w.told)
	return w
}

// worstOf is the test of a group with the highest result.
func worstOf(group []*test) *test {
	return slices.MaxFunc(group, func(a, b *test) int { return cmp.Compare(a.result.si, b.result.si) })
}

// noTest is why nothing is known of a phase in which nothing was tested.
func (d *deriver) noTest(phase string) basis {
	list := d.record.get("measurements").get("tests")
	if len(d.all) == 0 {
		return list.lack()
	}
	return refused("no test of the phase "+phase+" is recorded", list)
}

// standsFor says whether a test is one of a phase, and what that rests on: a
// blank stands for no air. One of which that is not known is counted in, so
// that what follows from it is not known either.
func (t *test) standsFor(phase string) (bool, basis) {
	switch {
	case t.phase != "" && t.phase != phase:
		return false, t.phaseBasis
	case t.blank:
		return false, t.blankBasis
	}
	return t.phase == phase, join(t.phaseBasis, t.blankBasis)
}

// group is a test and its duplicates of the same phase.
func (d *deriver) group(t *test, done map[*test]bool) []*test {
	group := []*test{t}
	done[t] = true
	for _, other := range d.all {
		if other.blank || other.phase != t.phase || done[other] {
			continue
		}
		if first, _ := d.partner(other); first == t {
			done[other] = true
			group = append(group, other)
		} else if first, _ := d.partner(t); first == other {
			done[other] = true
			group = append(group, other)
		}
	}
	return group
}

// together is what devices side by side say: their mean when all are on one
// side of the action level and not more than 8 in apart, else the highest.
func (d *deriver) together(group []*test) (radon.Result, basis) {
	results := make([]radon.Result, len(group))
	highest, near, above := radon.Result{Value: math.Inf(-1)}, true, 0
	b := nothing
	for i, t := range group {
		results[i] = t.told
		if t.told.Value > highest.Value {
			highest = t.told
		}
		if t.result.si >= action {
			above++
		}
		if t.get("duplicate_of").exists() {
			spacing := t.get("spacing").quantity().notBelow("a length")
			b = join(b, t.get("duplicate_of").read())
			if !spacing.known() {
				near = false
				continue
			}
			b = join(b, spacing.basis)
			near = near && spacing.si <= 8*0.0254
		}
	}
	if len(group) == 1 {
		return highest, b
	}
	b = join(b, assuming(actionLevel))
	if !near || above != 0 && above != len(group) {
		return highest, b
	}
	mean, err := radon.Average(results, 0)
	if err != nil {
		return highest, b
	}
	return mean, b
}

func (d *deriver) radonValues() *entry {
	before, after := d.worst("before"), d.worst("after")
	lower, upper := after.Bounds()
	out := d.entry(7, 0)
	out.exact("before", quantity.Radon, figure{before.Value, before.unit, before.found}, "the worst room before")
	out.exact("after", quantity.Radon, rounded(figure{after.Value, after.unit, after.found}), "the worst room after, "+roundedMethod)
	out.model("after_upper_bound", quantity.Radon, figure{upper, after.unit, after.told}, "one-sided 95 %, 1.645 standard uncertainties")
	out.model("after_lower_bound", quantity.Radon, figure{lower, after.unit, after.told}, "one-sided 95 %, 1.645 standard uncertainties")
	plain := join(after.found, before.found)
	told := join(after.told, before.told)
	var r radon.Reduction
	method := "worst room before against worst room after"
	if plain.known() {
		var err error
		if r, err = radon.Reduce(before.Result, after.Result); err != nil {
			plain = before.found.refuse(err)
			told = plain
		} else if r.AtLeast {
			method += ": at least, the result after is below detection"
		}
	}
	area := d.house.get("floor_area_tested").quantity().notBelow("an area")
	each := figure{area.si / float64(after.places), area.unit, join(area.basis, after.counted)}
	if after.places == 0 && after.counted.known() {
		each.basis = join(area.basis, d.noTest("after"))
	}
	out.exact("area_per_place", quantity.Area, each, "floor area tested over places with a test after")
	out.exact("reduction", quantity.Percent, figure{r.Percent, units.percent, plain}, method)
	out.model("reduction_uncertainty", quantity.Percent, figure{r.U, units.percent, told}, "standard uncertainty in percentage points, from those of the two results")
	return out
}

// retestDue is two years after the last test that proves the system.
func (d *deriver) retestDue() figure {
	last := figure{si: math.Inf(-1), unit: units.seconds, basis: nothing}
	for _, t := range d.all {
		stands, b := t.standsFor("after")
		last.basis = join(last.basis, b)
		if !stands {
			continue
		}
		end := t.endAt.day()
		last.basis = join(last.basis, end.basis)
		last.si = math.Max(last.si, end.si)
	}
	if last.known() && math.IsInf(last.si, -1) {
		last.basis = d.noTest("after")
	}
	if last.known() {
		due, err := radon.RetestDue(last.si)
		if err != nil {
			last.basis = last.refuse(err)
		}
		last.si = due
	}
	return last
}
