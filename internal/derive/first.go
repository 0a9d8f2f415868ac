package derive

import (
	"io/fs"

	"github.com/slablint/slablint/internal/quantity"
)

func (d *deriver) entries(list []node) []any {
	out := make([]any, len(list))
	for i, n := range list {
		out[i] = entry(n)
	}
	return out
}

func (d *deriver) tests() []any {
	out := []any{}
	for _, n := range d.record.get("measurements").get("tests").items() {
		e := entry(n)
		start, end := n.get("start").quantity(), n.get("end").quantity()
		e["duration"] = d.value(quantity.Duration, figure{end.si - start.si, "h", join(start.basis, end.basis)}, "end less start")
		if p := n.get("phase").text(); p != "" {
			e["phase"] = p
		}
		e["concentration"] = d.value(quantity.Radon, n.get("result").quantity(), "as recorded")
		out = append(out, e)
	}
	return out
}
func (d *deriver) crew() []any { return d.entries(d.record.get("job").get("crew").items()) }
func (d *deriver) retestDue() map[string]any {
	return undetermined(lacking("/measurements/tests"))
}
func (d *deriver) radonValues() map[string]any { return map[string]any{} }
func (d *deriver) duplicates() []any           { return []any{} }
func (d *deriver) spikes() []any               { return d.entries(d.record.get("measurements").get("spikes").items()) }
func (d *deriver) order() map[string]any       { return map[string]any{} }
func (d *deriver) discharges() []any {
	out := []any{}
	for _, s := range d.systems {
		x := s.get("discharge")
		if !x.exists() && s.get("powered_by").text() == "rough-in" {
			continue
		}
		e := map[string]any{"id": s.id(), "at": string(x.at)}
		e["height_above_grade"] = d.value(quantity.Length, x.get("height_above_grade").quantity(), "as recorded")
		e["height_above_eave"] = d.value(quantity.Length, x.get("height_above_eave").quantity(), "as recorded")
		out = append(out, e)
	}
	return out
}
func (d *deriver) clearances() []any    { return []any{} }
func (d *deriver) communication() []any { return d.entries(d.record.get("diagnostics").get("communication_tests").items()) }
func (d *deriver) holes() []any         { return []any{} }
func (d *deriver) appliances() []any    { return []any{} }
func (d *deriver) systemValues() []any  { return d.entries(d.systems) }
func (d *deriver) segmentValues() []any { return []any{} }
func (d *deriver) pointValues() []any   { return []any{} }
func (d *deriver) evidence(fs.FS) []any { return d.entries(d.record.get("evidence").items()) }
