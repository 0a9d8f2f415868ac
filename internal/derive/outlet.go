package derive

import (
	"math"

	"github.com/slablint/slablint/internal/geometry"
	"github.com/slablint/slablint/internal/quantity"
)

// outlets are the systems that have an outlet or should have one.
func (d *deriver) outlets() []*system {
	var out []*system
	for _, s := range d.systems {
		if s.discharge.exists() || s.get("powered_by").text() != "rough-in" {
			out = append(out, s)
		}
	}
	return out
}

func (d *deriver) discharges() []any {
	outlets := d.outlets()
	out := d.list(len(outlets))
	for _, s := range outlets {
		e := d.named(s.id(), s.discharge, 5, 0)
		z := s.discharge.get("position").get("z").quantity()
		over := func(recorded, level node) (figure, string, figure) {
			computed := difference(z, level.quantity())
			if recorded.exists() {
				told := recorded.quantity()
				return told, "as recorded", apart(told, computed)
			}
			f := computed
			if !f.known() && f.why() == "" {
				f.basis = recorded.lack()
			}
			return f, "from the position of the outlet", apart(recorded.quantity(), computed)
		}
		aboveGrade, aboveEave := s.discharge.get("height_above_grade"), s.discharge.get("height_above_eave")
		grade, method, disagreement := over(aboveGrade, s.discharge.get("grade_level"))
		e.recorded("height_above_grade", quantity.Length, grade, aboveGrade, method)
		e.exact("height_disagreement", quantity.Length, disagreement, "recorded height above grade against the one from positions, either way")
		eave, method, disagreement := over(aboveEave, d.house.get("eave_level"))
		e.recorded("height_above_eave", quantity.Length, eave, aboveEave, method)
		e.exact("eave_disagreement", quantity.Length, disagreement, "recorded height above the eave against the one from positions, either way")
		e.model("exit_velocity", quantity.Velocity, s.exitVelocity(), "flow used over the bore at the open end")
		out = append(out, e)
	}
	return out
}

func difference(a, b figure) figure {
	return figure{a.si - b.si, a.unit, join(a.basis, b.basis)}
}

// apart is how far two ways to the same length differ.
func apart(a, b figure) figure {
	f := difference(a, b)
	f.si = math.Abs(f.si)
	return f
}

// point is a position in space.
func point(n node) (geometry.Point, basis, quantity.Unit) {
	if !n.exists() {
		return geometry.Point{}, n.lack(), quantity.Unit{}
	}
	n = n.rooted()
	x, _, hasX := n.get("x").measure()
	y, _, hasY := n.get("y").measure()
	z, unit, hasZ := n.get("z").measure()
	if hasX && hasY && hasZ {
		return geometry.Point{X: x, Y: y, Z: z}, n.read(), unit
	}
	return geometry.Point{}, join(n.get("x").quantity().basis, n.get("y").quantity().basis, n.get("z").quantity().basis), unit
}

// plan is a position seen from above.
func plan(n node) (geometry.PlanPoint, basis, quantity.Unit) {
	if !n.exists() {
		return geometry.PlanPoint{}, n.lack(), quantity.Unit{}
	}
	n = n.rooted()
	x, unit, hasX := n.get("x").measure()
	y, _, hasY := n.get("y").measure()
	if hasX && hasY {
		return geometry.PlanPoint{X: x, Y: y}, n.read(), unit
	}
	return geometry.PlanPoint{}, join(n.get("x").quantity().basis, n.get("y").quantity().basis), unit
}

// opening is the rectangle of an opening of the house or of a neighbour.
func opening(n node) (geometry.Rect, basis) {
	corner, cornerBasis, _ := point(n.get("corner"))
	width, height := n.get("width").quantity().notBelow("a length"), n.get("height").quantity().notBelow("a length")
	facing, facingBasis := n.get("facing").choice()
	b := join(cornerBasis, width.basis, height.basis, facingBasis)
	if !b.known() {
		return geometry.Rect{}, b
	}
	u, v := geometry.Point{X: width.si}, geometry.Point{Z: height.si}
	switch facing {
	case "north", "south":
	case "east", "west":
		u = geometry.Point{Y: width.si}
	case "up":
		v = geometry.Point{Y: height.si}
	default:
		return geometry.Rect{}, refused("no such way to face", n.get("facing"))
	}
	r, err := geometry.NewRect(corner, u, v)
	if err != nil {
		return r, b.refuse(err)
	}
	return r, b
}
