package derive

import (
	"math"

	"github.com/slablint/slablint/internal/geometry"
	"github.com/slablint/slablint/internal/quantity"
)

// A probe is one communication test, worked out.
type probe struct {
	node
	holes []*hole

	slab        geometry.Polygon
	slabBasis   basis
	tested      []geometry.Hole // see telling
	testedBasis basis

	// correction is the suction (Pa) that the house adds in design weather.
	correction   figure
	test, design geometry.Stack
}

type hole struct {
	node
	spot         geometry.PlanPoint
	spotBasis    basis
	distance     figure
	pressure     figure
	pulls        bool
	pullsBasis   basis
	inDesign     figure
	distanceWord string
}

func (d *deriver) readProbes() {
	tests := d.record.get("diagnostics").get("communication_tests")
	d.probes = tests.mem.probes.several(tests.length())
	for i, n := range tests.each() {
		p := d.probes[i]
		p.node = n
		p.stack(d)
		source, sourceBasis, unit := plan(n.get("source"))
		list := n.get("holes").rooted()
		p.holes = n.mem.holes.several(list.length())
		for i, item := range list.each() {
			h := p.holes[i]
			h.node, h.pressure = item, item.get("pressure").quantity()
			h.spot, h.spotBasis, _ = plan(item.get("position"))
			h.distanceWord = "as recorded"
			if told := item.get("distance"); told.exists() {
				h.distance = told.quantity().notBelow("a length")
			} else {
				h.distance = figure{h.spot.Distance(source), unit, join(sourceBasis, h.spotBasis)}
				h.distanceWord = "from positions"
				if !h.distance.known() {
					h.distance.basis = told.lack()
				}
			}
			h.pull()
			h.inDesign = figure{unit: h.pressure.unit, basis: join(h.pressure.basis, p.correction.basis)}
			if h.inDesign.known() {
				carried, err := geometry.CarryToDesign(h.pressure.si, p.test, p.design)
				if err != nil {
					h.inDesign.basis = h.inDesign.refuse(err)
				}
				h.inDesign.si = carried
			}
		}
		p.slab, p.slabBasis = p.outline(d)
		p.tested, p.testedBasis = p.telling()
	}
}

// pull says whether a hole is under suction: by the meter, or by smoke where no
// meter was read.
func (h *hole) pull() {
	h.pulls, h.pullsBasis = h.pressure.si < 0, h.pressure.basis
	if smoke := h.get("smoke"); !h.get("pressure").exists() && smoke.exists() {
		h.pulls, h.pullsBasis = smoke.text() == "down", smoke.read()
	}
}

// stack finds how much harder the house draws in design weather.
func (p *probe) stack(d *deriver) {
	height := d.record.get("diagnostics").get("neutral_level").quantity()
	if !d.record.get("diagnostics").get("neutral_level").exists() {
		height = d.house.get("building_height").quantity()
		height.si /= 2
		height.basis = join(height.basis, assuming(neutralLevel))
	}
	indoor, outdoor := p.get("indoor_temperature").quantity(), p.get("outdoor_temperature").quantity()
	winterIndoor, winter := d.house.get("indoor_temperature").quantity(), d.house.get("winter_design_temperature").quantity()
	f := figure{unit: units.pascals, basis: join(height.basis, indoor.basis, outdoor.basis, winterIndoor.basis, winter.basis, d.site.basis)}
	p.test = geometry.Stack{Height: height.si, Indoor: indoor.si, Outdoor: outdoor.si, Barometer: d.site.si}
	p.design = geometry.Stack{Height: height.si, Indoor: winterIndoor.si, Outdoor: winter.si, Barometer: d.site.si}
	if f.known() {
		carried, err := geometry.CarryToDesign(0, p.test, p.design)
		if err != nil {
			f.basis = f.refuse(err)
		}
		f.si = carried
	}
	p.correction = f
}

const seasonMethod = "stack pressure by the ideal gas law, the fan's part taken as unchanged"

func (d *deriver) communication() []any {
	out := d.list(len(d.probes))
	for _, p := range d.probes {
		e := d.about(p.node, 5, 4)
		if f := p.get("foundation").text(); f != "" {
			e.set("foundation", f)
		}
		pulling, pullsBasis := p.count()
		if p.get("holes").isList() {
			e.set("holes_total", whole(len(p.holes)))
			if pullsBasis.known() {
				e.set("holes_pulling", whole(pulling))
			}
		}
		e.exact("reach", quantity.Length, p.reach(pullsBasis), "distance of the farthest hole that pulls, 0 when none does")
		share, method := p.coverage(pullsBasis)
		e.exact("coverage", quantity.Ratio, share, method)
		e.exact("farthest_untested", quantity.Length, p.gap(), "place of the slab farthest from any hole, in plan")
		e.model("decay_per_length", quantity.PerLength, p.decay(), "least squares of the logarithm of pressure on distance")
		e.model("stack_correction", quantity.Pressure, p.correction, seasonMethod)
		if verdict := p.season(); verdict != "" {
			e.set("seasonal_verdict", verdict)
		}
		out = append(out, e)
	}
	return out
}

func (d *deriver) holes() []any {
	count := 0
	for _, p := range d.probes {
		count += len(p.holes)
	}
	out := d.list(count)
	for _, p := range d.probes {
		for _, h := range p.holes {
			e := d.about(h.node, 3, 2)
			e.set("test", p.id())
			e.recorded("pressure", quantity.Pressure, h.pressure, h.get("pressure"), "as measured, below the slab less in the room")
			e.model("design_pressure", quantity.Pressure, h.inDesign, seasonMethod)
			e.recorded("distance", quantity.Length, h.distance, h.get("distance"), h.distanceWord)
			if h.inDesign.known() {
				e.set("class", string(geometry.ClassifyHold(h.inDesign.si)))
			}
			out = append(out, e)
		}
	}
	return out
}

// season is how the weakest hole fares in design weather; "" when it is not
// known.
func (p *probe) season() string {
	weakest, b := math.Inf(-1), nothing
	for _, h := range p.holes {
		b = join(b, h.inDesign.basis)
		if h.inDesign.known() {
			weakest = math.Max(weakest, h.inDesign.si)
		}
	}
	switch hold := geometry.ClassifyHold(weakest); {
	case math.IsInf(weakest, -1):
		return ""
	case hold == geometry.HoldFails:
		return "reverses"
	case !b.known():
		return ""
	case hold == geometry.HoldMarginal:
		return "marginal"
	}
	return "holds"
}
