package derive

// An assumption is a default that values may rest on. The table is all there
// are; the document lists those that it used, in this order.
type assumption struct{ name, value, basis string }

const (
	seaLevel = "sea-level"
	soilGas  = "soil-gas"
)

var assumptionTable = []assumption{
	{seaLevel, "0 m", "the altitude is not recorded; common practice"},
	{soilGas, "12.5 °C, saturated with water vapour", "soil gas comes at 10 to 15 °C near saturation; from memory"},
}

func assuming(name string) *basis { return &basis{assumed: []any{name}} }

func (d *deriver) use(names []any) {
	for _, name := range names {
		for i := range assumptionTable {
			if assumptionTable[i].name == name {
				d.used[i] = true
			}
		}
	}
}

func (d *deriver) assumptions() []any {
	list := []any{}
	for i, a := range assumptionTable {
		if d.used[i] {
			list = append(list, map[string]any{"name": a.name, "value": a.value, "basis": a.basis})
		}
	}
	return list
}
