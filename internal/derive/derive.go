// Package derive completes a canonical record with what follows from it: air,
// pressures, flows, distances, coverage, radon statistics, exposures and the
// order of events, each value with its method and the places it came from.
package derive

import "io/fs"

// Derive works out the document that schema/derived.schema.json describes from
// a canonical record (see record.Document.Canonical). Files is the folder of
// the job, in which evidence is looked up; nil when there is none.
//
// Derive never fails and changes nothing in input. What the record does not
// say, and what it says but cannot be, makes a value undetermined and names the
// place. Nothing depends on a clock, on the network or on the order of maps.
func Derive(input map[string]any, files fs.FS) map[string]any {
	d := newDeriver(input)
	out := map[string]any{
		"air":            d.airValues(),
		"tests":          d.tests(),
		"crew":           d.crew(),
		"retest_due":     d.retestDue(),
		"radon":          d.radonValues(),
		"duplicates":     d.duplicates(),
		"spikes":         d.spikes(),
		"order":          d.order(),
		"discharges":     d.discharges(),
		"clearances":     d.clearances(),
		"communication":  d.communication(),
		"holes":          d.holes(),
		"appliances":     d.appliances(),
		"systems":        d.systemValues(),
		"segments":       d.segmentValues(),
		"suction_points": d.pointValues(),
		"evidence":       d.evidence(files),
	}
	out["assumptions"] = d.assumptions()
	return out
}
