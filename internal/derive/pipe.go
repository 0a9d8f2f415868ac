package derive

import (
	"errors"
	"fmt"

	"github.com/slablint/slablint/internal/airflow"
)

// unsolved is the state of a segment whose flow is not known.
var unsolved airflow.SegmentState

func (seg *segment) read(n node) {
	seg.node, seg.id = n, n.id()
	seg.into, seg.starts = n.get("flows_into"), n.get("starts_at")
	seg.next, seg.startsAt, seg.boreMethod = -1, -1, boreMethod
	seg.nominal = n.get("nominal_size").quantity().notBelow("a length")
	seg.length = n.get("length").quantity().notBelow("a length")
	seg.rise = n.get("rise").quantity()
	if seg.nominal.known() && seg.nominal.si == 0 {
		seg.nominal.basis = seg.nominal.refuse(errors.New("pipe has a size"))
	}
	seg.state = &unsolved
	material := n.get("material").rooted()
	seg.readBore(material)
	seg.readRoughness(material)
	seg.readFittings()
}

// readBore finds the open cross-section: as measured, else from the trade size
// and what the pipe is made to. Where neither is known there is none: a bore is
// never guessed.
func (seg *segment) readBore(material node) {
	shape, shapeBasis := seg.get("shape").choice()
	measured := seg.get("inner_diameter")
	switch {
	case shape == "":
		seg.boreBasis = shapeBasis
		return
	case shape != "round":
		seg.readSides(shapeBasis)
		return
	case measured.exists():
		inner := measured.quantity()
		seg.boreBasis, seg.boreUnit = join(inner.basis, shapeBasis), inner.unit
		seg.bore = airflow.Round(inner.si)
		if inner.known() && inner.si <= 0 {
			seg.boreBasis = inner.refuse(errors.New("a bore is above zero"))
		}
		return
	}
	seg.boreUnit = seg.nominal.unit
	wall, wallBasis := seg.wall(material, measured)
	seg.boreBasis = join(shapeBasis, seg.nominal.basis, wallBasis)
	if !seg.boreBasis.known() {
		return
	}
	bore, _, err := airflow.PipeBore(seg.nominal.si, wall)
	if err != nil {
		seg.boreBasis = refused(err.Error(), measured)
	}
	seg.bore = bore
}

// readSides finds the opening of a downspout from its two measured sides: the
// size it is sold by is not that of its opening.
func (seg *segment) readSides(shape basis) {
	list := seg.get("inner_sides")
	sides := list.items()
	switch {
	case len(sides) == 0:
		seg.boreBasis = list.lack()
		return
	case len(sides) != 2:
		seg.boreBasis = refused("a rectangle has two sides", list)
		return
	}
	a, b := sides[0].quantity(), sides[1].quantity()
	seg.boreBasis, seg.boreUnit, seg.boreMethod = join(a.basis, b.basis, shape), a.unit, sidesMethod
	if !seg.boreBasis.known() {
		return
	}
	for _, side := range []figure{a, b} {
		if side.si <= 0 {
			seg.boreBasis = side.refuse(errors.New("a side is above zero"))
		}
	}
	seg.bore = airflow.Rectangular(a.si, b.si)
}

const (
	boreMethod  = "measured, else by trade size and standard"
	sidesMethod = "hydraulic diameter: four times the area between the measured sides over their girth"
)

// wall is what fixes the bore of plastic pipe besides its size.
func (seg *segment) wall(of, measure node) (airflow.Wall, basis) {
	material, b := of.choice()
	standard, standardBasis := seg.get("standard").choice()
	schedule, scheduleBasis := seg.get("schedule").choice()
	b = join(b, standardBasis)
	switch {
	case !b.known():
		return "", b
	case material != "pvc" && material != "abs":
		return "", refused("pipe of this material has no bore that follows from its size: measure it", measure)
	case standard == "astm-f891" || standard == "astm-f628":
		return "", refused("the bore of foam-core pipe is not fixed by its standard: measure it", measure)
	case standard == "astm-d2729":
		return airflow.ThinWall, b
	case standard == "astm-d3034":
		return airflow.SDR35, b
	case material == "abs":
		b = join(b, assuming(absBore))
	}
	b = join(b, scheduleBasis)
	switch schedule {
	case "sch-40":
		return airflow.Schedule40, b
	case "sdr-35":
		return airflow.SDR35, b
	}
	return airflow.Wall(schedule), b
}

func (seg *segment) readRoughness(of node) {
	material, b := of.choice()
	seg.roughBasis = b
	switch material {
	case "":
		return
	case "pvc", "abs":
		rough, _, err := airflow.Roughness(airflow.SmoothPlastic)
		if err != nil {
			seg.roughBasis = b.refuse(err)
			return
		}
		seg.roughness, seg.roughBasis = rough, join(b, assuming(smoothPlastic))
	case "metal-downspout":
		rough, _, err := airflow.Roughness(airflow.SteelDuct)
		if err != nil {
			seg.roughBasis = b.refuse(err)
			return
		}
		seg.roughness, seg.roughBasis = rough, join(b, assuming(sheetMetal))
	default:
		seg.roughBasis = refused("no roughness is known of pipe of this material", of)
	}
}

// readFittings adds up the losses of the fittings. A list that is empty says
// that there are none; one that is missing says nothing.
func (seg *segment) readFittings() {
	list := seg.get("fittings").rooted()
	if !list.isList() {
		seg.fitBasis = list.lack()
		return
	}
	seg.fitBasis = list.read()
	count := list.length()
	seg.fittings = seg.mem.fittings.room(0, count+3) // what follows from neighbors comes to them
	for i, item := range list.each() {
		times := item.get("count").number()
		kind, coefficient := item.get("kind"), item.get("loss_coefficient")
		fitting, b := seg.fitting(kind, coefficient)
		b = join(b, times.basis)
		if b.known() && (times.si < 0 || times.si > 1e6) {
			b = times.refuse(fmt.Errorf("there are not %g of them", times.si))
		}
		if !b.known() {
			seg.fitBasis = join(seg.fitBasis, b.without())
			continue
		}
		shape := airflow.FittingKind(kind.text())
		if i == count-1 && times.si == 1 && (shape == airflow.TeeRun || shape == airflow.TeeBranch) && !coefficient.exists() {
			seg.tee = tee{shape, fitting}
			continue
		}
		seg.fittings = append(seg.fittings, fitting.Times(int(times.si)))
	}
}

// fitting is the loss of one fitting: as its maker has it, else by its shape.
// What a reducer takes follows from the bores on both sides.
func (seg *segment) fitting(named, coefficient node) (airflow.Fitting, basis) {
	kind, b := named.choice()
	switch {
	case coefficient.exists():
		k := coefficient.number().notBelow("a loss coefficient")
		seg.reducer = seg.reducer || kind == "reducer"
		return airflow.Fitting{K: k.si}, k.basis
	case kind == "" || kind == "reducer":
		return airflow.Fitting{}, b
	case kind == "damper" || kind == "other":
		return airflow.Fitting{}, coefficient.lack()
	case !seg.boreBasis.known():
		return airflow.Fitting{}, seg.boreBasis
	}
	size := seg.nominal.si
	if seg.boreMethod == sidesMethod {
		size = 0 // lengths listed by size are those of round pipe
	}
	f, _, err := airflow.NewFitting(airflow.FittingKind(kind), size, seg.bore)
	if err != nil {
		return f, refused(err.Error(), coefficient)
	}
	return f, b
}
