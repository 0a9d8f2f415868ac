package derive

// An assumption is a default that values may rest on. These are all there are;
// a document lists the ones it used, in this order.
type assumption struct{ name, value, basis string }

const (
	seaLevel          = "sea-level"
	soilGas           = "soil-gas"
	smoothPlastic     = "smooth-plastic"
	sheetMetal        = "sheet-metal"
	absBore           = "abs-bore"
	flushInlet        = "flush-inlet"
	freeJunction      = "free-junction"
	meshGuard         = "mesh-guard"
	neutralLevel      = "neutral-level"
	gaugeNoise        = "gauge-noise"
	deviceUncertainty = "device-uncertainty"
	actionLevel       = "action-level"
	equilibriumRatio  = "equilibrium-ratio"
	cameraZone        = "camera-zone"
)

var assumptionTable = []assumption{
	{seaLevel, "0 m above the sea", "the altitude is not recorded"},
	{soilGas, "12.5 °C, saturated with water vapor", "soil gas comes at 10 to 15 °C, near saturation: from memory"},
	{smoothPlastic, "roughness 0.0015 mm", "drawn plastic pipe: from memory"},
	{sheetMetal, "roughness 0.09 mm", "a plain metal downspout taken as galvanized duct, 0.0003 ft by the fit of its friction chart: common practice"},
	{absBore, "the bore of PVC of the same schedule", "both are made to the outer diameters and walls of the schedule: common practice"},
	{flushInlet, "loss coefficient 0.5", "a pipe end level with the roof of the pit: Crane TP-410"},
	{freeJunction, "no loss beyond the recorded fittings", "no tee is recorded where legs meet"},
	{meshGuard, "loss coefficient 0.65", "a mesh guard of unknown open share: common practice"},
	{neutralLevel, "half the height of the heated space", "the neutral level is not recorded: from memory"},
	{gaugeNoise, "0.25 Pa", "weaker readings are noise of the meter: common practice"},
	{deviceUncertainty, "10 % (alpha track 20 %), at least 0.5 pCi/L below 2 pCi/L", "usual for the device, none is recorded: from memory"},
	{actionLevel, "4.0 pCi/L", "duplicates on both sides of it are not averaged: ANSI/AARST MAH 2019 7.2.1"},
	{equilibriumRatio, "0.5", "32 Ill. Adm. Code 422.70(e)"},
	{cameraZone, "UTC", "neither the camera nor the record names the zone of the clock"},
}

var assumptionIndex = func() map[string]int {
	index := make(map[string]int, len(assumptionTable))
	for i, a := range assumptionTable {
		index[a.name] = i
	}
	return index
}()

func assuming(name string) *basis { return &basis{assumed: []any{name}} }

// use marks assumptions that a value in the document rests on.
func (d *deriver) use(names []any) {
	for _, name := range names {
		d.used[assumptionIndex[name.(string)]] = true
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
