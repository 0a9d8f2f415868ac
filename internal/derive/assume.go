package derive

import "math/bits"

// assumptions are defaults that a value rests on, one bit for each.
type assumptions uint16

// The defaults, in the order of assumptionTable.
const (
	seaLevel assumptions = 1 << iota
	soilGas
	smoothPlastic
	sheetMetal
	absBore
	flushInlet
	freeJunction
	meshGuard
	neutralLevel
	gaugeNoise
	deviceUncertainty
	actionLevel
	equilibriumRatio
	cameraZone
)

// assumptionTable has all the defaults that there are; a document lists the ones
// it used, in this order.
var assumptionTable = [...]struct{ name, value, basis string }{
	{"sea-level", "0 m above the sea", "the altitude is not recorded"},
	{"soil-gas", "12.5 °C, saturated with water vapor", "soil gas comes at 10 to 15 °C, near saturation: from memory"},
	{"smooth-plastic", "roughness 0.0015 mm", "drawn plastic pipe: from memory"},
	{"sheet-metal", "roughness 0.09 mm", "a plain metal downspout taken as galvanized duct, 0.0003 ft by the fit of its friction chart: common practice"},
	{"abs-bore", "the bore of PVC of the same schedule", "both are made to the outer diameters and walls of the schedule: common practice"},
	{"flush-inlet", "loss coefficient 0.5", "a pipe end level with the roof of the pit: Crane TP-410"},
	{"free-junction", "no loss beyond the recorded fittings", "no tee is recorded where legs meet"},
	{"mesh-guard", "loss coefficient 0.65", "a mesh guard of unknown open share: common practice"},
	{"neutral-level", "half the height of the heated space", "the neutral level is not recorded: from memory"},
	{"gauge-noise", "0.25 Pa", "weaker readings are noise of the meter: common practice"},
	{"device-uncertainty", "10 % (alpha track 20 %), at least 0.5 pCi/L below 2 pCi/L", "usual for the device, none is recorded: from memory"},
	{"action-level", "4.0 pCi/L", "duplicates on both sides of it are not averaged: ANSI/AARST MAH 2019 7.2.1"},
	{"equilibrium-ratio", "0.5", "32 Ill. Adm. Code 422.70(e)"},
	{"camera-zone", "UTC", "neither the camera nor the record names the zone of the clock"},
}

// assuming rests on one default.
func assuming(a assumptions) basis { return basis{assumed: a} }

// names are the defaults by name, as a document has them.
func (a assumptions) names() []any {
	names := make([]any, 0, bits.OnesCount16(uint16(a)))
	for i, row := range assumptionTable {
		if a&(1<<i) != 0 {
			names = append(names, row.name)
		}
	}
	return names
}

// assumptionEntries are the rows of the table as documents have them.
var assumptionEntries = func() (entries [len(assumptionTable)]*entry) {
	for i, row := range assumptionTable {
		entries[i] = &entry{members: []member{{"name", row.name}, {"value", row.value}, {"basis", row.basis}}}
	}
	return entries
}()

// assumptions lists the defaults that values of the document rest on.
func (d *deriver) assumptions() []any {
	used := d.record.mem.used
	list := make([]any, 0, bits.OnesCount16(uint16(used)))
	for i := range assumptionTable {
		if used&(1<<i) != 0 {
			list = append(list, assumptionEntries[i])
		}
	}
	return list
}
