// Package derive completes a canonical record with what follows from it: air,
// pressures, flows, distances, coverage, radon statistics, exposures and the
// order of events, each value with its method and the places it came from.
package derive

import (
	"io/fs"

	"github.com/slablint/slablint/internal/airflow"
	"github.com/slablint/slablint/internal/quantity"
)

// Derive works out the document that schema/derived.schema.json describes from
// a canonical record (see record.Document.Canonical). Files is the folder of
// the job, in which evidence is looked up; nil when there is none.
//
// Derive never fails and changes nothing in input. What the record does not
// say, and what it says but cannot be, makes a value undetermined and names the
// places. Nothing depends on a clock, on the network or on the order of maps.
// Parts of the document may be shared, so it is for reading only.
func Derive(input map[string]any, files fs.FS) map[string]any {
	d := &deriver{record: node{value: input, mem: new(memory)}, used: make([]bool, len(assumptionTable))}
	d.house = d.record.get("house").rooted()
	d.readTests()
	for _, n := range d.record.get("systems").items() {
		d.systems = append(d.systems, readSystem(n))
	}
	d.started = d.fanStart()
	d.fillAir()
	d.readProbes()
	for _, s := range d.systems {
		d.work(s)
	}
	out := map[string]any{
		"air":            d.airValues(),
		"systems":        d.systemValues(),
		"segments":       d.segmentValues(),
		"suction_points": d.pointValues(),
		"discharges":     d.discharges(),
		"clearances":     d.clearances(),
		"communication":  d.communication(),
		"holes":          d.holes(),
		"appliances":     d.appliances(),
		"tests":          d.testValues(),
		"duplicates":     d.duplicates(),
		"spikes":         d.spikes(),
		"radon":          d.radonValues(),
		"crew":           d.crew(),
		"retest_due":     d.retestDue(),
		"evidence":       d.evidence(files),
		"order":          d.order(),
	}
	out["assumptions"] = d.assumptions()
	return out
}

// deriver holds what several parts of the document rest on.
type deriver struct {
	record  node
	house   node
	systems []*system
	all     []*test
	probes  []*probe
	used    []bool // by assumption
	writer  quantity.Writer

	started  figure // when the last of the fans first ran
	site     figure // Pa, the pressure of the air there
	gas      airflow.Air
	gasBasis *basis
}

// entry is the start of what is said of one subject, with room for so many
// members.
func entry(n node, size int) map[string]any {
	e := make(map[string]any, size)
	e["id"], e["at"] = n.id(), string(n.at())
	return e
}
