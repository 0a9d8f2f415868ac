package derive

import (
	"github.com/slablint/slablint/internal/geometry"
	"github.com/slablint/slablint/internal/quantity"
)

// count is how many holes pull.
func (p *probe) count() (pulling int, b basis) {
	b = nothing
	for _, h := range p.holes {
		b = join(b, h.pullsBasis)
		if h.pulls {
			pulling++
		}
	}
	if len(p.holes) == 0 {
		b = p.get("holes").lack()
	}
	return pulling, b
}

// reach is the distance of the farthest hole that pulls.
func (p *probe) reach(pulls basis) figure {
	far := figure{basis: pulls}
	for _, h := range p.holes {
		far.basis = join(far.basis, h.distance.basis)
		if far.unit == (quantity.Unit{}) {
			far.unit = h.distance.unit
		}
		if h.pulls && h.distance.si > far.si {
			far.si, far.unit = h.distance.si, h.distance.unit
		}
	}
	return far
}

// outline is the outline of the area that the test was made in.
func (p *probe) outline(d *deriver) (geometry.Polygon, basis) {
	ref := p.get("foundation")
	id, b := ref.choice()
	if !b.known() {
		return geometry.Polygon{}, b
	}
	areas := d.house.get("foundations").items()
	i := find(areas, id)
	if i < 0 {
		return geometry.Polygon{}, refused("no foundation area of the house has this id", ref)
	}
	outline := areas[i].get("outline")
	if !outline.exists() {
		return geometry.Polygon{}, outline.lack()
	}
	var corners []geometry.PlanPoint
	lacks := nothing
	for _, n := range outline.each() {
		c, cornerBasis, _ := plan(n)
		corners = append(corners, c)
		lacks = join(lacks, cornerBasis)
	}
	if !lacks.known() {
		return geometry.Polygon{}, lacks
	}
	polygon, err := geometry.NewPolygon(corners)
	if err != nil {
		return polygon, refused(err.Error(), outline)
	}
	return polygon, join(outline.read(), b)
}

// telling are the holes that tell of the slab round them. The hole that suction
// is drawn from is none: that there is suction in it was given. Which hole that
// is takes the distances.
func (p *probe) telling() ([]geometry.Hole, basis) {
	var list []geometry.Hole
	b := nothing
	for _, h := range p.holes {
		b = join(b, h.spotBasis, h.distance.basis)
		if !h.distance.known() || h.distance.si > 0 {
			list = append(list, geometry.Hole{At: h.spot, Passes: h.pulls})
		}
	}
	switch {
	case len(p.holes) == 0:
		b = p.get("holes").lack()
	case len(list) == 0:
		b = refused("the only hole is the one that suction is drawn from", p.get("holes"))
	}
	return list, b
}

// coverage is the share of the slab that lies nearest to a hole that pulls, or,
// where holes have only distances and all of them pull, within the reach that
// was measured: what lies round a hole that does not pull takes positions.
func (p *probe) coverage(pulls basis) (figure, string) {
	f := figure{unit: units.percent, basis: join(p.testedBasis, pulls, p.slabBasis)}
	if f.known() {
		share, err := p.slab.PassingShare(p.tested)
		f.si = share
		if err != nil {
			f.basis = f.refuse(err)
		}
		return f, "share of the slab nearest to a hole that pulls"
	}
	if pulling, _ := p.count(); pulling < len(p.holes) {
		return f, ""
	}
	source, sourceBasis, _ := plan(p.get("source"))
	reach := p.reach(pulls)
	within := figure{unit: units.percent, basis: join(p.slabBasis, pulls, sourceBasis, reach.basis)}
	if !within.known() {
		return f, ""
	}
	share, err := p.slab.ShareWithin([]geometry.PlanPoint{source}, reach.si)
	within.si = share
	if err != nil {
		within.basis = within.refuse(err)
	}
	return within, "share of the slab within the measured reach"
}

// gap is how far the place of the slab farthest from any tested hole is from one.
func (p *probe) gap() figure {
	f := figure{basis: join(p.testedBasis, p.slabBasis)}
	if len(p.holes) > 0 {
		_, _, f.unit = plan(p.holes[0].get("position"))
	}
	if !f.known() {
		return f
	}
	places := make([]geometry.PlanPoint, len(p.tested))
	for i, h := range p.tested {
		places[i] = h.At
	}
	gap, err := p.slab.Farthest(places)
	if err != nil {
		f.basis = f.refuse(err)
	}
	f.si = gap.Distance
	return f
}

// meterNoise is the reading (Pa) below which a meter shows its own noise.
const meterNoise = 0.25

// decay is k of p = p0 exp(-k r).
func (p *probe) decay() figure {
	f := figure{unit: units.perMeter, basis: assuming(gaugeNoise)}
	var readings []geometry.Reading
	for i, h := range p.holes {
		if i == 0 && h.distance.unit == units.feet {
			f.unit = units.perFoot
		}
		f.basis = join(f.basis, h.pressure.basis, h.distance.basis)
		readings = append(readings, geometry.Reading{Distance: h.distance.si, Pressure: h.pressure.si})
	}
	if len(readings) == 0 {
		f.basis = p.get("holes").lack()
	}
	if !f.known() {
		return f
	}
	fit, err := geometry.FitField(readings, meterNoise)
	if err != nil {
		f.basis = f.refuse(err)
	}
	f.si = fit.K
	return f
}
