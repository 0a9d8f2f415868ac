package airflow

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"
)

// onePipe is a single run of pipe that nothing holds back before it.
func onePipe(t *testing.T, air Air, s Segment) *Network {
	t.Helper()
	s.Name = "run"
	return must[*Network](t)(NewNetwork(System{Suction: Branch{Name: "pit", Soil: &Soil{0, 1}, Segments: []Segment{s}}}, air))
}

// lossPer100Feet in Pa of round pipe, all in SI.
func lossPer100Feet(t *testing.T, air Air, diameter, roughness, flow float64) float64 {
	t.Helper()
	n := onePipe(t, air, Segment{Bore: Round(diameter), Length: 100 * foot, Roughness: roughness})
	return must[*State](t)(n.At(flow)).Segments[0].Loss
}

func fanCurve(t *testing.T, c checkValue, o CurveOptions) *FanCurve {
	t.Helper()
	flows, pressures := c.numbers(t, "Q"), c.numbers(t, "P")
	points := make([]CurvePoint, len(flows))
	for i := range flows {
		points[i] = CurvePoint{flows[i] * cfm, pressures[i] * inchOfWater}
	}
	return must[*FanCurve](t)(NewFanCurve(points, o))
}

// lineCrossing is a straight fan curve against ground alone.
func lineCrossing(t *testing.T, c checkValue) *OperatingPoint {
	t.Helper()
	p0, most, n := c.number(t, "P0"), c.number(t, "Qmax"), c.number(t, "n")
	curve := must[*FanCurve](t)(NewFanCurve([]CurvePoint{{0, p0 * inchOfWater}, {most * cfm, 0}}, CurveOptions{}))
	soil := must[Soil](t)(SoilThrough(cfm, c.number(t, "C")*inchOfWater, n))
	net := must[*Network](t)(NewNetwork(System{Suction: Branch{Name: "pit", Soil: &soil}}, StandardAir))
	return must[*OperatingPoint](t)(Operate(curve, net))
}

var checkers = []checker{
	// Air.
	{"A.*", "standard pressure", func(t *testing.T, c checkValue) any {
		if c.has("ft") {
			return must[float64](t)(StationPressure(c.number(t, "ft")*foot)) / psi
		}
		return must[float64](t)(StationPressure(c.number(t, "m")))
	}},
	{"A.*", "sea level, 288.15 K", func(t *testing.T, c checkValue) any {
		return Density(must[float64](t)(StationPressure(c.number(t, "m"))), 288.15, 0)
	}},
	{"A.*", "viscosity", func(t *testing.T, c checkValue) any {
		if c.has("K") {
			return Viscosity(c.number(t, "K"))
		}
		return Viscosity(celsius(c.number(t, "C")))
	}},
	{"A.*", "^density of air", func(t *testing.T, c checkValue) any {
		return Density(c.number(t, "Pa"), celsius(c.number(t, "C")), 0)
	}},
	{"A.*", "specific volume at .* 14.696 psi", func(t *testing.T, c checkValue) any {
		return pound / (foot * foot * foot) / Density(14.696*psi, fahrenheit(c.number(t, "F")), 0)
	}},
	{"A.*", "saturation vapour pressure", func(t *testing.T, c checkValue) any {
		return SaturationPressure(celsius(c.number(t, "C")))
	}},
	{"A.*", "saturation humidity ratio", func(t *testing.T, c checkValue) any {
		return SaturationHumidity(celsius(c.number(t, "C")), SeaLevelPressure)
	}},
	{"A.*", "^ratio of density", func(t *testing.T, c checkValue) any {
		high := must[float64](t)(StationPressure(c.number(t, "ft") * foot))
		return Density(high, 288.15, 0) / Density(SeaLevelPressure, 288.15, 0)
	}},

	// Bores.
	{"D.*", "Schedule 40", func(t *testing.T, c checkValue) any {
		bore, _, err := PipeBore(c.number(t, "nominal_in")*inch, Schedule40)
		if err != nil {
			t.Fatal(err)
		}
		return bore.Hydraulic / inch
	}},

	// Friction.
	{"F.*", "Churchill", func(t *testing.T, c checkValue) any {
		f, _ := churchill(c.number(t, "Re"), c.number(t, "eD"))
		return f
	}},
	{"F.*", "Haaland", func(t *testing.T, c checkValue) any { return haaland(c.number(t, "Re"), c.number(t, "eD")) }},
	{"F.*", "Swamee", func(t *testing.T, c checkValue) any { return swameeJain(c.number(t, "Re"), c.number(t, "eD")) }},
	{"F.*", "Blasius", func(t *testing.T, c checkValue) any { return blasius(c.number(t, "Re")) }},
	{"F.*", "^laminar", func(t *testing.T, c checkValue) any {
		// The solver's law must be the laminar one there, too.
		re := c.number(t, "Re")
		if f, _ := churchill(re, 0); math.Abs(f-laminar(re)) > 1e-12*f {
			t.Errorf("Churchill gives %v", f)
		}
		return laminar(re)
	}},
	{"F.*", "smooth plastic duct$", func(t *testing.T, c checkValue) any {
		d := c.number(t, "D_m")
		return colebrook(c.number(t, "Q_m3s")/(math.Pi/4*d*d)*d/c.number(t, "nu"), 0)
	}},
	{"F.*", "^head loss", func(t *testing.T, c checkValue) any { return headLoss(t, c, c.number(t, "D_m")) }},
	{"F.*", "^diameter for", func(t *testing.T, c checkValue) any {
		lo, hi := 0.01, 2.0
		for hi-lo > 1e-9 {
			mid := (lo + hi) / 2
			if headLoss(t, c, mid) > c.number(t, "hL_m") {
				lo = mid
			} else {
				hi = mid
			}
		}
		return lo
	}},
	{"F.*", "measured smooth-pipe f", func(t *testing.T, c checkValue) any {
		// The law that the solver uses is held to the measurements as well.
		re := c.number(t, "Re")
		f, _ := churchill(re, 0)
		compare(t, c, f)
		return colebrook(re, c.number(t, "eD"))
	}},
	{"F.*", "Colebrook|plastic pipe f|^f in a", func(t *testing.T, c checkValue) any {
		return colebrook(c.number(t, "Re"), c.number(t, "eD"))
	}},

	// Pipe.
	{"P.*", "duct", func(t *testing.T, c checkValue) any {
		air := StandardAir
		if c.has("rho_lb_ft3") {
			air.Density = c.number(t, "rho_lb_ft3") * pound / (foot * foot * foot)
		}
		return lossPer100Feet(t, air, c.number(t, "D_in")*inch, c.number(t, "roughness_ft")*foot, c.number(t, "cfm")*cfm) / inchOfWater
	}},
	{"V.*", "PVC Schedule 40", func(t *testing.T, c checkValue) any {
		air := Air{c.number(t, "rho_lb_ft3") * pound / (foot * foot * foot), c.number(t, "mu_Pa_s")}
		return lossPer100Feet(t, air, c.number(t, "ID_in")*inch, c.number(t, "roughness_m"), c.number(t, "cfm")*cfm) / inchOfWater
	}},
	{"V.*", "true bore against the smooth-duct", func(t *testing.T, c checkValue) any {
		var bore, roughness, duct, ductRoughness float64
		scan(t, c.text(t, "PVC"), "%f in, %f m", &bore, &roughness)
		scan(t, c.text(t, "reference"), "%f in, %f ft", &duct, &ductRoughness)
		flow := c.number(t, "cfm") * cfm
		return lossPer100Feet(t, StandardAir, bore*inch, roughness, flow) /
			lossPer100Feet(t, StandardAir, duct*inch, ductRoughness*foot, flow)
	}},

	// Fittings.
	{"V.*", "^equivalent length", func(t *testing.T, c checkValue) any {
		kind := map[string]FittingKind{
			"90 sharp": Elbow90Sharp, "90 sweep": Elbow90Sweep, "45 sharp": Elbow45Sharp, "45 sweep": Elbow45Sweep,
		}[c.text(t, "fitting")]
		f, source, err := NewFitting(kind, c.number(t, "nominal_in")*inch, Bore{})
		if err != nil || source.Basis != Published {
			t.Fatal(err, source)
		}
		return exactly(t, f.Length, "0.3048")
	}},
	{"V.*", "^entrance K", func(t *testing.T, _ checkValue) any {
		f, _, err := NewFitting(InletFlush, 0, Bore{})
		if err != nil {
			t.Fatal(err)
		}
		return f.K
	}},
	{"V.*", "^exit K", func(t *testing.T, _ checkValue) any {
		// What an open end of no length takes, over the velocity pressure there.
		n := must[*Network](t)(NewNetwork(System{
			Suction:   Branch{Name: "pit", Soil: &Soil{0, 1}},
			Discharge: []Segment{{Name: "end", Bore: Round(0.1)}},
		}, StandardAir))
		s := must[*State](t)(n.At(0.03))
		return s.Discharge / s.Segments[0].VelocityPressure
	}},
	{"V.*", "^sudden expansion", func(t *testing.T, c checkValue) any {
		return Expansion(Round(c.number(t, "D1")), Round(c.number(t, "D2"))).K
	}},
	{"V.*", "^converging tee", func(t *testing.T, c checkValue) any {
		run, branch := c.number(t, "Q_run_gpm"), c.number(t, "Q_branch_gpm")
		tee := must[teeForm](t)(newTee(c.number(t, "angle"), 1))
		k, _ := tee.side(branch / (run + branch))
		return k
	}},

	// Fan and gauge.
	{"O.*", "^linear fan curve|^same: pressure", func(t *testing.T, c checkValue) any {
		p := lineCrossing(t, c)
		if c.Unit == "inWC" {
			return p.Pressure / inchOfWater
		}
		return p.Flow / cfm
	}},
	{"O.*", "PCHIP", func(t *testing.T, c checkValue) any {
		p, _, err := fanCurve(t, c, CurveOptions{}).Pressure(c.number(t, "q") * cfm)
		if err != nil {
			t.Fatal(err)
		}
		return p / inchOfWater
	}},
	{"O.*", "^fit exponent", func(t *testing.T, c checkValue) any {
		return must[Soil](t)(FitSoil(c.number(t, "Q1")*cfm, c.number(t, "dP1"), c.number(t, "Q2")*cfm, c.number(t, "dP2"))).Exponent
	}},
	{"O.*", "^suction at the pit", func(t *testing.T, c checkValue) any {
		n := must[*Network](t)(NewNetwork(System{Suction: Branch{Name: "pit", Segments: []Segment{{
			Name: "riser", Bore: Round(c.number(t, "ID_in") * inch),
			Length: c.number(t, "pipe_ft_between") * foot, Roughness: c.number(t, "roughness_m"),
			Fittings: []Fitting{{K: c.number(t, "K_entrance")}, {K: c.number(t, "sumK_fittings")}},
		}}}}, StandardAir))
		points := must[[]PointState](t)(n.PitSuctions(Tap{Segment: "riser"}, c.number(t, "gauge_inWC")*inchOfWater, c.number(t, "cfm")*cfm))
		return points[0].Suction / inchOfWater
	}},
	{"O.*", "^fan pressure at", func(t *testing.T, c checkValue) any {
		high := Density(must[float64](t)(StationPressure(c.number(t, "ft")*foot)), 294, 0)
		low := Density(SeaLevelPressure, 294, 0)
		curve := must[*FanCurve](t)(NewFanCurve([]CurvePoint{{0, 500}, {0.03, c.number(t, "p_sl") * inchOfWater}, {0.06, 0}}, CurveOptions{Density: low}))
		p, _, err := curve.AtDensity(high).Pressure(0.03)
		if err != nil {
			t.Fatal(err)
		}
		return p / inchOfWater
	}},
	{"O.*", "piecewise-LINEAR", func(t *testing.T, c checkValue) any {
		var at, reference, exponent float64
		scan(t, c.text(t, "soil"), "P = %f (q/%f)^%f inWC", &at, &reference, &exponent)
		soil := must[Soil](t)(SoilThrough(reference*cfm, at*inchOfWater, exponent))
		n := must[*Network](t)(NewNetwork(System{Suction: Branch{Name: "pit", Soil: &soil, Segments: []Segment{{
			Name: "run", Bore: Round(c.number(t, "ID_in") * inch), Length: c.number(t, "L_ft") * foot,
			Roughness: c.number(t, "roughness_m"), Fittings: []Fitting{{K: c.number(t, "sumK")}},
		}}}}, StandardAir))
		return must[*OperatingPoint](t)(Operate(fanCurve(t, c, CurveOptions{Linear: true}), n)).Flow / cfm
	}},
	{"O.*", "^inverse reading", func(t *testing.T, c checkValue) any {
		return must[float64](t)(fanCurve(t, c, CurveOptions{}).Flow(c.number(t, "p")*inchOfWater)) / cfm
	}},
	{"O.*", "^gauge (above shut-off|near zero)", func(t *testing.T, c checkValue) any {
		shutOff := 1.6 // any fan: near zero is near zero
		if c.has("shutoff_inWC") {
			shutOff = c.number(t, "shutoff_inWC") * c.number(t, "density_ratio")
		}
		verdict := must[GaugeVerdict](t)(JudgeGauge(c.number(t, "gauge_inWC")*inchOfWater, shutOff*inchOfWater, 0))
		return map[GaugeVerdict]string{
			GaugeAboveShutOff: "IMPLAUSIBLE_ABOVE_SHUTOFF",
			GaugeNoSuction:    "FAN_OFF_OR_DISCONNECTED",
		}[verdict]
	}},
	{"O.*", "^natural draft", func(t *testing.T, c checkValue) any {
		return StackDraft(c.number(t, "h_m"), celsius(c.number(t, "Tstack_C")), celsius(c.number(t, "Tout_C")), c.number(t, "P"))
	}},

	// Speed and capacity.
	{"S.*", "cfm in nominal", func(t *testing.T, c checkValue) any {
		return c.number(t, "cfm") * cfm / Round(c.number(t, "D_in")*inch).Area / feetPerMinute
	}},
	{"S.*", "upper advisory duct speed", func(t *testing.T, c checkValue) any {
		return threshold(t, c.Expected.(float64), func(fpm float64) bool {
			return ClassifySpeed(fpm*feetPerMinute) == CarriesCondensate
		})
	}},
	{"S.*", "above which 4 in is called for", func(t *testing.T, c checkValue) any {
		return threshold(t, c.Expected.(float64), func(flow float64) bool { return NominalSizeFor(flow*cfm) == 4*inch })
	}},
	{"S.*", "up to which 2 in is allowed", func(t *testing.T, c checkValue) any {
		return threshold(t, c.Expected.(float64), func(flow float64) bool { return NominalSizeFor(flow*cfm) > 2*inch })
	}},
	{"S.*", "^foundation area", func(t *testing.T, c checkValue) any {
		return exactly(t, must[float64](t)(FoundationArea(c.number(t, "nominal_in")*inch)), "0.09290304")
	}},
	{"S.*", "^flow at", func(t *testing.T, c checkValue) any {
		return c.number(t, "fpm") * feetPerMinute * Round(c.number(t, "ID_in")*inch).Area / cfm
	}},
	{"S.*", "traverse", func(t *testing.T, c checkValue) any {
		points := TraversePoints(int(c.number(t, "points_per_diameter")))
		return 100 * points[int(c.number(t, "i"))-1]
	}},
	{"S.*", "^mean over centre", func(t *testing.T, c checkValue) any { return CentreFactor(c.number(t, "n")) }},
	{"S.*", "^median exhaust", func(*testing.T, checkValue) any { return MeasuredMedian / cfm }},

	// House and energy.
	{"C.*", "^CAZ limit", func(t *testing.T, c checkValue) any {
		name := c.text(t, "appliance")
		var class Appliance
		for _, row := range []struct {
			words string
			class Appliance
		}{
			{"orphan", OrphanWaterHeater},
			{"same, with vent damper", CommonVentedDamper},
			{"commonly vented", CommonVented},
			{"individual natural-draft", NaturalDraftAlone},
			{"induced-draft", InducedDraft},
			{"sealed combustion", SealedCombustion},
		} {
			if class == "" && strings.Contains(name, row.words) {
				class = row.class
			}
		}
		limit, _, err := DepressurizationLimit(WeatherizationTable, class)
		if err != nil {
			t.Fatal(err)
		}
		return limit
	}},
	{"C.*", "^CAZ verdict", func(t *testing.T, c checkValue) any {
		margin, _, err := DepressurizationMargin(c.number(t, "measured_Pa"), c.numbers(t, "limits_Pa")...)
		if err != nil {
			t.Fatal(err)
		}
		if margin < 0 {
			return fmt.Sprintf("FAIL by %g Pa", -margin)
		}
		return fmt.Sprintf("PASS by %g Pa", margin)
	}},
	{"C.*", "^minimum draft", func(t *testing.T, c checkValue) any {
		if below, isText := c.Inputs["F"].(string); isText {
			limit, err := strconv.ParseFloat(strings.TrimPrefix(below, "<"), 64)
			if err != nil {
				t.Fatal(err)
			}
			if MinimumDraft(fahrenheit(limit-40)) != MinimumDraft(fahrenheit(limit-0.01)) {
				t.Errorf("the draft still changes below %g F", limit)
			}
			return MinimumDraft(fahrenheit(limit - 0.01))
		}
		return MinimumDraft(fahrenheit(c.number(t, "F")))
	}},
	{"C.*", "^sensible heat factor", func(t *testing.T, c checkValue) any {
		// Btu in an hour by one cfm over one degree: a day's loss over 24.
		if c.number(t, "cp") != 0.24 {
			t.Fatalf("heat capacity %v", c.Inputs["cp"])
		}
		rho := c.number(t, "rho_lb_ft3") * pound / (foot * foot * foot)
		return ConditioningLoss(cfm, rho, 5.0/9) / 24 / btu
	}},
	{"C.*", "^yearly heat", func(t *testing.T, c checkValue) any {
		return ConditioningLoss(c.number(t, "cfm_house")*cfm, StandardDensity, c.number(t, "HDD_F")*5/9) / btu
	}},
	{"C.*", "^fuel for it", func(t *testing.T, c checkValue) any {
		heat := ConditioningLoss(40*cfm, StandardDensity, 5000*5.0/9)
		if given := c.number(t, "Btu"); math.Abs(heat/btu-given) > 1e-9*given {
			t.Errorf("heat %v Btu, expected %v", heat/btu, given)
		}
		return heat / c.number(t, "eff") / (1e5 * btu)
	}},
	{"C.*", "^fan energy", func(t *testing.T, c checkValue) any {
		return YearlyEnergy(c.number(t, "W")) / 3.6e6 * c.number(t, "rate_per_kWh")
	}},
	{"C.*", "^house depressurization", func(t *testing.T, c checkValue) any {
		return must[float64](t)(HouseDepressurization(c.number(t, "cfm_house")*cfm, c.number(t, "CFM50")*cfm))
	}},

	// Job.
	{"J.*", "^membrane", func(t *testing.T, c checkValue) any {
		if other, isText := c.Inputs["as"].(string); isText {
			for _, v := range loadCheckValues(t) {
				if v.ID == other {
					c.Inputs = v.Inputs
				}
			}
		}
		floor := c.numbers(t, "floor_ft")
		m := must[Membrane](t)(MembraneFor(floor[0]*foot, floor[1]*foot, c.number(t, "roll_ft")*foot,
			c.number(t, "overlap_ft")*foot, c.number(t, "upturn_ft")*foot))
		if c.Unit == "strips" {
			return float64(m.Strips)
		}
		return exactly(t, m.Area, "0.09290304")
	}},
	{"J.*", "^sealant", func(t *testing.T, c checkValue) any {
		const fluidOunce = 231.0 / 128 * inch * inch * inch
		return SealantVolume(c.number(t, "length_ft")*foot, c.number(t, "width_in")*inch, c.number(t, "depth_in")*inch) / fluidOunce
	}},
	{"J.*", "^condensate", func(t *testing.T, c checkValue) any {
		return CondensateBound(c.number(t, "cfm")*cfm, celsius(c.number(t, "saturated_from_C")), celsius(c.number(t, "to_C")), SeaLevelPressure) * secondsPerDay
	}},
	{"J.*", "^water seal", func(t *testing.T, c checkValue) any {
		return exactly(t, WaterLift(c.number(t, "suction_inWC")*inchOfWater), "0.0254")
	}},
	{"J.*", "^slope minimum", func(t *testing.T, c checkValue) any {
		return exactly(t, FallOver(c.number(t, "run_ft")*foot), "0.0254")
	}},
}

// headLoss in m of the flowing air, of a smooth duct.
func headLoss(t *testing.T, c checkValue, diameter float64) float64 {
	t.Helper()
	air := Air{1.145, 1.145 * c.number(t, "nu")}
	n := onePipe(t, air, Segment{Bore: Round(diameter), Length: c.number(t, "L_m")})
	return must[*State](t)(n.At(c.number(t, "Q_m3s"))).Segments[0].Loss / (air.Density * gravity)
}
