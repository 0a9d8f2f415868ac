package derive

import (
	"github.com/slablint/slablint/internal/quantity"
	"github.com/slablint/slablint/internal/radon"
)

// action is the level that parts duplicates (Bq/m3): 4.0 pCi/L.
const action = 148

// partner is the test beside which another stood, and why it is not known.
func (d *deriver) partner(t *test) (*test, basis) {
	ref := t.get("duplicate_of")
	id, b := ref.choice()
	for _, other := range d.all {
		if id != "" && other != t && other.id() == id {
			return other, b
		}
	}
	if id != "" {
		b = refused("no other test has this id", ref)
	}
	return nil, b
}

func (d *deriver) duplicates() []any {
	out := d.list(0)
	for _, t := range d.all {
		ref := t.get("duplicate_of")
		if !ref.exists() {
			continue
		}
		first, b := d.partner(t)
		spacing := t.get("spacing").quantity().notBelow("a length")
		e := d.named(ref.text()+"/"+t.id(), t.node, 8, 0)
		out = append(out, e)
		e.recorded("spacing", quantity.Length, spacing, t.get("spacing"), "as recorded")
		apartBy := func(name string, when func(*test) figure) {
			f := figure{unit: units.hours, basis: b}
			if first != nil {
				f = apart(when(t), when(first))
				f.unit, f.basis = units.hours, join(f.basis, b)
			}
			e.exact(name, quantity.Duration, f, "either way")
		}
		apartBy("start_difference", func(t *test) figure { return t.start })
		apartBy("end_difference", func(t *test) figure { return t.end })
		var pair radon.Pair
		unit := t.result.unit
		if first != nil {
			unit = first.result.unit
			b = join(first.result.basis, t.result.basis, bounds(first, t), b)
			if b.known() {
				var err error
				if pair, err = radon.CheckDuplicates(radon.Result{Value: first.told.Value, BelowDetection: first.told.BelowDetection},
					radon.Result{Value: t.told.Value, BelowDetection: t.told.BelowDetection}, action); err != nil {
					b = refused(err.Error(), first.resultAt, t.resultAt)
				}
			}
		}
		mean := figure{pair.Mean, unit, b}
		e.exact("mean", quantity.Radon, mean, "plain mean")
		e.exact("reported_mean", quantity.Radon, rounded(mean), roundedMethod)
		e.exact("difference", quantity.Radon, figure{pair.Difference, unit, b}, "absolute")
		e.exact("relative_percent_difference", quantity.Percent, figure{pair.RPD, units.percent, b}, "difference over mean: ANSI/AARST MS-QA 2019 Table 7.1")
		ratio := figure{pair.Ratio, units.one, b}
		if b.known() && pair.Ratio == 0 {
			ratio.basis = refused("the smaller is zero", first.resultAt, t.resultAt)
		}
		e.exact("ratio", quantity.Number, ratio, "larger over smaller")
	}
	return out
}

// bounds is what says that results are only upper bounds, where they are.
func bounds(tests ...*test) basis {
	b := nothing
	for _, t := range tests {
		if t.told.BelowDetection {
			b = join(b, t.get("below_detection").read())
		}
	}
	return b
}

func (d *deriver) spikes() []any {
	list := d.record.get("measurements").get("spikes").rooted()
	out := d.list(list.length())
	for _, n := range list.each() {
		e := d.about(n, 1, 0)
		measured, reference := n.get("measured").quantity(), n.get("reference").quantity()
		f := figure{unit: units.percent, basis: join(measured.basis, reference.basis)}
		if f.known() {
			spike, err := radon.CheckSpike(measured.si, reference.si)
			if err != nil {
				f.basis = f.refuse(err)
			}
			f.si = spike.Error
		}
		e.exact("relative_error", quantity.Percent, f, "measured less known, over known: ANSI/AARST MS-QA 2019 5.3.3")
		out = append(out, e)
	}
	return out
}
