package derive

import (
	"github.com/slablint/slablint/internal/airflow"
	"github.com/slablint/slablint/internal/quantity"
)

// appliances is one entry for each backdraft test and the appliance it was made
// at.
func (d *deriver) appliances() []any {
	appliances := d.house.get("combustion").items()
	tests := d.record.get("diagnostics").get("backdraft_tests").rooted()
	out := d.list(tests.length())
	for _, t := range tests.each() {
		ref := t.get("appliance")
		e := d.named(ref.text()+"/"+t.id(), t, 3, 2)
		e.set("appliance", ref.text())
		e.set("test", t.id())
		out = append(out, e)
		zone, baseline := t.get("pressure").quantity(), t.get("baseline").quantity()
		e.exact("depressurization", quantity.Pressure, difference(zone, baseline), "zone pressure less baseline")
		var a node
		_, b := ref.choice()
		if i := find(appliances, ref.text()); i >= 0 {
			a = appliances[i]
		} else if b.known() {
			b = refused("no appliance of the house has this id", ref)
		}
		if !b.known() {
			e.unknown("limit", b)
			e.unknown("draft_minimum", b)
			continue
		}
		limit, method := depressurizationLimit(a)
		limit.basis = join(limit.basis, b)
		e.exact("limit", quantity.Pressure, limit, method)
		e.exact("draft_minimum", quantity.Pressure, minimumDraft(a, t, b), "gas appliance with natural draft: table of a public weatherization form")
	}
	return out
}

// depressurizationLimit is that of the weatherization table for an appliance.
func depressurizationLimit(a node) (figure, string) {
	class, b := applianceClass(a)
	f := figure{unit: units.pascals, basis: b}
	if !b.known() {
		return f, ""
	}
	limit, source, err := airflow.DepressurizationLimit(airflow.WeatherizationTable, class)
	if err != nil {
		f.basis = b.refuse(err)
	}
	f.si = limit
	return f, string(class) + ": " + source.Document
}

// applianceClass sorts an appliance into the classes of the weatherization
// table, by the flags that tell them apart. What the table does not list has no
// class.
func applianceClass(a node) (airflow.Appliance, basis) {
	kind, kindBasis := a.get("kind").choice()
	venting, ventingBasis := a.get("venting").choice()
	b := join(kindBasis, ventingBasis)
	if !b.known() {
		return "", b
	}
	if kind != "furnace" && kind != "boiler" && kind != "water-heater" {
		return "", refused("the table lists no appliance of this kind", a.get("kind"))
	}
	if fuel := a.get("fuel").text(); fuel == "wood" || fuel == "coal" {
		return "", refused("the table lists no appliance with this fuel", a.get("fuel"))
	}
	if venting == "direct-vent" {
		return airflow.SealedCombustion, b
	}
	shared, sharedBasis := a.get("commonly_vented").said()
	b = join(b, sharedBasis)
	if !b.known() {
		return "", b
	}
	switch venting {
	case "natural-draft", "natural-draft-with-damper":
		return naturalDraftClass(kind, venting == "natural-draft-with-damper", shared), b
	case "fan-assisted", "induced-draft", "power-vent":
		if shared {
			return "", refused("the table lists fan-driven appliances only alone on their flue", a.get("commonly_vented"))
		}
		return airflow.InducedDraft, b
	}
	return "", refused("the table lists no appliance vented this way", a.get("venting"))
}

// naturalDraftClass is the class of a natural-draft appliance. A water heater
// that shares no flue is alone on one, whether it was orphaned or built so.
func naturalDraftClass(kind string, damper, shared bool) airflow.Appliance {
	switch {
	case shared && damper:
		return airflow.CommonVentedDamper
	case shared:
		return airflow.CommonVented
	case kind == "water-heater":
		return airflow.OrphanWaterHeater
	}
	return airflow.NaturalDraftAlone
}

func minimumDraft(a, t node, b basis) figure {
	outdoor := t.get("outdoor_temperature").quantity()
	venting, ventingBasis := a.get("venting").choice()
	fuel, fuelBasis := a.get("fuel").choice()
	f := figure{unit: units.pascals, basis: join(outdoor.basis, ventingBasis, fuelBasis, b)}
	switch {
	case !f.known():
	case venting != "natural-draft" && venting != "natural-draft-with-damper":
		f.basis = refused("a least draft is given for natural draft only", a.get("venting"))
	case fuel != "gas" && fuel != "propane":
		f.basis = refused("a least draft is given for gas only", a.get("fuel"))
	default:
		f.si = airflow.MinimumDraft(outdoor.si)
	}
	return f
}
