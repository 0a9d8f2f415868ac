// Package derive completes a canonical record with what follows from it: air,
// pressures, flows, distances, coverage, radon statistics, exposures and the
// order of events, each value with its method and the places it came from.
package derive

import (
	"io/fs"

	"github.com/slablint/slablint/internal/airflow"
	"github.com/slablint/slablint/internal/quantity"
	"github.com/slablint/slablint/internal/record"
)

// Derive works out the document that schema/derived.schema.json describes from
// a canonical record (see record.Document.Canonical). Files is the folder of
// the job, in which evidence is looked up; nil when there is none.
//
// Derive never fails and changes nothing in input. What the record does not
// say, and what it says but cannot be, makes a value undetermined and names the
// places. Nothing depends on a clock, on the network or on the order of maps.
// Parts of the document may be shared, so it is for reading only.
func Derive(input map[string]any, files fs.FS) record.Members {
	return new(Workspace).Derive(input, files)
}

func derive(mem *memory, input map[string]any, files fs.FS) *entry {
	d := &deriver{record: node{value: input, mem: mem}}
	d.dates = d.record.get("job").get("dates").rooted()
	d.house = d.record.get("house").rooted()
	d.readTests()
	systems := d.record.get("systems")
	d.systems = mem.systems.several(systems.length())
	for i, n := range systems.each() {
		d.systems[i].read(n)
	}
	d.started = d.fanStart()
	d.fillAir()
	d.readProbes()
	for _, s := range d.systems {
		d.work(s)
	}
	out := d.entry(1, 17)
	out.set("air", d.airValues())
	out.set("systems", d.systemValues())
	out.set("segments", d.segmentValues())
	out.set("suction_points", d.pointValues())
	out.set("discharges", d.discharges())
	out.set("clearances", d.clearances())
	out.set("communication", d.communication())
	out.set("holes", d.holes())
	out.set("appliances", d.appliances())
	out.set("tests", d.testValues())
	out.set("duplicates", d.duplicates())
	out.set("spikes", d.spikes())
	out.set("radon", d.radonValues())
	out.set("crew", d.crew())
	out.exact("retest_due", quantity.Date, d.retestDue(), "two years after the day the last test after the work ended: ANSI/AARST MAH 2019 8.5.9.2")
	out.set("evidence", d.evidence(files))
	out.set("order", d.order())
	out.set("assumptions", d.assumptions())
	return out
}

// deriver holds what several parts of the document rest on.
type deriver struct {
	record  node
	house   node
	dates   node
	systems []*system
	all     []*test
	probes  []*probe

	started  figure // when the last of the fans first ran
	site     figure // Pa, the pressure of the air there
	gas      airflow.Air
	gasBasis basis
}
