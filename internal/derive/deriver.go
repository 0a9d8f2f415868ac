package derive

import "github.com/slablint/slablint/internal/airflow"

// deriver holds what several rooms of this package read.
type deriver struct {
	record  node
	house   node
	systems []node
	used    []bool // by assumption

	gas      airflow.Air
	pressure figure // Pa at the site
	gasBasis *basis
}

func newDeriver(input map[string]any) *deriver {
	d := &deriver{record: node{value: input}, used: make([]bool, len(assumptionTable))}
	d.house = d.record.get("house")
	d.systems = d.record.get("systems").items()
	d.fillAir()
	return d
}

func entry(n node) map[string]any {
	return map[string]any{"id": n.id(), "at": string(n.at)}
}
